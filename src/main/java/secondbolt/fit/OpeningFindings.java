package secondbolt.fit;

import java.util.Optional;
import secondbolt.fit.result.TapedGaps;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * Whether the body passes an opening: woven cloth does not stretch, so the opening and twice its
 * slit must be as large as the measurement, and an easy 2 cm more. Common practice, no source.
 *
 * @param gaps what the tape does not tell
 * @param tape to print with
 */
record OpeningFindings(TapedGaps gaps, Tape tape) {
    private static final Length EASY = Length.ofMillimetres(20);

    /** What is to be said of an opening; nothing if the body passes, or is not measured. */
    Optional<Finding> of(OpeningCheck check) {
        return check.needs()
                .flatMap(n -> check.open().isEmpty() ? judged(check, n) : Optional.of(open(check)));
    }

    private Finding open(OpeningCheck check) {
        return new Finding(
                "opening-not-known",
                about(check),
                Level.WARNING,
                "How wide the "
                        + check.opening().what()
                        + " opens after the alterations is not known.",
                gaps.findOut(check.open()));
    }

    private Optional<Finding> judged(OpeningCheck check, Length needs) {
        String sizes =
                "The "
                        + check.opening().what()
                        + " opens to "
                        + tape.printBoth(check.opens())
                        + "; the "
                        + check.opening().over().word()
                        + " is "
                        + tape.print(needs)
                        + ".";
        Length easy = needs.plus(EASY);
        if (check.stretched().isLongerThan(check.opens())) {
            return ofAKnit(check, needs, sizes);
        }
        if (check.opens().isShorterThan(needs)) {
            Length slit = easy.minus(check.opens()).dividedBy(2);
            return Optional.of(
                    new Finding(
                            "opening-too-small",
                            about(check),
                            Level.STOP,
                            sizes + " In woven cloth it will not go over.",
                            "Open it by a slit of "
                                    + tape.print(slit.roundedUpTo(tape.mark()))
                                    + " or more, a closing, or a wider edge; or, of a knit, write"
                                    + " its `stretch` with the cloth."));
        }
        return check.opens().isShorterThan(easy)
                ? Optional.of(
                        new Finding(
                                "opening-tight",
                                about(check),
                                Level.CAUTION,
                                sizes + " That is tight.",
                                "Try it with a paper ring, or add a slit."))
                : Optional.empty();
    }

    private Optional<Finding> ofAKnit(OpeningCheck check, Length needs, String sizes) {
        String stretches = sizes + " Stretched it opens to " + tape.printBoth(check.stretched());
        if (check.stretched().isShorterThan(needs)) {
            Length slit = needs.minus(check.stretched()).dividedBy(2);
            return Optional.of(
                    new Finding(
                            "opening-too-small",
                            about(check),
                            Level.STOP,
                            stretches + ", and will not go over.",
                            "Open it by a slit of "
                                    + tape.print(slit.roundedUpTo(tape.mark()))
                                    + " or more, a longer band, or a wider edge."));
        }
        return check.opens().isShorterThan(needs)
                ? Optional.of(
                        new Finding(
                                "opening-stretches",
                                about(check),
                                Level.NOTE,
                                stretches + ", and goes over.",
                                "Sew it with a seam that stretches as far."))
                : Optional.empty();
    }

    private static Subject about(OpeningCheck check) {
        return new Subject.Edges(
                check.opening().what(), check.opening().edges().value().pieceEdges());
    }
}
