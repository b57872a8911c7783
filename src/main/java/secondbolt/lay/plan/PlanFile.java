package secondbolt.lay.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.Placed;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;

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

    private static final Key<Optional<List<Alteration>>> ALTERED =
            Key.optional(
                    "altered",
                    PlacingForm.ALTERED.form(),
                    "The alterations the pieces have as they are pinned: what is ticked was cut so,"
                            + " unless it is told otherwise with it.",
                    "none");

    private static final Key<List<Placed<Entry>>> PIECES =
            Key.required(
                    "pieces",
                    ListForm.of("pieces of a plan", Forms.placed(PlacingForm.PLANNED), 0, 400),
                    "Where each copy lies. It keeps its place as long as it can; what no longer"
                            + " fits is named, and laid anew.",
                    "[{piece: front 2, cloth: left curtain, at: [20, 60], lies: \"face down, top"
                            + " up\", cut: no}]");

    /** The whole file. */
    public static final Form<Plan> ROOT =
            MapForm.of("a plan", List.of(UNITS, ALTERED, PIECES), PlanFile::plan);

    /** What stands in the file, for those who read the project. */
    public static final Key<Plan> PLAN =
            Key.optional("plan", ROOT, "The plan that is pinned.", "{units: cm, pieces: []}");

    private PlanFile() {}

    /**
     * A plan as it is written.
     *
     * @param units the tape of its bare numbers
     * @param altered the alterations its pieces have; nothing if they are not told
     * @param entries its pieces, each with its place
     */
    public record Plan(
            Tape units, Optional<List<Alteration>> altered, List<Placed<Entry>> entries) {
        /** Nothing in it. */
        public static final Plan NONE = new Plan(Tape.CENTIMETRE, Optional.empty(), List.of());

        /** Copies the list. */
        public Plan {
            entries = List.copyOf(entries);
        }
    }

    /**
     * A copy in the plan.
     *
     * @param placing where it lies, with the alterations it has as far as they are told
     * @param isCut whether it is ticked
     * @param isTold whether the alterations are told with it, not with the plan as a whole
     */
    public record Entry(Placing placing, boolean isCut, boolean isTold) {}

    private static Optional<Plan> plan(Fields fields) {
        Optional<List<Alteration>> altered = fields.get(ALTERED).flatMap(told -> told);
        return Optional.of(
                new Plan(
                        fields.require(UNITS),
                        altered,
                        fields.require(PIECES).stream().map(e -> with(altered, e)).toList()));
    }

    private static Placed<Entry> with(Optional<List<Alteration>> altered, Placed<Entry> entry) {
        Entry own = entry.value();
        return own.isTold()
                ? entry
                : new Placed<>(
                        new Entry(own.placing().altered(altered), own.isCut(), false),
                        entry.place());
    }

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
        return fields.get(PLAN).orElse(Plan.NONE).entries().stream()
                .map(Placed::value)
                .filter(entry -> entry.isCut() == areCut)
                .map(Entry::placing)
                .toList();
    }
}
