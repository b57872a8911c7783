package secondbolt.closure.giving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Tape;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;

/** What the closures of a garment contribute: one step of a kind for all of them together. */
public final class ClosureGiving {
    private ClosureGiving() {}

    /**
     * Of all closures, those whose length is not known yet among them.
     *
     * @param closures as written, by name, in the maker's order
     * @param results each whose length is known
     * @param tape to print with
     */
    public static Gives of(Map<String, Closure> closures, List<ClosureResult> results, Tape tape) {
        List<GivenClosure> all = GivenClosure.all(closures, results, tape);
        if (all.isEmpty()) {
            return Gives.NOTHING;
        }
        List<WorkStep> steps = new ArrayList<>(ButtonSteps.of(of(all, Fastening.Kind.BUTTONS)));
        Stream.of(Fastening.Kind.SNAPS, Fastening.Kind.HOOKS, Fastening.Kind.TIES)
                .map(kind -> of(all, kind))
                .filter(some -> !some.isEmpty())
                .map(OtherFasteners::of)
                .forEach(steps::add);
        return new Gives(
                steps, all.stream().flatMap(FastenerNeeds::of).toList(), ClosureTerms.of(all));
    }

    private static List<GivenClosure> of(List<GivenClosure> all, Fastening.Kind kind) {
        return all.stream().filter(closure -> closure.fastening().kind() == kind).toList();
    }
}
