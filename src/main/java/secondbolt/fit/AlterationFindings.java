package secondbolt.fit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.fit.alter.Altered;
import secondbolt.fit.alter.WidenShare;
import secondbolt.fit.alter.WidthSharing;
import secondbolt.fit.made.Limb;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What a maker should know of her alterations.
 *
 * @param result the pattern, altered
 * @param tape to print with
 */
record AlterationFindings(FitResult result, Tape tape) {
    /** Edges that an alteration changed and that no declared join checks, of each alteration. */
    List<Finding> unjoined() {
        Set<PieceEdge> joined = new LinkedHashSet<>();
        result.pattern().seams().forEach(seam -> joined.addAll(seam.edges()));
        return result.altered().stream().flatMap(a -> unjoined(a, joined).stream()).toList();
    }

    private Optional<Finding> unjoined(Altered altered, Set<PieceEdge> joined) {
        String loose =
                altered.changes().stream()
                        .map(Altered.Change::edge)
                        .filter(edge -> !joined.contains(edge) && !isAlone(edge))
                        .map(PieceEdge::words)
                        .collect(Collectors.joining(", "));
        return loose.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        note(
                                altered,
                                "alteration-unchecked-edges",
                                "It changed edges that no declared seam checks: " + loose + ".",
                                "Declare what they are sewn to under `seams`, or see for yourself"
                                        + " that they still meet."));
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

    /** Which pieces a change of width goes through, where no join tells it of all. */
    List<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>();
        for (Alteration alteration : result.alterations()) {
            alteration.accept(
                    new Alteration.Visitor<Boolean>() {
                        @Override
                        public Boolean lengthen(Alteration.Lengthen lengthen) {
                            return false;
                        }

                        @Override
                        public Boolean widen(Alteration.Widen widen) {
                            return assumed.addAll(goingRound(widen).stream().toList());
                        }
                    });
        }
        return assumed;
    }

    private Optional<Assumed> goingRound(Alteration.Widen widen) {
        WidthSharing sharing = WidthSharing.of(widen, result.pattern());
        if (sharing.guessed().isEmpty() && sharing.leftAsTheyAre().isEmpty()) {
            return Optional.empty();
        }
        String changed =
                sharing.shares().stream()
                        .flatMap(share -> share.pieces().stream())
                        .collect(Collectors.joining(", "));
        String left = String.join(", ", sharing.leftAsTheyAre());
        return Optional.of(
                new Assumed(
                        "which pieces `" + widen.words() + "` changes",
                        (changed.isEmpty() ? "none" : changed)
                                + (left.isEmpty() ? "" : "; as they are stay: " + left),
                        "by what is sewn to what, and where no join tells it, by cloth and width;"
                                + " if it is otherwise, write under `seams` what they are sewn"
                                + " to"));
    }

    /** Shares that no mark of the tape shows. */
    List<Finding> shares() {
        List<Finding> findings = new ArrayList<>();
        for (Altered altered : result.altered()) {
            for (WidenShare share : altered.asked().shares()) {
                share.byTheTape(tape)
                        .ifPresent(marks -> findings.add(share(altered, share, marks)));
            }
        }
        return findings;
    }

    private Finding share(Altered altered, WidenShare share, WidenShare.ByTheTape marks) {
        return note(
                altered,
                "alteration-share-off-the-tape",
                "Shared over "
                        + Plural.of(share.cutEdges(), "cut edge")
                        + " ("
                        + String.join(", ", share.pieces())
                        + ") it is no mark of the tape on each.",
                "The printed pieces have it exactly. By tape take "
                        + takes(marks)
                        + (share.cutEdges() > 1 ? spread(share) : "."));
    }

    /** Of limbs, what each gets of the amount in all. */
    private String spread(WidenShare share) {
        Pattern pattern = result.pattern();
        return Limb.of(share.pieces(), pattern)
                .filter(limb -> Limb.count(share.pieces(), pattern) > 1)
                .map(
                        limb ->
                                ", the same on each "
                                        + limb.word()
                                        + ": "
                                        + tape.print(
                                                Limb.each(
                                                        share.by().size(), share.pieces(), pattern))
                                        + " round each.")
                .orElse(", spread evenly round the body.");
    }

    private String takes(WidenShare.ByTheTape marks) {
        String lower = tape.printSmall(marks.lower());
        String upper = tape.printSmall(marks.upper());
        if (marks.atUpper() == 0) {
            return Plural.of(marks.atLower(), "edge") + " at " + lower;
        }
        return marks.atLower() == 0
                ? Plural.of(marks.atUpper(), "edge") + " at " + upper
                : Plural.of(marks.atLower(), "edge")
                        + " at "
                        + lower
                        + " and "
                        + marks.atUpper()
                        + " at "
                        + upper;
    }

    private static Finding note(Altered altered, String code, String text, String remedy) {
        Subject alteration = new Subject.Whole(altered.alteration().words());
        return new Finding(code, alteration, Level.NOTE, text, remedy);
    }
}
