package secondbolt.trim.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;

/** The section {@code binding}: its keys, and how they are read. */
public final class BindingSection {
    private static final Key<Placed<EdgeSum>> ON =
            Key.required(
                    "on",
                    EdgeSum.ROW,
                    "The edges that are bound, each as often as it goes round: twice where a piece is"
                            + " drawn half or cut as a pair.",
                    "[2 front.neckline, 2 back.neckline]");
    private static final Key<Length> FINISHED =
            Key.optional(
                            "finished",
                            Forms.length(LengthRange.of("2 mm", "6 cm")),
                            "How wide the binding is when it is sewn. Needed unless seams are bound.",
                            "6 mm")
                    .asking(
                            "Fold a strip of paper over the edge in two widths and choose;"
                                    + " 6 mm (1/4 in) is usual.");
    private static final Key<Binding.Cut> CUT =
            Key.optional(
                    "cut",
                    Forms.choice(Binding.Cut.values(), Binding.Cut::word),
                    "How the strip lies to the grain; bias if not told, which goes round curves.",
                    "bias");
    private static final Key<Binding.Kind> KIND =
            Key.optional(
                    "kind",
                    Forms.choice(Binding.Kind.values(), Binding.Kind::word),
                    "How it is folded: double fold if not told; single fold; or a bound seam, on one"
                            + " raw edge of a seam that is pressed open.",
                    "double fold");
    private static final Key<Length> SEAM =
            Key.optional(
                    "seam",
                    Forms.length(LengthRange.of("2 mm", "5 cm")),
                    "Of a single fold, how far inside its edge the strip is sewn; of a bound seam,"
                            + " the allowance that is bound, which if not told is the pattern's.",
                    "6 mm");
    private static final Key<Binding.From> FROM =
            Key.optional(
                    "from",
                    Forms.choice(Binding.From.values(), Binding.From::word),
                    "Whether the strip is cut from what the lay leaves of the cloth, as if not told,"
                            + " or bought.",
                    "remnant");
    private static final Key<Placed<String>> CLOTH =
            Key.optional(
                    "cloth",
                    Forms.placed(Forms.nameOf(60)),
                    "The cloth of whose remnant it is cut; the largest remnant of the main cloth if"
                            + " not told.",
                    "sheet");

    /** The section: bindings under names of the maker's own. */
    public static final Key<Map<String, Binding>> KEY =
            Key.optional(
                    "binding",
                    NamedForm.of("binding", form()),
                    "Edges that are bound with a strip, under a name of your own.",
                    "{neck: {on: [2 front.neckline, 2 back.neckline], finished: 6 mm}}");

    private BindingSection() {}

    private static MapForm<Binding> form() {
        return MapForm.of(
                        "a binding",
                        List.of(ON, FINISHED, CUT, KIND, SEAM, FROM, CLOTH),
                        BindingSection::binding)
                .with(Rule.any(Rule.has("finished"), Rule.is("kind", "bound seam")));
    }

    private static Optional<Binding> binding(Fields fields) {
        Binding.Kind kind = fields.get(KIND).orElse(Binding.Kind.DOUBLE_FOLD);
        boolean lacksWidth = fields.get(FINISHED).isEmpty() && !fields.isOpen(FINISHED);
        if (lacksWidth && kind != Binding.Kind.BOUND_SEAM) {
            fields.tell(
                    fields.place(),
                    "a binding without `finished`",
                    FINISHED.line(fields.tape()) + ", its width when it is sewn");
            return Optional.empty();
        }
        return Optional.of(
                new Binding(
                        fields.require(ON),
                        fields.get(FINISHED),
                        fields.get(CUT).orElse(Binding.Cut.BIAS),
                        kind,
                        fields.get(SEAM),
                        fields.get(FROM).orElse(Binding.From.REMNANT),
                        fields.get(CLOTH)));
    }
}
