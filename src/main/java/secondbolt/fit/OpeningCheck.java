package secondbolt.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.fit.size.Wearer;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Open;

/**
 * Whether the body passes each opening: woven cloth does not stretch, so the opening and twice its
 * slit must be as large as the measurement, and an easy 2 cm more. Common practice, no source.
 *
 * @param result the altered pattern
 * @param wearer if told
 * @param tape to print with
 */
record OpeningCheck(FitResult result, Optional<Wearer> wearer, Tape tape) {
    private static final Length EASY = Length.ofMillimetres(20);

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Opening opening : result.pattern().openings()) {
            Optional<Length> needs = opening.over().girth(wearer);
            Length has =
                    new Lengths(result.pattern(), result.pieces())
                            .of(opening.edges().value())
                            .plus(opening.slit().times(2));
            needs.flatMap(n -> judged(opening, has, n)).ifPresent(findings::add);
        }
        return findings;
    }

    private Optional<Finding> judged(Opening opening, Length has, Length needs) {
        List<EdgeSum.Term> open = result.open(opening.edges().value());
        return open.isEmpty()
                ? finding(opening, has, needs)
                : Optional.of(
                        new Finding(
                                opening.what(),
                                Level.WARNING,
                                "How wide the "
                                        + opening.what()
                                        + " opens after the alterations is not known.",
                                TapedGaps.of(result, tape).findOut(open)));
    }

    private Optional<Finding> finding(Opening opening, Length has, Length needs) {
        String sizes =
                "The "
                        + opening.what()
                        + " opens to "
                        + tape.printBoth(has)
                        + "; "
                        + opening.over().word()
                        + " is "
                        + tape.print(needs)
                        + ".";
        if (has.isShorterThan(needs)) {
            Length slit = needs.plus(EASY).minus(has).dividedBy(2);
            return Optional.of(
                    new Finding(
                            opening.what(),
                            Level.STOP,
                            sizes + " In woven cloth it will not go over.",
                            "Open it by a slit of "
                                    + tape.print(slit.roundedUpTo(tape.mark()))
                                    + " or more, a closing, or a wider edge."));
        }
        return has.isShorterThan(needs.plus(EASY))
                ? Optional.of(
                        new Finding(
                                opening.what(),
                                Level.CAUTION,
                                sizes + " That is tight.",
                                "Try it with a paper ring, or add a slit."))
                : Optional.empty();
    }

    List<Open> open() {
        return result.pattern().openings().stream()
                .filter(opening -> opening.over().girth(wearer).isEmpty())
                .map(opening -> opening.over().open(opening.what()))
                .toList();
    }
}
