package secondbolt.lay.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.Placed;
import secondbolt.measure.Tape;

/**
 * The plan of cutting that is pinned: a file of its own beside the project file, written by the
 * program and the maker's to edit. Its pieces keep their place as long as they can.
 */
public final class PlanFile {
    /** The name of the file in a project's folder. */
    public static final String NAME = "plan.yaml";

    /** The tape of its bare numbers. */
    public static final Key<Tape> UNITS =
            Key.required(
                    "units",
                    Forms.choice(Tape.values(), Tape::symbol),
                    "The unit of bare numbers in the plan.",
                    "cm");

    /** Its pieces, with the place of each. */
    public static final Key<List<Placed<Entry>>> PIECES =
            Key.required(
                    "pieces",
                    ListForm.of("pieces of a plan", Forms.placed(PlacingForm.PLANNED), 0, 400),
                    "Where each copy lies. It keeps its place as long as it can; what no longer"
                            + " fits is named, and laid anew.",
                    "[{piece: front 2, cloth: left curtain, at: [20, 60], lies: \"face down, top"
                            + " up\", cut: no}]");

    /** The whole file. */
    public static final Form<List<Placed<Entry>>> ROOT =
            MapForm.of(
                    "a plan",
                    List.of(UNITS, PIECES),
                    fields -> Optional.of(fields.require(PIECES)));

    private PlanFile() {}

    /**
     * A copy in the plan.
     *
     * @param placing where it lies
     * @param isCut whether it is ticked
     */
    public record Entry(Placing placing, boolean isCut) {}

    /** All that is cut: what the log tells, then what is ticked in the plan. */
    public static List<Placing> cut(LaySection.Source fields) {
        List<Placing> cut = new ArrayList<>(fields.get(LaySection.CUT_SO_FAR).orElse(List.of()));
        cut.addAll(placings(fields, true));
        return List.copyOf(cut);
    }

    /** What is in the plan and not cut. */
    static List<Placing> pinned(LaySection.Source fields) {
        return placings(fields, false);
    }

    private static List<Placing> placings(LaySection.Source fields, boolean areCut) {
        return fields.get(PIECES).orElse(List.of()).stream()
                .map(Placed::value)
                .filter(entry -> entry.isCut() == areCut)
                .map(Entry::placing)
                .toList();
    }
}
