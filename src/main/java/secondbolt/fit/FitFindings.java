package secondbolt.fit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.measure.Counted;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Finding;

/** What a maker should know of her seams and alterations before she cuts. */
final class FitFindings {
    /** A quarter of an inch is what a made-to-measure shirt maker accepts; common practice. */
    private static final Length EASED_IN = Length.ofInches(1, 4);

    private final FitResult result;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    private FitFindings(FitResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
    }

    static List<Finding> of(FitResult result, Tape tape) {
        FitFindings all = new FitFindings(result, tape);
        result.seams().forEach(all::seam);
        all.unjoined();
        all.shares();
        StretchingWaist.in(result)
                .forEach(waist -> all.findings.add(waist.finding(result.pattern())));
        all.points();
        all.rights();
        return List.copyOf(all.findings);
    }

    private void tell(String about, Level level, String text, String remedy) {
        findings.add(new Finding(about, level, text, remedy));
    }

    /** Neither held nor broken: what the tape does not tell must be looked up first. */
    private void open(SeamCheck check) {
        boolean several = check.open().size() > 1;
        tell(
                check.seam().words(),
                Level.WARNING,
                "Whether this seam still meets after the alterations is not known: "
                        + String.join(
                                ", ",
                                check.open().stream().map(edge -> edge.edge().toString()).toList())
                        + (several ? " are" : " is")
                        + " known by tape, which does not show whether the alterations change "
                        + (several ? "them." : "it.")
                        + (check.metBefore() ? "" : " As taped, it does not meet."),
                TapedGaps.of(result, tape).findOut(check.open()));
    }

    private void seam(SeamCheck check) {
        if (!check.isKnown()) {
            open(check);
            return;
        }
        if (check.meets()) {
            return;
        }
        String off = amounts(check);
        if (check.isBroken()) {
            LeftOut leftOut = LeftOut.of(check, result, tape);
            tell(
                    check.seam().words(),
                    Level.STOP,
                    "After the alterations this seam no longer meets: " + off + leftOut.text(),
                    leftOut.remedy());
        } else if (isCap(check, result.pattern().meanings())
                && check.after().difference().isPositive()) {
            tell(
                    check.seam().words(),
                    Level.NOTE,
                    "The cap is longer than its armhole, as is usual: " + off,
                    "If it is meant, write it down: `ease: "
                            + bare(check.seam().ease().plus(check.after().difference()))
                            + "` on this join.");
        } else if (check.after().difference().size().isLongerThan(EASED_IN)
                || isCap(check, result.pattern().meanings())) {
            tell(
                    check.seam().words(),
                    Level.STOP,
                    "This seam does not meet as drawn: " + off,
                    "Measure both edges again; if the difference is meant, write `ease` or"
                            + " `gather`.");
        } else {
            tell(
                    check.seam().words(),
                    Level.WARNING,
                    "This seam is off a little as drawn: " + off,
                    "Measure both edges again, or ease the longer one in and write `ease`.");
        }
    }

    /** A cap shorter than its armhole can never be sewn in; a longer one is eased. */
    private static boolean isCap(SeamCheck check, Meanings meanings) {
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

    private String bare(Length length) {
        return tape.print(length).replaceAll("\\s*[a-z]+$", "");
    }

    /** Pieces that carry the same line, or have an edge of one name, but no declared join. */
    private void unjoined() {
        Set<PieceEdge> joined = new LinkedHashSet<>();
        for (Seam seam : result.pattern().seams()) {
            seam.sides().forEach(s -> s.value().terms().forEach(t -> joined.add(t.edge())));
        }
        for (Alteration alteration : result.alterations()) {
            Set<PieceEdge> loose = new LinkedHashSet<>();
            result.followers().stream()
                    .filter(f -> f.alteration().equals(alteration))
                    .map(FitResult.Follower::edge)
                    .filter(edge -> !joined.contains(edge) && !isAlone(edge))
                    .forEach(loose::add);
            if (!loose.isEmpty()) {
                tell(
                        alteration.words(),
                        Level.NOTE,
                        "It changed edges that no declared seam checks: "
                                + loose.stream()
                                        .map(PieceEdge::toString)
                                        .collect(Collectors.joining(", "))
                                + ".",
                        "Declare what they are sewn to under `seams`, or see for yourself that they"
                                + " still meet.");
            }
        }
    }

    /** A fold is sewn to nothing, and a hem is turned. */
    private boolean isAlone(PieceEdge edge) {
        boolean isFold =
                result.find(edge.piece())
                        .flatMap(Piece::fold)
                        .filter(edge.edge()::equals)
                        .isPresent();
        return isFold || result.pattern().meanings().isHem(edge.piece(), edge.edge());
    }

    /** A share that no mark of the tape shows. */
    private void shares() {
        for (Alteration alteration : result.alterations()) {
            for (WidenShare share : widenShares(alteration)) {
                share.byTheTape(tape).ifPresent(marks -> share(alteration, share, marks));
            }
        }
    }

    private void share(Alteration alteration, WidenShare share, WidenShare.ByTheTape marks) {
        tell(
                alteration.words(),
                Level.NOTE,
                "Shared over "
                        + Counted.of(share.cutEdges(), "cut edge")
                        + " ("
                        + String.join(", ", share.pieces())
                        + ") it is no mark of the tape on each.",
                "The printed pieces have it exactly. By tape take "
                        + takes(marks)
                        + (share.cutEdges() > 1 ? ", spread evenly round the body." : "."));
    }

    private String takes(WidenShare.ByTheTape marks) {
        String lower = tape.printSmall(marks.lower());
        String upper = tape.printSmall(marks.upper());
        if (marks.atUpper() == 0) {
            return Counted.of(marks.atLower(), "edge") + " at " + lower;
        }
        return marks.atLower() == 0
                ? Counted.of(marks.atUpper(), "edge") + " at " + upper
                : Counted.of(marks.atLower(), "edge")
                        + " at "
                        + lower
                        + " and "
                        + marks.atUpper()
                        + " at "
                        + upper;
    }

    private List<WidenShare> widenShares(Alteration alteration) {
        return alteration.accept(
                new Alteration.Visitor<List<WidenShare>>() {
                    @Override
                    public List<WidenShare> lengthen(Alteration.Lengthen lengthen) {
                        return List.of();
                    }

                    @Override
                    public List<WidenShare> widen(Alteration.Widen widen) {
                        return WidenShare.of(widen, result.pattern());
                    }
                });
    }

    private void points() {
        for (Piece piece : result.pattern().pieces()) {
            piece.shape()
                    .asDrawn()
                    .ifPresent(
                            drawn ->
                                    StrayPoint.in(drawn)
                                            .forEach(
                                                    stray ->
                                                            tell(
                                                                    piece.name(),
                                                                    Level.CAUTION,
                                                                    "Point "
                                                                            + stray.number()
                                                                            + " of "
                                                                            + stray.edge()
                                                                            + " leaves the line of"
                                                                            + " its neighbours.",
                                                                    "Look at the picture of the"
                                                                            + " piece; if it is"
                                                                            + " mistyped, correct"
                                                                            + " it.")));
        }
    }

    private void rights() {
        if (result.pattern().rights() == Pattern.Rights.BOUGHT) {
            tell(
                    "pattern",
                    Level.NOTE,
                    "The pattern is bought: its outlines and full-size pieces are for you alone.",
                    "Do not pass on the piece sheets or this page; the numbers of your alterations"
                            + " you may.");
        }
    }
}
