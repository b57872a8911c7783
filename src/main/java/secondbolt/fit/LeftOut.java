package secondbolt.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import secondbolt.fit.alter.PieceAlteration;
import secondbolt.fit.result.BareLength;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * The piece that an alteration left out, so that a seam no longer meets.
 *
 * @param text names it; empty if none can be named
 * @param remedy the line to add
 */
record LeftOut(String text, String remedy) {
    private static final LeftOut UNKNOWN =
            new LeftOut(
                    "",
                    "Alter the other side by as much, or write what is meant as `ease` or"
                            + " `gather`.");

    /**
     * A piece that may have been left out.
     *
     * @param leftOut which
     * @param mends whether the seam would meet if it followed
     */
    private record Guess(LeftOut leftOut, boolean mends) {}

    /** The first whose following would mend the seam, else the first that did not follow. */
    static LeftOut of(SeamCheck check, FitResult result, Tape tape) {
        Optional<LeftOut> first = Optional.empty();
        for (Alteration alteration : result.alterations()) {
            Optional<Guess> guess = guess(check, result, alteration, tape);
            if (guess.filter(Guess::mends).isPresent()) {
                return guess.get().leftOut();
            }
            first = first.or(() -> guess.map(Guess::leftOut));
        }
        return first.orElse(UNKNOWN);
    }

    private static Optional<Guess> guess(
            SeamCheck check, FitResult result, Alteration alteration, Tape tape) {
        return alteration.accept(
                new Alteration.Visitor<Optional<Guess>>() {
                    @Override
                    public Optional<Guess> lengthen(Alteration.Lengthen lengthen) {
                        return ofLine(check, result, lengthen, tape);
                    }

                    @Override
                    public Optional<Guess> widen(Alteration.Widen widen) {
                        return Optional.of(new Guess(ofEdge(check, widen), false));
                    }
                });
    }

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

    private static Optional<Guess> ofLine(
            SeamCheck check, FitResult result, Alteration.Lengthen lengthen, Tape tape) {
        List<EdgeSum.Term> carrying = new ArrayList<>();
        List<Lacking> lacking = new ArrayList<>();
        for (EdgeSum.Term term : terms(check)) {
            Piece piece = result.pattern().find(term.piece()).orElseThrow();
            if (piece.lines().containsKey(lengthen.line())) {
                carrying.add(term);
            } else {
                lacking.add(new Lacking(term, leftMm(check, term, lengthen)));
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
                        .orElseGet(() -> place.apply(nearest(check, lacking)));
        return Optional.of(
                new Guess(
                        told(lengthen.line(), level.piece(), without),
                        mends(check, without.lacking())));
    }

    private static LeftOut told(String line, String carrying, Placed without) {
        String piece = without.lacking().term().piece();
        return new LeftOut(
                " " + piece + " was left out: it carries no line `" + line + "`.",
                "Add `lines: {"
                        + line
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
        Length by = lengthen.pieces().getOrDefault(term.piece(), lengthen.by()).times(term.count());
        boolean isFirst = check.seam().first().value().terms().contains(term);
        double gather = check.seam().gather().doubleValue();
        double changeMm = isFirst ? by.millimetres() : -by.millimetres() * gather;
        return Math.abs(check.after().difference().millimetres() + changeMm);
    }

    /** The first edge that would bring the seam nearer to meeting, else the first. */
    private static Lacking nearest(SeamCheck check, List<Lacking> lacking) {
        double nowMm = Math.abs(check.after().difference().millimetres());
        return lacking.stream().filter(l -> l.leftMm() < nowMm).findFirst().orElse(lacking.get(0));
    }

    private static List<EdgeSum.Term> terms(SeamCheck check) {
        List<EdgeSum.Term> terms = new ArrayList<>(check.seam().first().value().terms());
        terms.addAll(check.seam().second().value().terms());
        return terms;
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

    private static LeftOut ofEdge(SeamCheck check, Alteration.Widen widen) {
        Length first = check.after().first().minus(check.before().first()).size();
        Length second = check.after().second().minus(check.before().second()).size();
        Seam seam = check.seam();
        boolean isFirstStill = first.isShorterThan(second);
        EdgeSum moved = (isFirstStill ? seam.second() : seam.first()).value();
        String still = (isFirstStill ? seam.first() : seam.second()).value().terms().get(0).piece();
        return new LeftOut(
                " " + moved + " followed `" + widen.words() + "`; " + still + " was left out.",
                "Change "
                        + still
                        + " by as much (name its edge in the alteration, or give it one of that"
                        + " name), or write the difference as `ease`.");
    }
}
