package secondbolt.pattern;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.wearer.Passage;

/** How seams and openings are written. */
final class SeamKeys {
    private static final int MOST = 200;

    private static final Form<Placed<EdgeSum>> SUM =
            Forms.placed(
                    Forms.parsed(
                            "edges such as `front.side` or `2 front.neckline + 2 back.neckline`",
                            EdgeSum::parse));
    private static final Form<List<Placed<EdgeSum>>> SIDES =
            ListForm.of("the two sides of a join", SUM, 2, 2);

    private static final Key<List<Placed<EdgeSum>>> JOIN =
            Key.required(
                    "join",
                    SIDES,
                    "The two sides that are sewn together.",
                    "[sleeve.cap, front.armhole + back.armhole]");
    private static final Key<Length> EASE =
            Key.optional(
                    "ease",
                    Forms.length(LengthRange.of("0 mm", "30 cm")),
                    "By how much the first is longer, on purpose.",
                    "2");
    private static final Key<BigDecimal> GATHER =
            Key.optional(
                    "gather",
                    Forms.number("1", "10"),
                    "How many times the second the first is, gathered.",
                    "1.5");
    private static final Key<Length> LAPS =
            Key.optional(
                    "laps",
                    Forms.length(LengthRange.of("0 mm", "30 cm")),
                    "How much of the second runs past the first and is not sewn to it, over and"
                            + " under lap together: a waistband's. Write the band second, as in"
                            + " `{join: [skirt.waist, waistband.bottom], laps: 3}`; it may stand"
                            + " beside `ease` or `gather`, which count up to the lap.",
                    "3");
    private static final Form<Seam> SEAM =
            Forms.either(
                    MapForm.of("a join", List.of(JOIN, EASE, GATHER, LAPS), SeamKeys::seam)
                            .with(Rule.not(Rule.has("ease", "gather"))),
                    Forms.map(
                            SIDES, sides -> seam(sides, Length.ZERO, BigDecimal.ONE, Length.ZERO)));

    static final Key<List<Seam>> SEAMS =
            Key.optional(
                    "seams",
                    ListForm.of("joins", SEAM, 0, MOST),
                    "What is sewn to what; every join is checked before and after alterations.",
                    "[[front.side, back.side]]");

    private static final Key<String> WHAT =
            Key.required("what", Forms.text(60), "The opening's name.", "neck");
    private static final Key<Placed<EdgeSum>> EDGES =
            Key.required("edges", SUM, "The edges round it.", "2 front.neckline + 2 back.neckline");
    private static final Key<Length> SLIT =
            Key.optional(
                    "slit",
                    Forms.length(LengthRange.of("0 mm", "2 m")),
                    "A slit that opens it further.",
                    "0");
    private static final Key<Passage> OVER =
            Key.required("over", Passage.FORM, "What of the body it must let through.", "head");

    static final Key<List<Opening>> OPENINGS =
            Key.optional(
                    "openings",
                    ListForm.of(
                            "openings",
                            MapForm.of(
                                    "an opening",
                                    List.of(WHAT, EDGES, SLIT, OVER),
                                    SeamKeys::opening),
                            0,
                            MOST),
                    "Openings that must let the body through.",
                    "[{what: neck, edges: 2 front.neckline + 2 back.neckline, over: head}]");

    private SeamKeys() {}

    private static Optional<Seam> seam(Fields fields) {
        if (fields.get(EASE).isPresent() && fields.get(GATHER).isPresent()) {
            fields.tell(
                    GATHER,
                    "`ease` and `gather` on one join",
                    "one of them: `ease` for a little more, `gather` for many times as much");
            return Optional.empty();
        }
        return Optional.of(
                seam(
                        fields.require(JOIN),
                        fields.get(EASE).orElse(Length.ZERO),
                        fields.get(GATHER).orElse(BigDecimal.ONE),
                        fields.get(LAPS).orElse(Length.ZERO)));
    }

    private static Seam seam(
            List<Placed<EdgeSum>> sides, Length ease, BigDecimal gather, Length laps) {
        return new Seam(sides.get(0), sides.get(1), ease, gather, laps);
    }

    private static Optional<Opening> opening(Fields fields) {
        return Optional.of(
                new Opening(
                        fields.require(WHAT),
                        fields.require(EDGES),
                        fields.get(SLIT).orElse(Length.ZERO),
                        fields.require(OVER)));
    }
}
