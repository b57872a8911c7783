package secondbolt.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import secondbolt.file.value.Quoted;
import secondbolt.fit.alter.PieceAlteration;
import secondbolt.fit.result.BareLength;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** The line that a piece of a seam lacks, and where on it the line belongs. */
final class LackingLine {
    /** What runs round the body or a limb; no line across the piece crosses it. */
    private static final Set<Serves> ACROSS =
            EnumSet.of(Serves.WAIST, Serves.WRIST, Serves.HEM, Serves.NECKLINE);

    private LackingLine() {}

    /**
     * An edge of a seam on a piece that lacks the line.
     *
     * @param term the edge
     * @param leftMm by how much the seam would still be off if it followed as well
     */
    private record Lacking(EdgeSum.Term term, double leftMm) {}

    /**
     * The same with where the line belongs on its piece.
     *
     * @param lacking the edge
     * @param where from the piece's top, as it is written; nothing if that is not known
     */
    private record Placed(Lacking lacking, Optional<String> where) {}

    static Optional<LeftOut.Guess> of(
            SeamCheck check, FitResult result, Alteration.Lengthen lengthen, Tape tape) {
        List<EdgeSum.Term> carrying = new ArrayList<>();
        List<Lacking> lacking = new ArrayList<>();
        for (EdgeSum.Term term : LeftOut.terms(check)) {
            Piece piece = result.pattern().find(term.piece()).orElseThrow();
            Lacking follows = new Lacking(term, leftMm(check, term, lengthen));
            if (piece.lines().containsKey(lengthen.line())) {
                carrying.add(term);
            } else if (runsDown(piece, term, result) && isNearer(check, follows)) {
                lacking.add(follows);
            }
        }
        if (carrying.isEmpty() || lacking.isEmpty()) {
            return Optional.empty();
        }
        EdgeSum.Term level = carrying.get(0);
        Function<Lacking, Placed> place =
                l -> new Placed(l, where(result, lengthen.line(), level, l.term(), tape));
        Placed without =
                lacking.stream()
                        .filter(l -> mends(check, l))
                        .map(place)
                        .min(Comparator.comparing(placed -> placed.where().isEmpty()))
                        .orElseGet(() -> place.apply(lacking.get(0)));
        return Optional.of(
                new LeftOut.Guess(
                        told(lengthen.line(), level.piece(), without),
                        mends(check, without.lacking())));
    }

    /** Whether a line across the piece could cross the edge: a wrist or a waist it cannot. */
    private static boolean runsDown(Piece piece, EdgeSum.Term term, FitResult result) {
        Optional<EdgeLine> drawn = piece.shape().asDrawn().flatMap(d -> d.find(term.edge().edge()));
        if (drawn.isPresent()) {
            double downMm = Math.abs(drawn.get().end().yMm() - drawn.get().start().yMm());
            return downMm > drawn.get().lengthMm() / 2;
        }
        return result.pattern()
                .meanings()
                .edge(term.piece(), term.edge().edge())
                .filter(meaning -> ACROSS.contains(meaning.serves()))
                .isEmpty();
    }

    private static boolean isNearer(SeamCheck check, Lacking lacking) {
        return lacking.leftMm() < Math.abs(check.after().difference().millimetres());
    }

    private static LeftOut told(String line, String carrying, Placed without) {
        String piece = without.lacking().term().piece();
        return new LeftOut(
                " " + piece + " was left out: it carries no line `" + line + "`.",
                "Add `lines: {"
                        + Quoted.of(line)
                        + ": "
                        + without.where().orElse("…")
                        + "}` to "
                        + piece
                        + ", level with the one on "
                        + carrying
                        + (without.where().isPresent()
                                ? " along this seam."
                                : " where they are sewn together."));
    }

    private static boolean mends(SeamCheck check, Lacking lacking) {
        return lacking.leftMm() <= check.allowed().millimetres();
    }

    /** By how much the seam would still be off. */
    private static double leftMm(SeamCheck check, EdgeSum.Term term, Alteration.Lengthen lengthen) {
        Length by = lengthen.pieces().getOrDefault(term.piece(), lengthen.by());
        return Math.abs(
                check.after().difference().millimetres() + LeftOut.signedMm(check, term, by));
    }

    /** As far from the lower end of the one edge as the line crosses the other. */
    private static Optional<String> where(
            FitResult result, String line, EdgeSum.Term has, EdgeSum.Term lacks, Tape tape) {
        Piece carrying = result.pattern().find(has.piece()).orElseThrow();
        Piece lacking = result.pattern().find(lacks.piece()).orElseThrow();
        Optional<EdgeLine> from =
                carrying.shape().asDrawn().flatMap(d -> d.find(has.edge().edge()));
        Optional<EdgeLine> to = lacking.shape().asDrawn().flatMap(d -> d.find(lacks.edge().edge()));
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        double lineMm = PieceAlteration.topMm(carrying) + carrying.lines().get(line).millimetres();
        EdgeLine down = downward(from.get());
        if (lineMm <= down.start().yMm() || lineMm >= down.end().yMm()) {
            return Optional.empty();
        }
        double fromBottomMm = down.lengthMm() - down.alongMm(crossing(down, lineMm));
        EdgeLine other = downward(to.get());
        if (fromBottomMm >= other.lengthMm()) {
            return Optional.empty();
        }
        double yMm = other.at(other.lengthMm() - fromBottomMm).yMm();
        Length along = Length.ofComputedMillimetres(yMm - PieceAlteration.topMm(lacking));
        return Optional.of(BareLength.of(tape, along));
    }

    private static EdgeLine downward(EdgeLine edge) {
        return edge.start().yMm() <= edge.end().yMm() ? edge : edge.reversed();
    }

    private static Point crossing(EdgeLine down, double yMm) {
        double low = 0;
        double high = down.lengthMm();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean above = down.at(middle).yMm() < yMm;
            low = above ? middle : low;
            high = above ? high : middle;
        }
        return down.at(low);
    }
}
