package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.BoltWidth;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.textile.Cloth;
import secondbolt.textile.Prewash;
import secondbolt.textile.Textile;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Open;

/** What was not written of one cloth: assumed, or left open with the way to find out. */
final class ClothGaps {
    private static final String SPECIMENS =
            "ISO 3759, specimens at least 50 cm by 50 cm, marks at least 35 cm apart and at least"
                    + " 5 cm from the edges";
    private static final Convention SQUARE =
            new Convention(Length.ofInches(20, 1), Length.ofMillimetres(500), SPECIMENS);
    private static final Convention FROM_EDGES =
            new Convention(Length.ofInches(2, 1), Length.ofMillimetres(50), SPECIMENS);

    private static final Convention STRETCHED =
            Convention.common(Length.ofInches(4, 1), Length.ofMillimetres(100));

    private ClothGaps() {}

    static List<Assumed> assumed(ClothResult result, Tape tape) {
        Cloth cloth = result.cloth();
        List<Assumed> assumed = new ArrayList<>();
        String of = " of " + result.name();
        if (cloth.textile().role().isEmpty()) {
            assumed.add(new Assumed("role" + of, "main", "not told"));
        }
        if (cloth.textile().nap().isEmpty()) {
            assumed.add(new Assumed("nap" + of, "none: pieces may be turned", "not told"));
        }
        if (cloth.textile().napOrNone() == Textile.Nap.UNKNOWN) {
            assumed.add(
                    new Assumed(
                            "nap" + of,
                            "one-way: no piece is turned upside down",
                            "unknown; right for both, and takes more cloth if there is none"));
        }
        if (cloth.prewash().filter(Prewash.Never.class::isInstance).isPresent()) {
            assumed.add(
                    new Assumed(
                            "shrinkage" + of,
                            "never washed: it stays as measured",
                            "told; steam and a damp press cloth may still draw it in (common"
                                    + " practice, no source)"));
        }
        if (cloth.prewash().isEmpty()) {
            assumed.add(new Assumed("shrinkage" + of, "no further shrinkage", "not told"));
        }
        if (cloth.condition().survey().filter(s -> s.when().isEmpty()).isPresent()) {
            assumed.add(
                    new Assumed("survey" + of, "before the last wash", "not told; the safer one"));
        }
        if (cloth.condition().told() == Cloth.Flaws.NOT_TOLD) {
            assumed.add(
                    new Assumed(
                            "flaws" + of,
                            "none",
                            "not told, and never taken over from a cloth it is like"));
        }
        if (cloth.condition().clear().isEmpty() && !cloth.condition().flaws().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "kept clear round flaws" + of, tape.print(Length.ZERO), "not told"));
        }
        return assumed;
    }

    /** What is taken for granted of the bolts that cloths are compared with. */
    static List<Assumed> assumedOfBolts(List<ClothResult> results, Tape tape) {
        return results.stream().allMatch(result -> result.best().isEmpty())
                ? List.of()
                : List.of(
                        new Assumed(
                                "how much of a bolt the selvages take",
                                tape.print(BoltWidth.SELVAGES.on(tape)) + " together",
                                BoltWidth.SELVAGES.source()));
    }

    static List<Open> open(ClothResult result, Tape tape) {
        Cloth cloth = result.cloth();
        List<Open> open = new ArrayList<>();
        String name = result.name();
        if (cloth.extent().toOptional().isEmpty()) {
            open.add(
                    new Open(
                            "the size of " + name,
                            "its area, its rectangles, its length by bolt width, and every layout",
                            "Spread it flat without pulling, measure both sides, top, bottom and"
                                    + " one diagonal."));
        }
        ways(result.left())
                .ifPresent(
                        ways ->
                                open.add(
                                        new Open(
                                                "how " + name + " draws in " + ways,
                                                "its size, sound area and rectangles after the"
                                                        + " wash",
                                                square(tape))));
        if (cloth.textile().napOrNone() == Textile.Nap.UNKNOWN) {
            open.add(
                    new Open(
                            "the nap of " + name,
                            "whether pieces may be turned, which saves cloth",
                            "Stroke it up and down, and hold two pieces side by side, one of them"
                                    + " turned: if hand or eye can tell them apart, write `nap:"
                                    + " one-way`, else `nap: none`."));
        }
        if (cloth.textile().fibre().flatMap(Answer::toOptional).isEmpty()) {
            open.add(
                    new Open(
                            "the fibre of " + name,
                            "the heat of iron and wash, which stay at the lowest, and any dye",
                            "Look for a label; ask a fabric shop; or burn one thread, with care;"
                                    + " then write its `fibre`, and under `known by` how you found"
                                    + " it."));
        }
        boolean isStretchOpen =
                cloth.textile().stretch().filter(s -> s.toOptional().isEmpty()).isPresent();
        if (isStretchOpen) {
            open.add(
                    new Open(
                            "how far " + name + " stretches",
                            "openings, bands and ease of a knit; they are judged as woven cloth",
                            "Fold it, mark "
                                    + tape.print(STRETCHED.on(tape))
                                    + " on the fold, pull until it resists, and measure what they"
                                    + " become; do so across and along."));
        }
        if (result.heaviness().weight().isEmpty()) {
            open.add(
                    new Open(
                            "the weight of " + name,
                            "the dye it needs, and whether it suits a design",
                            "Weigh it dry on a kitchen scale, in a bag if it is large, and write"
                                    + " its `mass`; or, if its seller tells how heavy it is by"
                                    + " area, its `weight`."));
        }
        return open;
    }

    private static Optional<String> ways(AcrossAlong<Optional<Share>> left) {
        if (left.across().isEmpty() && left.along().isEmpty()) {
            return Optional.of("across and along");
        }
        if (left.across().isEmpty()) {
            return Optional.of("across");
        }
        return left.along().isEmpty() ? Optional.of("along") : Optional.empty();
    }

    private static String square(Tape tape) {
        return "Mark a square of "
                + tape.print(SQUARE.on(tape))
                + " along the threads, at least "
                + tape.print(FROM_EDGES.on(tape))
                + " from every edge and selvage, wash and dry the cloth as the garment will be"
                + " washed, measure the square again, and write both under `prewash`.";
    }
}
