package secondbolt.fit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.fit.result.BandFindings;
import secondbolt.fit.result.CapFindings;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.SeamRemedy;
import secondbolt.fit.result.SeamWords;
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
            return Optional.of(new BandFindings(check, tape).stretchedOn());
        }
        if (check.meets()) {
            return CapEase.of(check, result.pattern())
                    .filter(cap -> cap.isMuch(tape) && !check.seam().isGathered())
                    .map(cap -> new CapFindings(check, cap, tape).muchEase());
        }
        return Optional.of(
                check.isKnown() ? off(check, new SeamWords(check, tape).amounts()) : open(check));
    }

    private Finding told(SeamCheck check, String code, Level level, String text, String remedy) {
        return new SeamWords(check, tape).told(code, level, text, remedy);
    }

    /** A seam that no longer meets with what is cut as it is. */
    Finding asCut(SeamCheck check) {
        return told(
                check,
                "seam-apart-as-cut",
                Level.STOP,
                "With what is cut as it is, this seam no longer meets: "
                        + new SeamWords(check, tape).amounts(),
                "Leave out of the other side, which is not cut, every change that the cut piece does"
                        + " not have. Or write `spoilt: yes` with each that is cut of it, in"
                        + " `plan.yaml` or under `cut so far`: it is then cut again.");
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

    private Finding off(SeamCheck check, String amounts) {
        if (check.isShortBand()) {
            return new BandFindings(check, tape).tooShort();
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
            CapFindings longer = new CapFindings(check, cap.get(), tape);
            return check.seam().ease().isPositive() ? longer.easeNotMet() : longer.longerCap();
        }
        return check.after().difference().size().isLongerThan(EASED_IN) || cap.isPresent()
                ? told(
                        check,
                        "seam-apart-as-drawn",
                        Level.STOP,
                        "This seam does not meet " + asDrawn() + ": " + amounts,
                        asDrawnRemedy(check))
                : told(
                        check,
                        "seam-off-a-little",
                        Level.WARNING,
                        "This seam is off a little " + asDrawn() + ": " + amounts,
                        offALittle(new SeamRemedy(check, result.pattern(), tape)));
    }

    /** Under a quarter of an inch; what is gathered is eased in by its gathers. */
    private static String offALittle(SeamRemedy remedy) {
        boolean isPlain = !remedy.check().seam().isGathered() && !remedy.check().seam().isLapped();
        return "Measure both edges again, or "
                + (isPlain ? "ease the longer one in and " + remedy.eased() : remedy.asMeant())
                + remedy.lap().map(join -> "; if it laps by that much, " + join + ".").orElse(".");
    }

    private String asDrawnRemedy(SeamCheck check) {
        SeamRemedy remedy = new SeamRemedy(check, result.pattern(), tape);
        Seam seam = check.seam();
        if (seam.isLapped() || seam.isGathered() || seam.ease().isPositive()) {
            return "Measure both edges again; if they are right, " + remedy.asMeant() + ".";
        }
        return "Measure both edges again; if the difference is meant, "
                + remedy.lap()
                        .map(join -> "and the band laps by that much, write " + join + ".")
                        .orElse("write `ease` or `gather`.");
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
}
