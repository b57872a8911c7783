package secondbolt.topic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.figure.Figure;
import secondbolt.file.Key;
import secondbolt.file.source.Place;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Gives;

/** The bench of one step, noting what is read from it. */
final class RunBench implements Bench {
    private final WorkingOut run;
    private final Topic<?> topic;
    private final Supposed supposed;
    private final Supposed more;
    private final List<Read> reads;

    RunBench(WorkingOut run, Topic<?> topic, Supposed supposed) {
        this(run, topic, supposed, Supposed.NOTHING, new ArrayList<>());
        reads.add(new Read.OnTape(run.tape()));
    }

    private RunBench(
            WorkingOut run, Topic<?> topic, Supposed supposed, Supposed more, List<Read> reads) {
        this.run = run;
        this.topic = topic;
        this.supposed = supposed;
        this.more = more;
        this.reads = reads;
    }

    List<Read> reads() {
        return reads;
    }

    @Override
    public Tape tape() {
        return run.tape();
    }

    @Override
    @SuppressWarnings(
            "unchecked") // a key's value is read by its form alone, and supposed by its type
    public <T> Optional<T> written(Key<T> key) {
        Optional<T> value = (Optional<T>) run.written(key, more.over(supposed));
        reads.add(new Read.Section(more, key, value));
        return value;
    }

    @Override
    public Place place(Key<?> key) {
        return run.sections().place(key);
    }

    @Override
    public <R> Optional<R> came(TopicName<R> name) {
        boolean isSupposed = !more.values().isEmpty();
        Topic<?> asked =
                isSupposed && topic.name().equals(name)
                        ? topic
                        : run.engine().before(topic, name.word());
        Outcome<?> outcome = run.outcome(asked, more.over(supposed));
        if (!outcome.troubles().isEmpty() && !isSupposed) {
            throw new HeldBack(outcome.troubles());
        }
        Optional<R> result = name.in(outcome);
        reads.add(new Read.Result(more, asked, result));
        return result;
    }

    @Override
    public Map<String, Figure> told() {
        Map<String, Figure> told = run.told(topic, more.over(supposed));
        reads.add(new Read.AllTold(more, told));
        return told;
    }

    @Override
    public Gives given() {
        Gives given = run.given(topic, more.over(supposed));
        reads.add(new Read.AllGiven(more, given));
        return given;
    }

    @Override
    public <T> Bench supposing(Key<T> key, T value) {
        return new RunBench(run, topic, supposed, more.with(key, value), reads);
    }
}
