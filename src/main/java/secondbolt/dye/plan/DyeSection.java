package secondbolt.dye.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.Placed;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/** The {@code dye} section of the project file: its keys, and how they are read. */
public final class DyeSection {
    private static final int MOST_COLOURS = 20;
    private static final int MOST_CLOTHS = 60;

    private static final Key<List<Placed<String>>> CLOTH =
            Key.required(
                            "cloth",
                            ListForm.of("cloths", Forms.placed(Forms.nameOf(60)), 1, MOST_CLOTHS),
                            "The cloths that get this colour, by your names for them.",
                            "[left curtain, right curtain]")
                    .asking("Hold the cloths beside what they shall go with, by daylight.");
    private static final Key<String> COLOUR =
            Key.optional("colour", Forms.text(60), "The colour, in your own words.", "slate");
    private static final Key<DyeClass> CLASS =
            Key.optional(
                            "class",
                            Forms.choice(DyeClass.values(), DyeClass::word),
                            "What kind of dye it is; the packet or its leaflet names it.",
                            "direct")
                    .asking(
                            "Read the packet: it names the class, or the fibres it is for; its"
                                    + " maker's own page tells it too.");
    private static final Key<Depth> DEPTH =
            Key.optional(
                    "depth",
                    Forms.choice(Depth.values(), Depth::word),
                    "How deep the colour shall be.",
                    "medium");
    private static final Key<Placed<Share>> SHADE =
            Key.optional(
                    "shade",
                    Forms.placed(
                            Forms.checked(
                                    Forms.share(),
                                    share -> share.fraction() <= 0.12,
                                    "a share such as 2 %, up to 12 %: grams of dye to 100 g of the"
                                            + " dry fibre that takes")),
                    "Grams of dye to 100 g of the dry fibre that takes, once the test strip has"
                            + " shown how much is right.",
                    "2 %");
    private static final Key<Mass> DYES =
            Key.required("dyes", Forms.mass(), "How much dry cloth one packet dyes.", "250 g");
    private static final Key<Boolean> FOR_MACHINE =
            Key.optional(
                    "for machine",
                    Forms.yesOrNo(),
                    "Whether its leaflet is for a washing machine.",
                    "yes");
    private static final Key<DyePlan.Packet> PACKET =
            Key.optional(
                    "packet",
                    MapForm.of("a packet", List.of(DYES, FOR_MACHINE), DyeSection::packet),
                    "What one packet of the dye is for, as it says.",
                    "{dyes: 250 g}");
    private static final Key<Share> RATIO =
            Key.optional(
                    "ratio",
                    DyeForms.ratio(),
                    "How many times the dry cloth's weight the bath has; 20 if not told.",
                    "20");
    private static final Key<Placed<Volume>> VESSEL =
            Key.optional(
                    "vessel",
                    Forms.placed(DyeForms.volume()),
                    "How much bath the vessel takes with the cloth in it and room to stir, a hand's"
                            + " breadth below the rim; of a top loader, how much water it takes.",
                    "12 l");
    private static final Key<DyePlan.Machine> MACHINE =
            Key.optional(
                    "machine",
                    Forms.choice(DyePlan.Machine.values(), DyePlan.Machine::word),
                    "The washing machine, if it is done in one.",
                    "top loader");
    private static final Key<DyePlan.When> WHEN =
            Key.optional(
                    "when",
                    Forms.choice(DyePlan.When.values(), DyePlan.When::word),
                    "When it is done; before cutting if not told.",
                    "before cutting");
    private static final Key<Mass> MASS =
            Key.optional(
                    "mass",
                    Forms.mass(),
                    "What goes into the bath weighs dry, on the scale; if not told, what its cloths"
                            + " or pieces weigh by their own.",
                    "822 g");
    private static final Key<String> OVER =
            Key.optional(
                    "over",
                    Forms.text(60),
                    "The colour the cloth has now; `white` if it has none.",
                    "white");

    private static final Form<DyePlan> FORM =
            MapForm.of(
                    "a colour",
                    List.of(
                            CLOTH,
                            COLOUR,
                            CLASS,
                            DEPTH,
                            SHADE,
                            PACKET,
                            RATIO,
                            VESSEL,
                            MACHINE,
                            WHEN,
                            MASS,
                            OVER,
                            LeafletKeys.LEAFLET),
                    DyeSection::plan);

    /** The section: one colour, or several; nothing is dyed if it says none. */
    public static final Key<List<DyePlan>> KEY =
            Key.optional(
                    "dye",
                    Forms.either(
                            Forms.either(
                                    ListForm.of("colours", FORM, 1, MOST_COLOURS),
                                    Forms.map(FORM, List::of)),
                            Forms.none(List.<DyePlan>of())),
                    "Which cloths are dyed with what; a list of several for several colours; `none`"
                            + " if they keep their own.",
                    "{cloth: [left curtain], colour: slate, class: direct, depth: medium, vessel:"
                            + " 12 l}");

    private DyeSection() {}

    private static Optional<DyePlan.Packet> packet(Fields fields) {
        return Optional.of(
                new DyePlan.Packet(fields.require(DYES), fields.get(FOR_MACHINE).orElse(false)));
    }

    private static Optional<DyePlan> plan(Fields fields) {
        return Optional.of(
                new DyePlan(
                        fields.orMeanwhile(CLOTH, List.of(), "no cloth").orElse(List.of()),
                        new DyePlan.Dye(
                                fields.get(COLOUR),
                                fields.get(CLASS),
                                fields.get(DEPTH),
                                fields.get(SHADE)),
                        fields.get(PACKET),
                        new DyePlan.Bath(
                                fields.get(RATIO), fields.get(VESSEL), fields.get(MACHINE)),
                        fields.get(WHEN),
                        fields.get(LeafletKeys.LEAFLET).orElse(Leaflet.NONE),
                        fields.get(MASS),
                        fields.get(OVER),
                        fields.leftOpen()));
    }
}
