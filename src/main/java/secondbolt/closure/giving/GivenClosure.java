package secondbolt.closure.giving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Tape;
import secondbolt.task.WorkStep;

/**
 * A closure with as much as is known of it.
 *
 * @param name the maker's name for it
 * @param closure as written
 * @param result worked out; nothing while the length of its placket is not known
 * @param tape to print with
 */
record GivenClosure(String name, Closure closure, Optional<ClosureResult> result, Tape tape) {
    static List<GivenClosure> all(
            Map<String, Closure> closures, List<ClosureResult> results, Tape tape) {
        List<GivenClosure> all = new ArrayList<>();
        closures.forEach(
                (name, closure) ->
                        all.add(
                                new GivenClosure(
                                        name,
                                        closure,
                                        results.stream()
                                                .filter(r -> r.name().equals(name))
                                                .findFirst(),
                                        tape)));
        return all;
    }

    Fastening fastening() {
        return closure.fastening();
    }

    /**
     * How many there are along the placket. While its length is not known: as many as told, unless
     * the largest gap may ask for more.
     */
    Optional<Integer> count() {
        FastenerSpread spread = closure.spread();
        return result.map(r -> r.marks().size())
                .or(() -> spread.largestGap().isPresent() ? Optional.empty() : spread.count());
    }

    /** How many there are in all, in both rows if there are two. */
    Optional<Integer> toSewOn() {
        return count().map(count -> hasTwoRows() ? 2 * count : count);
    }

    /** Behind the hem of the edge it lies on, if there is one. */
    static WorkStep afterHems(WorkStep step, List<GivenClosure> closures) {
        return closures.stream().anyMatch(c -> c.closure.placket().isOnAHem())
                ? step.after(
                        "hem", "It goes through the edge that is turned up: that is hemmed first.")
                : step;
    }

    /** A garment with one has two as a rule, and what is written is one of them. */
    boolean isOnOneCuff() {
        return closure.overlap().worn() == Overlap.Worn.CUFF;
    }

    boolean hasTwoRows() {
        return closure.overlap().rowsApart().isPresent();
    }

    /** Each of several with words of its own, the name first. */
    static String each(List<GivenClosure> closures, Function<GivenClosure, String> words) {
        return closures.stream()
                .map(closure -> closure.name() + ": " + words.apply(closure))
                .collect(Collectors.joining("; "));
    }
}
