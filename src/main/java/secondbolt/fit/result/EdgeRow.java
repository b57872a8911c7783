package secondbolt.fit.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.fit.seam.SewnLengths;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.piece.NotchPlace;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * Edges one below the other, such as a front edge, with places on them counted from the top. Each
 * edge is taken from its upper end down, whichever way it is drawn.
 *
 * @param fit the altered pattern
 * @param edges the row; all of them must be there, which {@link FitCheck} tells
 */
public record EdgeRow(FitResult fit, EdgeSum edges) {
    private static final double STEP_MM = 1;

    /** How long the row is after the alterations. */
    public Length length() {
        return fit.lengthAfter(edges);
    }

    /** How long it was before them. */
    public Length lengthBefore() {
        return fit.lengthBefore(edges);
    }

    /** Where one edge ends and the next begins, after the alterations. */
    public List<Length> joins() {
        List<Length> joins = new ArrayList<>();
        Length from = Length.ZERO;
        for (EdgeSum.Term term : single()) {
            from = from.plus(after(term));
            joins.add(from);
        }
        return joins.subList(0, joins.size() - 1);
    }

    /**
     * Where a place printed on the pattern comes after the alterations.
     *
     * @param printed from the top of the row as printed, not beyond its end
     */
    public Length carried(Length printed) {
        Length above = Length.ZERO;
        Length left = printed;
        for (EdgeSum.Term term : single()) {
            Length was = before(term);
            if (!left.isLongerThan(was)) {
                return above.plus(carriedOn(term, left));
            }
            left = left.minus(was);
            above = above.plus(after(term));
        }
        return above;
    }

    /**
     * How far down the row a mark of one of its pieces lies, level with it, after the alterations.
     *
     * @return nothing if no edge of the row is on that piece, or the piece has no such mark
     */
    public Optional<Length> level(String piece, String mark) {
        Length above = Length.ZERO;
        for (EdgeSum.Term term : single()) {
            Optional<Piece.MarkPoint> there =
                    fit.find(term.piece())
                            .filter(p -> p.name().equals(piece))
                            .flatMap(p -> mark(p, mark));
            if (there.isPresent()) {
                EdgeLine edge = edge(fit.find(piece).orElseThrow(), term.edge().edge());
                double aboveMm =
                        aboveTheSewnEdgeMm(fit.find(piece).orElseThrow(), term.edge().edge());
                return Optional.of(above.plus(mm(levelMm(edge, there.get().at()) - aboveMm)));
            }
            above = above.plus(after(term));
        }
        return Optional.empty();
    }

    private static Optional<Piece.MarkPoint> mark(Piece piece, String name) {
        return piece.shape().asDrawn().isEmpty()
                ? Optional.empty()
                : piece.features().marks().stream().filter(m -> m.what().equals(name)).findFirst();
    }

    /** From the edge's upper end to where it is level with a point; else to what is nearest. */
    private static double levelMm(EdgeLine edge, Point point) {
        double lengthMm = edge.lengthMm();
        double lastMm = 0;
        for (double alongMm = 0; alongMm <= lengthMm; alongMm += STEP_MM) {
            if (edge.at(alongMm).yMm() >= point.yMm()) {
                return between(edge, lastMm, alongMm, point.yMm());
            }
            lastMm = alongMm;
        }
        return edge.alongMm(point);
    }

    private static double between(EdgeLine edge, double fromMm, double toMm, double yMm) {
        double above = fromMm;
        double below = toMm;
        for (int i = 0; i < 40; i++) {
            double middle = (above + below) / 2;
            if (edge.at(middle).yMm() < yMm) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return below;
    }

    /** Each edge once, however many times it is counted. */
    private List<EdgeSum.Term> single() {
        List<EdgeSum.Term> terms = new ArrayList<>();
        for (EdgeSum.Term term : edges.terms()) {
            for (int i = 0; i < term.count(); i++) {
                terms.add(term);
            }
        }
        return terms;
    }

    private Length before(EdgeSum.Term term) {
        return fit.before().edge(term.edge()).orElseThrow();
    }

    private Length after(EdgeSum.Term term) {
        return fit.after().edge(term.edge()).orElseThrow();
    }

    /** A place on one edge, from its upper end, carried as a notch there would be. */
    private Length carriedOn(EdgeSum.Term term, Length printed) {
        Piece piece = fit.pattern().find(term.piece()).orElseThrow();
        Optional<PieceShape.Drawn> drawn = piece.shape().asDrawn();
        if (drawn.isEmpty()) {
            return printed;
        }
        EdgeLine was = drawn.get().find(term.edge().edge()).orElseThrow();
        double downMm = printed.millimetres() + aboveTheSewnEdgeMm(piece, term.edge().edge());
        double fromStartMm = isDrawnDown(was) ? downMm : was.lengthMm() - downMm;
        Piece marked =
                piece.with(drawn.get(), piece.lines(), notch(term.edge().edge(), fromStartMm));
        Piece altered = fit.changes(piece).on(marked, fit.pattern().meanings());
        PieceShape.Drawn shape = altered.shape().asDrawn().orElseThrow();
        double carriedMm = NotchPlace.fromStartMm(shape, altered.features().notches().get(0));
        EdgeLine is = shape.find(term.edge().edge()).orElseThrow();
        return mm(
                (isDrawnDown(is) ? carriedMm : is.lengthMm() - carriedMm)
                        - aboveTheSewnEdgeMm(altered, term.edge().edge()));
    }

    /** How much of an edge as drawn lies above its sewing line. */
    private double aboveTheSewnEdgeMm(Piece piece, String name) {
        return new SewnLengths(fit.pattern().allowance())
                .sewn(piece, name)
                .map(
                        sewn -> {
                            EdgeLine edge =
                                    piece.shape().asDrawn().orElseThrow().find(name).orElseThrow();
                            return isDrawnDown(edge)
                                    ? sewn.beginsMm()
                                    : edge.lengthMm() - sewn.endsMm();
                        })
                .orElse(0.0);
    }

    private static Piece.Features notch(String edge, double fromStartMm) {
        return new Piece.Features(
                List.of(new Piece.Notch(edge, mm(fromStartMm), Optional.empty())),
                List.of(),
                List.of(),
                List.of());
    }

    private static EdgeLine edge(Piece piece, String name) {
        EdgeLine edge = piece.shape().asDrawn().orElseThrow().find(name).orElseThrow();
        return isDrawnDown(edge) ? edge : edge.reversed();
    }

    private static boolean isDrawnDown(EdgeLine edge) {
        return edge.start().yMm() <= edge.end().yMm();
    }

    private static Length mm(double mm) {
        return Length.ofComputedMillimetres(mm);
    }
}
