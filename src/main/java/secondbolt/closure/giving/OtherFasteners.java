package secondbolt.closure.giving;

import java.util.List;
import secondbolt.closure.fastening.Fastening;
import secondbolt.measure.Plural;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/** Sewing on what needs no hole; common practice, no source, but where one is named. */
final class OtherFasteners {
    private OtherFasteners() {}

    /** The step for all closures of one kind, of which there is at least one. */
    static WorkStep of(List<GivenClosure> alike) {
        Fastening.Kind kind = alike.get(0).fastening().kind();
        WorkStep step =
                WorkStep.of(
                                kind.word(),
                                Stage.CLOSING,
                                how(kind)
                                        + " "
                                        + GivenClosure.each(alike, c -> many(c, kind))
                                        + ".")
                        .minding(Hazard.NEEDLE);
        return GivenClosure.afterHems(after(step, kind), alike);
    }

    private static WorkStep after(WorkStep step, Fastening.Kind kind) {
        return switch (kind) {
            case TIES ->
                    step.after("band", "Ties are sewn to the ends of the band, or caught in them.");
            case HOOKS ->
                    afterAll(step)
                            // K. H. Watson, Textiles and Clothing, 1907: the hooks of a skirt last
                            .after(
                                    "band",
                                    "Hooks are sewn where the finished band closes, not where it is"
                                            + " thought to.");
            case SNAPS, BUTTONS -> afterAll(step);
        };
    }

    private static WorkStep afterAll(WorkStep step) {
        return step.after(
                "assemble",
                "Fasteners hold in all layers of a finished edge: its seams and facing come first.");
    }

    private static String how(Fastening.Kind kind) {
        return switch (kind) {
            case SNAPS ->
                    "Sew the ball halves on the side above, through one layer only; chalk them,"
                            + " press them onto the other side, and sew the sockets where they"
                            + " mark.";
            case HOOKS ->
                    "Sew the hooks first, fast at their ends too; close the opening as it is worn,"
                            + " mark where they pull, and sew the eyes or bars there.";
            case TIES ->
                    "Catch each tie in its seam as that is sewn, or fold its end under and sew it"
                            + " down in a square.";
            case BUTTONS -> "Sew on.";
        };
    }

    private static String many(GivenClosure closure, Fastening.Kind kind) {
        boolean isPair = kind == Fastening.Kind.TIES;
        String one = isPair ? "pair of ties" : kind.one();
        String many = isPair ? "pairs of ties" : kind.word();
        return closure.toSewOn().map(count -> Plural.of(count, one, many)).orElse(many);
    }
}
