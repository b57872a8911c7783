package secondbolt.lay.plan;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.placement.Effort;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.piece.Piece;
import secondbolt.supply.plan.Notion;

/**
 * The sections {@code lay}, {@code designs}, {@code make}, {@code cut so far} and {@code
 * interfacing}.
 */
public final class LaySection {
    /** Each is laid by itself, and every two that fit are laid together. */
    private static final int MOST_DESIGNS = 16;

    private static final Form<Placed<String>> NAME = Forms.placed(Forms.nameOf(60));

    private static final Key<Length> GAP =
            Key.optional(
                    "gap",
                    Forms.length(LengthRange.of("0 mm", "10 cm")),
                    "What is left between two cutting lines; 3 mm (about 1/8 in) if not told.",
                    "3 mm");
    private static final Key<Effort> EFFORT =
            Key.optional(
                    "effort",
                    Forms.choice(Effort.values(), Effort::word),
                    "How much is tried: quick for a first look, steady if not told, thorough for a"
                            + " cloth that is barely enough (minutes).",
                    "steady");
    private static final Key<Placed<LayPlan.Layers>> LAYERS =
            Key.optional(
                    "layers",
                    Forms.placed(Forms.choice(LayPlan.Layers.values(), LayPlan.Layers::word)),
                    "How the cloth lies when it is cut: single, so that every flaw is seen, if not"
                            + " told; or folded lengthwise, the right side out, where a flaw of"
                            + " either layer is a flaw of both.",
                    "single");
    private static final Key<Placed<Piece.Grain>> GRAIN =
            Key.required(
                    "grain",
                    Forms.placed(Forms.choice(Piece.Grain.values(), Piece.Grain::word)),
                    "How it may lie: along, across, bias, or any.",
                    "any");
    private static final Key<Map<String, Placed<Piece.Grain>>> PIECES =
            Key.optional(
                    "pieces",
                    NamedForm.of(
                            "piece",
                            MapForm.of(
                                    "how a piece lies",
                                    List.of(GRAIN),
                                    fields -> Optional.of(fields.require(GRAIN)))),
                    "Pieces that may lie otherwise than the pattern says.",
                    "{collar: {grain: any}}");

    private static final Form<Placed<PieceEdge>> PART =
            Forms.placed(PieceEdge.form("an edge or a mark of a piece, such as `front.side`"));
    private static final Key<List<Match>> MATCH =
            Key.optional(
                    "match",
                    ListForm.of(
                            "places that match",
                            Forms.map(
                                    ListForm.of("the two that meet", PART, 2, 2),
                                    two -> new Match(two.get(0), two.get(1))),
                            0,
                            30),
                    "Where the cloth's stripes or checks run on from one piece into the other, the"
                            + " most important first: two edges that are sewn together meet at"
                            + " their lowest notches, or at their lower ends; a mark meets as it"
                            + " is.",
                    "[[front.side, back.side]]");
    private static final Key<Length> BOLT_WIDTH =
            Key.required(
                    "width", Forms.length(LengthRange.of("20 cm", "4 m")), "Of the bolt.", "150");
    private static final Key<BigDecimal> PRICE =
            Key.optional(
                            "price",
                            Forms.number("0", "100000"),
                            "Of a metre; of a yard where the units are inches.",
                            "14.90")
                    .kept();
    private static final Key<NewCloth> NEW_CLOTH =
            Key.optional(
                    "new cloth",
                    MapForm.of(
                            "new cloth",
                            List.of(BOLT_WIDTH, PRICE),
                            fields ->
                                    Optional.of(
                                            new NewCloth(
                                                    fields.require(BOLT_WIDTH),
                                                    fields.get(PRICE)))),
                    "Cloth as a shop sells it, to compare with: how much it would take, and what"
                            + " is saved.",
                    "{width: 150, price: 14.90}");

    /** The section of this name. */
    public static final Key<LayPlan.Rules> LAY =
            Key.optional(
                    "lay",
                    MapForm.of(
                            "a lay",
                            List.of(GAP, EFFORT, LAYERS, PIECES, MATCH, NEW_CLOTH),
                            fields ->
                                    Optional.of(
                                            new LayPlan.Rules(
                                                    fields.get(GAP),
                                                    fields.get(EFFORT),
                                                    fields.get(LAYERS),
                                                    fields.get(PIECES).orElse(Map.of()),
                                                    fields.get(MATCH).orElse(List.of()),
                                                    fields.get(NEW_CLOTH)))),
                    "How pieces are laid on the cloth.",
                    "{gap: 3 mm, effort: steady}");

