package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.fastening.Button;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Sentence;

/** How near the holes of a closure come to its edges and to each other. */
final class HoleFindings {
    /** From the end of a hole to an edge. */
    private static final Convention TO_EDGE =
            new Convention(
                    Length.ofInches(1, 4),
                    Length.ofMillimetres(6),
                    "Textiles and Clothing, K. H. Watson, American School of Home Economics, 1907");

    /** Cloth left between two upright holes, for their bars; common practice, no source. */
    private static final Length BETWEEN_HOLES = Length.ofMillimetres(10);

    private final ClosureResult result;
    private final Fastening fastening;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();
    private final Length usual;

    HoleFindings(ClosureResult result) {
        this.result = result;
        this.fastening = result.closure().fastening();
        this.tape = result.tape();
        this.usual = TO_EDGE.on(tape);
    }

    List<Finding> findings() {
        ends();
        closeHoles();
        trial();
        return List.copyOf(findings);
    }

    /** How near each end of the placket, and the finished edge, the holes come. */
    private void ends() {
        FastenerMark first = result.marks().get(0);
        FastenerMark last = result.marks().get(result.marks().size() - 1);
        boolean isOne = result.marks().size() == 1;
        Length lacking = roomNeeded().minus(result.length());
        if (lacking.isPositive()) {
            tooShort(lacking, isCutThrough(first, last));
        } else {
            topAndFoot(first, last, isOne);
        }
        result.marks().stream()
                .filter(mark -> !mark.isUpright())
                .findFirst()
                .ifPresent(this::level);
    }

    /**
     * All holes as close as they may be, with the usual cloth above the first and below the last.
     */
    private Length roomNeeded() {
        boolean isUpright = result.closure().isUpright();
        return usual.times(2)
                .plus(fastening.apart().times(result.marks().size() - 1L))
                .plus(isUpright ? result.hole() : Length.ZERO);
    }

    /** Whether a hole would be cut through an end of the placket. */
    private boolean isCutThrough(FastenerMark first, FastenerMark last) {
        return !above(first).isPositive() || !below(last).isPositive();
    }

    /** The cloth left between the top edge and a hole; negative past it. */
    private static Length above(FastenerMark mark) {
        return mark.isUpright() ? mark.start() : mark.fromTop();
    }

    /** The cloth left between a hole and the bottom edge; negative past it. */
    private Length below(FastenerMark mark) {
        return result.length().minus(mark.isUpright() ? mark.end() : mark.fromTop());
    }

    /** No place suits: to move a hole away from one end would bring it nearer to the other. */
    private void tooShort(Length lacking, boolean isCutThrough) {
        boolean isOne = result.marks().size() == 1;
        boolean isUpright = result.closure().isUpright();
        tell(
                "placket-too-short",
                isCutThrough ? Level.STOP : isOne ? Level.CAUTION : Level.WARNING,
                (isOne ? "The " : result.marks().size() + " ")
                        + (isUpright ? "" : "level ")
                        + (isOne ? "hole" : "holes")
                        + (isUpright ? " of " + tape.printSmall(result.hole()) : "")
                        + (isOne ? " does" : " do")
                        + " not fit between the ends of a placket of "
                        + tape.printSmall(result.length())
                        + ": with the usual "
                        + tape.printSmall(usual)
                        + " of cloth to each end "
                        + tape.printSmall(lacking.roundedUpTo(tape.mark()))
                        + " are lacking.",
                (isUpright ? "Work a level hole, take " : "Take ")
                        + (isOne || !result.mayHaveFewer() ? "" : "fewer buttons or ")
                        + "a smaller button, or make the placket "
                        + tape.printSmall(lacking.roundedUpTo(tape.mark()))
                        + " longer.");
    }

    private void topAndFoot(FastenerMark first, FastenerMark last, boolean isOne) {
        near(
                isOne ? "The hole" : "The first hole",
                "top edge",
                above(first),
                "Set the button lower: a `first` larger by ");
        near(
                isOne ? "The hole" : "The last hole",
                "bottom edge",
                below(last),
                isOne
                        ? "Set the button higher: a `first` smaller by "
                        : "Set the last button higher: a `last` larger by ");
    }

    private void level(FastenerMark mark) {
        Overlap overlap = result.closure().overlap();
        near(
                result.closure().isUpright() ? "The level hole" : "Each level hole",
                "finished edge",
                overlap.extension().minus(overlap.rowOut()).minus(mark.start().size()),
                "Widen the extension on both sides, and the facing with it: an extension larger"
                        + " by ");
    }

    /** A hole that ends less than the usual distance inside an edge; past it nothing is cut. */
    private void near(String hole, String edge, Length left, String remedy) {
        if (!left.isShorterThan(usual)) {
            return;
        }
        boolean isCut = !left.isLongerThan(Length.ZERO);
        String text =
                !isCut
                        ? hole + " leaves " + cloth(left) + " of cloth to the "
                        : left.isNegative()
                                ? hole + " would run " + past(left) + " past the "
                                : hole + " would cut into the ";
        tell(
                isCut ? "buttonhole-past-edge" : "buttonhole-near-edge",
                isCut ? Level.STOP : Level.CAUTION,
                text + edge + ".",
                remedy
                        + tape.printSmall(usual.minus(left).roundedUpTo(tape.mark()))
                        + " leaves the usual "
                        + tape.printSmall(usual)
                        + ".");
    }

    /** Down to the mark, so that with what is lacking, up to one, it makes the whole. */
    private String cloth(Length left) {
        Length seen = left.roundedDownTo(tape.mark());
        return seen.isPositive()
                ? "only " + tape.printSmall(seen)
                : left.isPositive() ? "less than " + tape.printSmall(tape.mark()) : "no";
    }

    private String past(Length left) {
        return tape.printSmall(left.size().roundedUpTo(tape.mark()));
    }

    private void closeHoles() {
        Optional<Length> between = Optional.empty();
        for (int i = 1; i < result.marks().size(); i++) {
            FastenerMark above = result.marks().get(i - 1);
            FastenerMark below = result.marks().get(i);
            if (above.isUpright() && below.isUpright()) {
                Length cloth = below.start().minus(above.end());
                between = Optional.of(between.map(cloth::orShorter).orElse(cloth));
            }
        }
        if (between.filter(b -> b.isShorterThan(BETWEEN_HOLES)).isPresent()) {
            tell(
                    "buttonholes-close",
                    Level.CAUTION,
                    Sentence.capital(cloth(between.get()))
                            + " of cloth is left between one hole and the next.",
                    result.mayHaveFewer()
                            ? "Take fewer buttons, or work the holes level."
                            : "Take smaller buttons, or work the holes level.");
        }
    }

    private void trial() {
        tell(
                "buttonhole-trial",
                Level.NOTE,
                "The hole of "
                        + tape.printSmallBoth(result.hole())
                        + " is what the button needs to pass, between the bars"
                        + (fastening.ease().isPresent() ? ", with your working ease." : "."),
                "Work a trial hole on a scrap with the same layers and interfacing, open it, and"
                        + " button it before you mark the garment."
                        + (fastening.button().orElseThrow().shape() == Button.Shape.FLAT
                                ? ""
                                : " Wrap a strip of paper round the button: half of it is the"
                                        + " hole."));
    }

    private void tell(String code, Level level, String text, String remedy) {
        findings.add(ClosureFindings.found(result, code, level, text, remedy));
    }
}
