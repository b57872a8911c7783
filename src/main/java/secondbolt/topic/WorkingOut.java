package secondbolt.topic;

import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.fault.Fault;
import secondbolt.figure.Figure;
import secondbolt.figure.Told;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.source.Place;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Worksheet;

/** One working out of a project as it is written now. */
final class WorkingOut {
    private final Engine engine;
    private final Fields sections;
    private final Map<Asked, Outcome<?>> outcomes = new HashMap<>();

    /** A topic, and what is supposed when it is asked for. */
    private record Asked(String topic, Supposed supposed) {}

    WorkingOut(Engine engine, Fields sections) {
        this.engine = engine;
        this.sections = sections;
    }

    Engine engine() {
        return engine;
    }

    Fields sections() {
        return sections;
    }

    Tape tape() {
        return sections.tape();
    }

    /** What a topic comes to under a supposition. */
    Outcome<?> outcome(Topic<?> topic, Supposed supposed) {
        Asked asked = new Asked(topic.name().word(), supposed);
        Outcome<?> known = outcomes.get(asked);
        if (known == null) {
            known =
                    engine.shelf()
                            .find(topic, this, supposed)
                            .orElseGet(() -> work(topic, supposed));
            outcomes.put(asked, known);
        }
        return known;
    }

    private Outcome<?> work(Topic<?> topic, Supposed supposed) {
        RunBench bench = new RunBench(this, topic, supposed);
        try {
            engine.count(topic);
            Outcome<?> outcome = topic.work(bench);
            if (outcome.troubles().isEmpty()) {
                engine.shelf().keep(topic, bench.reads(), outcome);
            }
            return outcome;
        } catch (HeldBack e) {
            // What it needs has a mistake, which is told where it was found.
            return new Outcome<>(Optional.empty(), Optional.empty(), e.troubles());
        } catch (UncheckedIOException e) {
            throw e;
        } catch (RuntimeException | StackOverflowError e) {
            return failed(topic, supposed, Fault.of(topic.name().word(), e));
        }
    }

    /**
     * A topic that failed is told as such, and those that need it are held back; what failed under
     * a supposition is told of the topic that supposed it.
     */
    private Outcome<?> failed(Topic<?> topic, Supposed supposed, Fault fault) {
        if (!supposed.values().isEmpty()) {
            throw fault;
        }
        Place place =
                topic.keys().stream().findFirst().map(sections::place).orElseGet(sections::place);
        return Outcome.wrong(List.of(Trouble.ofProgram(place, String.join(", ", fault.at()))));
    }

    /** What stands under a key. */
    Optional<?> written(Key<?> key, Supposed supposed) {
        Object value = supposed.values().get(key.name());
        return value == null ? sections.get(key) : Optional.of(value);
    }

    /** What the topics that stand before one contribute. */
    Gives given(Topic<?> asking, Supposed supposed) {
        return engine.before(asking).stream()
                .flatMap(topic -> outcome(topic, supposed).worksheet().stream())
                .map(Worksheet::gives)
                .reduce(Gives.NOTHING, Gives::and);
    }

    /** What a maker is told of the topics that stand before one. */
    Map<String, Figure> told(Topic<?> asking, Supposed supposed) {
        return Told.of(
                engine.supposedBefore(asking).stream()
                        .flatMap(topic -> outcome(topic, supposed).worksheet().stream())
                        .map(Worksheet::figures)
                        .toList());
    }
}
