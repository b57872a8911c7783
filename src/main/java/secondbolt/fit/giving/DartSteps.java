package secondbolt.fit.giving;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Plural;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/** Taking up darts and pleats while a piece lies flat; common practice, no source. */
final class DartSteps {
    private static final String MARKED = "Its lines and its point must stand on the cloth.";

    private DartSteps() {}

    static Optional<WorkStep> darts(List<TakenUp> darts) {
        if (darts.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                step(
                        "darts",
                        "Sew "
                                + Plural.of(TakenUp.count(darts), "dart")
                                + ", from the edge to the point and off it in a fine line,"
                                + " the ends knotted; press each over a curve, to its point"
                                + " and no farther: "
                                + TakenUp.where(darts)
                                + "."));
    }

    static Optional<WorkStep> pleats(List<TakenUp> pleats) {
        if (pleats.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                step(
                        "pleats",
                        "Lay and baste "
                                + Plural.of(TakenUp.count(pleats), "pleat")
                                + " while the piece is flat: "
                                + TakenUp.where(pleats)
                                + "."));
    }

    private static WorkStep step(String name, String text) {
        return WorkStep.of(name, Stage.SEWING, text)
                .after("cut", "It is sewn into a piece that is cut.")
                .after("mark", MARKED)
                .minding(Hazard.NEEDLE, Hazard.IRON);
    }
}
