package secondbolt.fit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.fit.result.BareLength;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.TapedGaps;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.Seam;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What a maker should know of a seam that does not meet, or of which that is not known.
 *
 * @param result the pattern, altered
 * @param gaps what the tape does not tell
 * @param tape to print with
 */
record SeamFindings(FitResult result, TapedGaps gaps, Tape tape) {
    /**
     * What is eased in without being written, on either tape.
     *
     * <p>A quarter of an inch is what a made-to-measure shirt maker accepts. Common practice, no
     * source.
     */
    private static final Length EASED_IN = Length.ofInches(1, 4);

    /** What is to be said of a seam; nothing if it meets. */
    Optional<Finding> of(SeamCheck check) {
        if (check.meets()) {
            return Optional.empty();
        }
        return Optional.of(check.isKnown() ? off(check, amounts(check)) : open(check));
    }

    private static Finding told(
            SeamCheck check, String code, Level level, String text, String remedy) {
        Subject seam = new Subject.Edges(check.seam().words(), check.seam().edges());
        return new Finding(code, seam, level, text, remedy);
    }

    /** A seam that no longer meets with what is cut as it is. */
    Finding asCut(SeamCheck check) {
        return told(
                check,
                "seam-apart-as-cut",
                Level.STOP,
                "With what is cut as it is, this seam no longer meets: " + amounts(check),
                "Take back for the other side what the cut piece does not have, or write `spoilt:"
                        + " yes` with the cut piece, and it is planned anew.");
    }

    /** Neither held nor broken: what is cut must be measured first. */
    private Finding asked(SeamCheck check, List<String> pieces) {
        return told(
                check,
                "seam-not-known",
                Level.WARNING,
                "Whether this seam still meets after the alterations is not known: "
                        + String.join(", ", pieces)
                        + (pieces.size() > 1 ? " are" : " is")
                        + " cut, and it is not told with which of them.",
                "Write `altered` with what is cut, under `cut so far`.");
    }

    /** Neither held nor broken: what the tape does not tell must be looked up first. */
    private Finding open(SeamCheck check) {
        List<String> asked =
                check.open().stream()
                        .map(EdgeSum.Term::piece)
                        .filter(result.cut()::isAsked)
                        .distinct()
                        .toList();
        if (!asked.isEmpty()) {
            return asked(check, asked);
        }
        boolean several = check.open().size() > 1;
        return told(
                check,
                "seam-not-known",
                Level.WARNING,
                "Whether this seam still meets after the alterations is not known: "
                        + check.open().stream()
                                .map(term -> term.edge().toString())
                                .collect(Collectors.joining(", "))
                        + (several ? " are" : " is")
                        + " known by tape, which does not show whether the alterations change "
                        + (several ? "them." : "it.")
                        + (check.metBefore() ? "" : " As taped, it does not meet."),
                gaps.findOut(check.open()));
    }

    private Finding off(SeamCheck check, String amounts) {
        if (check.isBroken() && hasCut(check)) {
            return asCut(check);
        }
        if (check.isBroken()) {
            LeftOut leftOut = LeftOut.of(check, result, tape);
            return told(
                    check,
                    "seam-apart",
                    Level.STOP,
                    "After the alterations this seam no longer meets: " + amounts + leftOut.text(),
                    leftOut.remedy());
        }
        if (isCap(check) && check.after().difference().isPositive()) {
            Length ease = check.seam().ease().plus(check.after().difference());
            return told(
                    check,
                    "seam-cap-longer",
                    Level.NOTE,
                    "The cap is longer than its armhole, as is usual: " + amounts,
                    "If it is meant, write it down: `ease: "
                            + BareLength.of(tape, ease)
                            + "` on this join.");
        }
        return check.after().difference().size().isLongerThan(EASED_IN) || isCap(check)
                ? told(
                        check,
                        "seam-apart-as-drawn",
                        Level.STOP,
                        "This seam does not meet as drawn: " + amounts,
                        "Measure both edges again; if the difference is meant, write `ease` or"
                                + " `gather`.")
                : told(
                        check,
                        "seam-off-a-little",
                        Level.WARNING,
                        "This seam is off a little as drawn: " + amounts,
                        "Measure both edges again, or ease the longer one in and write `ease`.");
    }

    /** Whether no copy is left to cut of a piece of the seam. */
    private boolean hasCut(SeamCheck check) {
        return check.seam().edges().stream()
                .map(edge -> result.pattern().find(edge.piece()).orElseThrow())
                .anyMatch(piece -> result.cut().whole(piece).isPresent());
    }

    /** A cap shorter than its armhole can never be sewn in; a longer one is eased. */
    private boolean isCap(SeamCheck check) {
        Meanings meanings = result.pattern().meanings();
        return check.seam().first().value().terms().stream()
                .anyMatch(t -> meanings.serves(t.piece(), t.edge().edge(), Serves.CAP));
    }

    private String amounts(SeamCheck check) {
        Length difference = check.after().difference();
        String off =
                (difference.isNegative() ? "too short by " : "too long by ")
                        + tape.printSmallBoth(difference.size());
        String first = check.seam().first().value() + " is " + tape.print(check.after().first());
        String second = check.seam().second().value() + " of " + tape.print(check.after().second());
        return isMeantAlike(check.seam())
                ? first + ", " + off + " for " + second + "."
                : first
                        + "; "
                        + meant(check.seam())
                        + " for "
                        + second
                        + " it should be "
                        + tape.print(check.after().meant())
                        + ": "
                        + off
                        + ".";
    }

    private static boolean isMeantAlike(Seam seam) {
        return seam.ease().equals(Length.ZERO) && !seam.isGathered();
    }

    private String meant(Seam seam) {
        return seam.ease().isPositive()
                ? "with " + tape.printSmall(seam.ease()) + " of ease"
                : "gathered " + seam.gather().toPlainString() + " to 1";
    }
}