    /** The section of this name. */
    public static final Key<Interfacing> INTERFACING = InterfacingSection.KEY;

    private static final Key<List<Placed<String>>> USES =
            Key.required(
                    "uses",
                    ListForm.of("pieces", NAME, 1, 100),
                    "The pieces it is made of, by their names in `pattern`.",
                    "[front, back, sleeve, collar]");
    private static final Key<Map<String, Length>> PRINTED_NEED =
            Key.optional(
                    "printed need",
                    NamedForm.of("width of cloth", Forms.length(LengthRange.of("1 cm", "50 m"))),
                    "What the pattern's envelope says is needed, by the width of the cloth.",
                    "{115: 2.6 m, 150: 1.9 m}");
    private static final Key<List<ClothWeight>> WEIGHT =
            Key.required(
                    "weight",
                    ListForm.of("the lightest and the heaviest", Forms.clothWeight(), 2, 2),
                    "The weights of cloth it is made for, from and to.",
                    "[120 g/m2, 220 g/m2]");
    private static final Key<List<ClothWeight>> SUITS =
            Key.optional(
                    "suits",
                    MapForm.of(
                            "what a design suits",
                            List.of(WEIGHT),
                            fields -> Optional.of(fields.require(WEIGHT))),
                    "The cloth it is made for.",
                    "{weight: [120 g/m2, 220 g/m2]}");

    /** The section of this name. */
    public static final Key<Map<String, Design>> DESIGNS =
            Key.optional(
                    "designs",
                    NamedForm.atMost(
                            MOST_DESIGNS,
                            "design",
                            MapForm.of(
                                    "a design",
                                    List.of(USES, PRINTED_NEED, SUITS, Notion.KEY),
                                    LaySection::design)),
                    "What the cloth could become; pieces can serve in several designs.",
                    "{plain: {uses: [front, back]}}");

    /** The section of this name. */
    public static final Key<Placed<String>> MAKE =
            Key.optional(
                    "make",
                    NAME,
                    "The design the notebook works out; the first if not told.",
                    "plain");

    /** The section of this name. */
    public static final Key<List<Placing>> CUT_SO_FAR =
            Key.optional(
                    "cut so far",
                    ListForm.of("pieces that are cut", PlacingForm.CUT, 0, 200),
                    "Pieces that are cut already; the rest is planned round them.",
                    "[{piece: front, cloth: left curtain, at: [20, 60]}]");

    /** All five, in the order of the reference. */
    public static final List<Key<?>> KEYS = List.of(DESIGNS, MAKE, LAY, CUT_SO_FAR, INTERFACING);

    private LaySection() {}

    /** Where what is written is read from. */
    public interface Source {
        /** What stands under a key, if it is written. */
        <T> Optional<T> get(Key<T> key);
    }

    /** All five together. */
    public static LayPlan plan(Source fields) {
        return new LayPlan(
                fields.get(LAY).orElse(LayPlan.Rules.NONE),
                fields.get(DESIGNS).orElse(Map.of()),
                fields.get(MAKE),
                PlanFile.cut(fields),
                PlanFile.pinned(fields),
                fields.get(INTERFACING));
    }

    private static Optional<Design> design(Fields fields) {
        Map<Length, Length> need = new LinkedHashMap<>();
        for (Map.Entry<String, Length> entry :
                fields.get(PRINTED_NEED).orElse(Map.of()).entrySet()) {
            Optional<Length> width = width(entry.getKey(), fields.tape());
            if (width.isEmpty()) {
                fields.tell(
                        PRINTED_NEED,
                        "`" + entry.getKey() + "`, which is no width of cloth",
                        "a width, such as `115: 2.6 m`");
                return Optional.empty();
            }
            need.put(width.get(), entry.getValue());
        }
        Optional<List<ClothWeight>> suits = fields.get(SUITS);
        if (suits.filter(s -> s.get(0).compareTo(s.get(1)) > 0).isPresent()) {
            fields.tell(
                    SUITS, "a lightest cloth that is heavier than the heaviest", "from, then to");
            return Optional.empty();
        }
        return Optional.of(
                new Design(
                        fields.require(USES),
                        need,
                        suits,
                        fields.get(Notion.KEY).orElse(List.of())));
    }

    private static Optional<Length> width(String text, Tape tape) {
        Optional<Length> width =
                Length.parse(text, tape).fold(Optional::of, refusal -> Optional.empty());
        return width.filter(Length::isPositive);
    }
}
