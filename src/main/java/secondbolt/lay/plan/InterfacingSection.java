package secondbolt.lay.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;

/** The section {@code interfacing}: its keys, and how they are read. */
final class InterfacingSection {
    private static final int LONGEST_PRESS = 60;

    private static final Key<Length> WIDTH =
            Key.optional(
                            "width",
                            Forms.length(LengthRange.of("20 cm", "4 m")),
                            "Of the bolt; if not told, the length is told for usual widths.",
                            "90")
                    .asking("Look at the end of the bolt, or lay your tape across it.");
    private static final Key<Boolean> NONWOVEN =
            Key.optional(
                    "nonwoven",
                    Forms.yesOrNo(),
                    "Whether it has no grain, so that pieces may lie any way. No if not told.",
                    "yes");
    private static final Key<Answer<Interfacing.Kind>> KIND =
            Key.optional(
                    "kind",
                    Forms.orUnknown(
                            Forms.choice(Interfacing.Kind.values(), Interfacing.Kind::word)),
                    "How it is held: fusible, with glue that melts under the iron, or sewn-in.",
                    "fusible");
    private static final Key<Boolean> STIFF =
            Key.optional(
                            "stiff",
                            Forms.yesOrNo(),
                            "Whether it is so stiff that its seam allowances are cut off. No if not told.",
                            "no")
                    .asking("Fold it with the cloth as a seam folds: a stiff one makes a ridge.");
    private static final Key<ClothWeight> WEIGHT =
            Key.optional(
                    "weight",
                    Forms.clothWeight(),
                    "How heavy it is by area, to be compared with the cloth.",
                    "60 g/m2");
    private static final Key<Boolean> PRE_SHRUNK =
            Key.optional(
                    "pre-shrunk",
                    Forms.yesOrNo(),
                    "Whether you have shrunk it, or bought it shrunk.",
                    "yes");
    private static final Key<Integer> SECONDS =
            Key.optional(
                    "seconds",
                    Forms.whole(1, LONGEST_PRESS),
                    "How many seconds each place is pressed.",
                    "12");
    private static final Key<Boolean> DAMP_CLOTH =
            Key.optional(
                    "damp cloth", Forms.yesOrNo(), "Whether a damp cloth lies between.", "yes");
    private static final Key<Boolean> PRE_SHRINK =
            Key.optional(
                    "pre-shrink",
                    Forms.yesOrNo(),
                    "Whether it must be shrunk before it is cut.",
                    "no");
    private static final Key<Interfacing.Leaflet> LEAFLET =
            Key.optional(
                    "leaflet",
                    MapForm.of(
                            "a leaflet of interfacing",
                            List.of(SECONDS, DAMP_CLOTH, PRE_SHRINK),
                            fields ->
                                    Optional.of(
                                            new Interfacing.Leaflet(
                                                    fields.get(SECONDS),
                                                    fields.get(DAMP_CLOTH),
                                                    fields.get(PRE_SHRINK)))),
                    "What the leaflet that came with it says; it comes before every rule here.",
                    "{seconds: 12, damp cloth: yes}");

    /** The section. */
    static final Key<Interfacing> KEY =
            Key.optional(
                    "interfacing",
                    MapForm.of(
                            "interfacing",
                            List.of(WIDTH, NONWOVEN, KIND, STIFF, WEIGHT, PRE_SHRUNK, LEAFLET),
                            InterfacingSection::interfacing),
                    "What stiffens the pieces that are cut of `interfacing`.",
                    "{width: 90}");

    private InterfacingSection() {}

    private static Optional<Interfacing> interfacing(Fields fields) {
        return Optional.of(
                new Interfacing(
                        fields.get(WIDTH),
                        fields.get(NONWOVEN).orElse(false),
                        fields.get(KIND).flatMap(Answer::toOptional),
                        fields.get(STIFF).orElse(false),
                        fields.get(WEIGHT),
                        fields.get(PRE_SHRUNK),
                        fields.get(LEAFLET).orElse(Interfacing.Leaflet.NOT_TOLD)));
    }
}
