package secondbolt.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.file.value.BareLength;
import secondbolt.file.value.Quoted;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.TapedGaps;
import secondbolt.fit.seam.CapEase;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Sentence;
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
        if (check.isStretchedOn()) {
            return Optional.of(stretchedOn(check));
        }
        if (check.meets()) {
            return CapEase.of(check, result.pattern())
                    .filter(cap -> cap.isMuch(tape) && !check.seam().isGathered())
                    .map(cap -> muchEase(check, cap));
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
                        + " yes` with all that is cut of it, and it is planned anew.");
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
                                .map(term -> term.edge().words())
                                .collect(Collectors.joining(", "))
                        + (several ? " are" : " is")
                        + " known by tape, which does not show whether the alterations change "
                        + (several ? "them." : "it.")
                        + (check.metBefore() ? "" : " As taped, it does not meet."),
                gaps.findOut(check.open()));
    }

    private Finding stretchedOn(SeamCheck check) {
        boolean isFirst = check.after().isFirstShortBand();
        SeamCheck.Sides sides = check.after();
        Length band = isFirst ? sides.first() : sides.second();
        Length edge = isFirst ? sides.second() : sides.first();
        Length reach = isFirst ? sides.firstReach() : sides.secondReach();
        EdgeSum strip = (isFirst ? check.seam().first() : check.seam().second()).value();
        EdgeSum other = (isFirst ? check.seam().second() : check.seam().first()).value();
        return told(
                check,
                "seam-stretched-on",
                Level.NOTE,
                Sentence.capital(strip.words())
                        + ", "
                        + tape.printBoth(band)
                        + ", is stretched on to "
                        + other.words()
                        + ", "
                        + tape.printBoth(edge)
                        + "; it stretches as far as "
                        + tape.printBoth(reach)
                        + ".",
                "Mark both in quarters, pin quarter to quarter, and stretch the band only.");
    }

    /** A band of a knit that does not reach. */
    private Finding tooShort(SeamCheck check) {
        boolean isFirst = check.after().isFirstShortBand();
        SeamCheck.Sides sides = check.after();
        EdgeSum band = (isFirst ? check.seam().first() : check.seam().second()).value();
        Length edge = isFirst ? sides.second() : sides.first();
        Length reach = isFirst ? sides.firstReach() : sides.secondReach();
        return told(
                check,
                "seam-band-too-short",
                Level.STOP,
                Sentence.capital(band.words())
                        + ", "
                        + tape.printBoth(isFirst ? sides.first() : sides.second())
                        + ", is to be stretched on to "
                        + tape.printBoth(edge)
                        + ", but stretches only as far as "
                        + tape.printBoth(reach)
                        + ".",
                "Cut it longer, or of a cloth that stretches farther.");
    }

    private Finding off(SeamCheck check, String amounts) {
        if (check.isShortBand()) {
            return tooShort(check);
        }
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
        Optional<CapEase> cap =
                CapEase.of(check, result.pattern())
                        .filter(c -> !check.seam().isGathered())
                        .filter(c -> c.isCapFirst() || !check.seam().ease().isPositive());
        if (cap.filter(c -> !c.isShorter()).isPresent()) {
            return check.seam().ease().isPositive()
                    ? easeNotMet(check, cap.get(), amounts)
                    : longerCap(check, cap.get(), amounts);
        }
        return check.after().difference().size().isLongerThan(EASED_IN) || cap.isPresent()
                ? told(
                        check,
                        "seam-apart-as-drawn",
                        Level.STOP,
                        "This seam does not meet " + asDrawn() + ": " + amounts,
                        "Measure both edges again; if the difference is meant, write `ease` or"
                                + " `gather`.")
                : told(
                        check,
                        "seam-off-a-little",
                        Level.WARNING,
                        "This seam is off a little " + asDrawn() + ": " + amounts,
                        "Measure both edges again, or ease the longer one in and write `ease`.");
    }

    /** Where the outlines are cutting lines, their edges are not what is compared. */
    private String asDrawn() {
        return result.pattern()
                .allowance()
                .filter(Pattern.Allowance::isIncluded)
                .map(allowance -> "along its sewing lines, the allowances taken off")
                .orElse("as drawn");
    }

    /** Whether no copy is left to cut of a piece of the seam. */
    private boolean hasCut(SeamCheck check) {
        return check.seam().edges().stream()
                .map(edge -> result.pattern().find(edge.piece()).orElseThrow())
                .anyMatch(piece -> result.cut().whole(piece).isPresent());
    }

    /** A cap shorter than its armhole can never be sewn in; a longer one is eased. */
    private Finding longerCap(SeamCheck check, CapEase cap, String amounts) {
        if (!cap.isMuch(tape)) {
            return told(
                            check,
                            "seam-cap-longer",
                            Level.NOTE,
                            "The cap is longer than its armhole, as is usual: " + amounts + usual(),
                            "If it is meant, write it down: " + ease(check, cap) + ".")
                    .citing(CapEase.SOURCES);
        }
        return told(
                        check,
                        cap.isFar(tape) ? "seam-cap-far-too-long" : "seam-cap-too-long",
                        cap.isFar(tape) ? Level.STOP : Level.WARNING,
                        (cap.isFar(tape)
                                        ? "The cap is far longer than its armhole, more than can be eased"
                                                + " in: "
                                        : "The cap is longer than its armhole by more than is usual: ")
                                + amounts
                                + usual(),
                        "Measure both edges again. If it is gathered, write "
                                + gather(cap)
                                + (cap.isFar(tape)
                                        ? "."
                                        : "; if it is eased in, " + ease(check, cap) + "."))
                .citing(CapEase.SOURCES);
    }

    private Finding easeNotMet(SeamCheck check, CapEase cap, String amounts) {
        return told(
                        check,
                        "seam-ease-not-met",
                        cap.isFar(tape) ? Level.STOP : Level.WARNING,
                        "The ease written on this join is not met: " + amounts + usual(),
                        "Measure both edges again. If it is right as drawn, write "
                                + (cap.isFar(tape) ? gather(cap) + ", gathered" : ease(check, cap))
                                + ".")
                .citing(CapEase.SOURCES);
    }

    private Finding muchEase(SeamCheck check, CapEase cap) {
        return told(
                        check,
                        "seam-cap-ease-much",
                        cap.isFar(tape) ? Level.WARNING : Level.CAUTION,
                        "The ease written on this join is more than is usual in a cap: "
                                + tape.print(cap.ofEach())
                                + "."
                                + usual(),
                        "Try it on a scrap. If it is gathered, write " + gather(cap) + ".")
                .citing(CapEase.SOURCES);
    }

    private String usual() {
        return " Usual is "
                + tape.print(CapEase.LEAST.on(tape))
                + " to "
                + tape.print(CapEase.MOST.on(tape))
                + " a sleeve ("
                + CapEase.MOST.source()
                + ").";
    }

    /** The ease as it is; where the armhole is written first, with both sides changed over. */
    private String ease(SeamCheck check, CapEase cap) {
        Length longer = check.after().first().minus(check.after().second()).size();
        String ease = "ease: " + BareLength.of(tape, longer);
        return cap.isCapFirst()
                ? "`" + ease + "` on this join"
                : "`{join: [" + sides(cap) + "], " + ease + "}`";
    }

    private String gather(CapEase cap) {
        return "`{join: ["
                + sides(cap)
                + "], gather: "
                + String.format(Locale.ROOT, "%.2f", cap.ratio())
                + "}`";
    }

    private static String sides(CapEase cap) {
        return Quoted.of(cap.cap().toString()) + ", " + Quoted.of(cap.armhole().toString());
    }

    private String amounts(SeamCheck check) {
        Length difference = check.after().difference();
        String off =
                (difference.isNegative() ? "too short by " : "too long by ")
                        + tape.printSmallBoth(difference.size());
        String first =
                check.seam().first().value().words() + " is " + tape.print(check.after().first());
        String second =
                check.seam().second().value().words() + " of " + tape.print(check.after().second());
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
