package secondbolt.bleach.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Placed;
import secondbolt.measure.Volume;

/** The {@code bleach} section of the project file: its keys, and how they are read. */
public final class BleachSection {
    private static final Key<String> LIKE =
            Key.optional(
                    NamedForm.LIKE,
                    Forms.text(60),
                    "The name of a cloth before it here: done the same way but for what is written"
                            + " here.",
                    "left curtain");
    private static final Key<Placed<Answer<Agent>>> WITH =
            Key.required(
                            "with",
                            Forms.placed(
                                    Forms.orUnknown(Forms.choice(Agent.values(), Agent::word))),
                            "What takes the stains or the colour out; while it is unknown the page"
                                    + " compares what its fibre bears.",
                            "oxygen bleach")
                    .asking("Read on the page what its fibre bears, and choose.");
    private static final Key<Colour> COLOUR =
            Key.optional(
                            "colour",
                            Forms.choice(Colour.values(), Colour::word),
                            "Whether the cloth has a colour to lose: white, also gone yellow;"
                                    + " natural, never dyed; dyed; patterned, that is checked, striped"
                                    + " or printed.",
                            "white")
                    .asking("Look into a hem or a seam, where it has not faded.");
    private static final Key<DyedWith> DYED_WITH =
            Key.optional(
                            "dyed with",
                            Forms.choice(DyedWith.values(), DyedWith::word),
                            "The class of dye it was coloured with, if you know: some hardly come"
                                    + " out.",
                            "direct")
                    .asking("Try the remover on an offcut; the class seldom stands on a label.");
    private static final Key<Triangle> TRIANGLE =
            Key.optional(
                            "triangle",
                            Forms.choice(Triangle.values(), Triangle::word),
                            "The triangle on its care label: empty, any bleach; two lines, oxygen"
                                    + " bleach only; crossed, none.",
                            "empty")
                    .asking("Look into its seams for the care label.");
    private static final Key<Boolean> COLOUR_TEST =
            Key.optional(
                            "colour test",
                            Forms.choice(result("stays", "goes")),
                            "What its colour did in the drop test on a hidden seam: stays, or goes.",
                            "stays")
                    .asking("Do the drop test on a hidden seam; the page says how.");
    private static final Key<Boolean> PULL_TEST =
            Key.optional(
                            "pull test",
                            Forms.choice(result("held", "tore")),
                            "What a thin place did when you pulled it firmly between both thumbs:"
                                    + " held, or tore.",
                            "held")
                    .asking("Pull the thinnest place firmly between both thumbs.");
    private static final Key<Volume> VESSEL =
            Key.optional(
                            "vessel",
                            VolumeForm.of("1 l", "200 l"),
                            "How much water your vessel takes with the cloth in it and room to move"
                                    + " it.",
                            "12 l")
                    .asking("Fill it by the litre with the cloth in it, to a hand below the rim.");
    private static final Key<Remover> REMOVER =
            Key.optional(
                            "remover",
                            Forms.choice(Remover.values(), Remover::word),
                            "What the colour remover is made of: thiourea dioxide, dithionite, or"
                                    + " packet where it names neither.",
                            "thiourea dioxide")
                    .asking("Read what it contains on its label.");
    private static final Key<Volume> DOSE =
            Key.required("dose", VolumeForm.of("1 ml", "5 l"), "How much of the product.", "50 ml");
    private static final Key<Volume> IN =
            Key.required("in", VolumeForm.of("100 ml", "200 l"), "In how much water.", "5 l");
    private static final Key<Integer> MINUTES =
            Key.required(
                    "minutes", Forms.whole(1, 600), "How long the cloth stays in at most.", "10");
    private static final Key<LabelDose> LABEL =
            Key.optional(
                            "label",
                            MapForm.of("a label", List.of(DOSE, IN, MINUTES), BleachSection::dose),
                            "What the label of your own bleach says for soaking cloth; nothing here"
                                    + " stands in for it.",
                            "{dose: 50 ml, in: 5 l, minutes: 10}")
                    .asking("Read the laundry directions on the bottle.");

    private static final Form<Bleaching> FORM =
            MapForm.of(
                    "a bleaching",
                    List.of(
                            LIKE,
                            WITH,
                            COLOUR,
                            DYED_WITH,
                            TRIANGLE,
                            COLOUR_TEST,
                            PULL_TEST,
                            VESSEL,
                            REMOVER,
                            LABEL),
                    BleachSection::bleaching);

    /** The section: what is done to which cloth. */
    public static final Key<Map<String, Bleaching>> KEY =
            Key.optional(
                    "bleach",
                    NamedForm.of("cloth", FORM),
                    "What is whitened or has its colour taken out before it is dyed or cut, each"
                            + " under the name of its cloth.",
                    "{left curtain: {with: oxygen bleach, colour: white}}");

    private BleachSection() {}

    private static Map<String, Boolean> result(String good, String bad) {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put(good, true);
        words.put(bad, false);
        return words;
    }

    private static Optional<LabelDose> dose(Fields fields) {
        LabelDose dose =
                new LabelDose(fields.require(DOSE), fields.require(IN), fields.require(MINUTES));
        if (dose.dose().compareTo(dose.in()) >= 0) {
            fields.tell(
                    DOSE,
                    "as much of the product as water, or more",
                    "what its label says for soaking cloth: much water and little of it, such as"
                            + " `dose: 50 ml` with `in: 5 l`");
            return Optional.empty();
        }
        return Optional.of(dose);
    }

    private static Optional<Bleaching> bleaching(Fields fields) {
        return Optional.of(
                new Bleaching(
                        fields.get(WITH)
                                .orElseGet(() -> new Placed<>(Answer.unknown(), fields.place())),
                        new Bleaching.Evidence(
                                fields.get(COLOUR),
                                fields.get(DYED_WITH),
                                fields.get(TRIANGLE),
                                fields.get(COLOUR_TEST),
                                fields.get(PULL_TEST)),
                        new Bleaching.Bath(
                                fields.get(VESSEL), fields.get(REMOVER), fields.get(LABEL)),
                        fields.leftOpen()));
    }
}
