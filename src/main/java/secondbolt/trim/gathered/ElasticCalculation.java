package secondbolt.trim.gathered;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.plan.Hem;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.piece.Piece;
import secondbolt.trim.gathered.ElasticResult.DrawnIn;
import secondbolt.trim.gathered.ElasticResult.Side;
import secondbolt.trim.plan.Elastic;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Convention;

/** How long each elastic is, whether it passes the body, and what its casing takes. */
public final class ElasticCalculation {
    /** How far the ends overlap; from ½ to 1 in is usual. */
    public static final Convention OVERLAP =
            Convention.common(Length.ofInches(1, 1), Length.ofMillimetres(25));

    private final Optional<Wearer> wearer;
    private final Optional<FitResult> fit;
    private final Optional<CuttingResult> cutting;
    private final Map<String, Hem> hems;
    private final Tape tape;

    /**
     * A calculation.
     *
     * @param wearer if anything is told of her
     * @param fit the altered pattern, if there is one
     * @param cutting its cutting lines
     * @param hems by name
     * @param tape of the project
     */
    public ElasticCalculation(
            Optional<Wearer> wearer,
            Optional<FitResult> fit,
            Optional<CuttingResult> cutting,
            Map<String, Hem> hems,
            Tape tape) {
        this.wearer = wearer;
        this.fit = fit;
        this.cutting = cutting;
        this.hems = hems;
        this.tape = tape;
    }

    /** An elastic whose edges are there. */
    public ElasticResult of(String name, Elastic elastic) {
        Optional<Length> body = elastic.round().flatMap(this::body);
        List<Side> sides = new ArrayList<>();
        for (ElasticLength rule :
                elastic.round().map(ElasticLength::on).orElseGet(List::<ElasticLength>of)) {
            body.ifPresent(
                    round ->
                            sides.add(
                                    new Side(
                                            rule,
                                            round.minus(rule.least().on(tape)),
                                            round.minus(rule.most().on(tape)))));
        }
        Optional<EdgeSum> on = elastic.on().map(placed -> placed.value());
        return new ElasticResult(
                name,
                elastic,
                body,
                elastic.over().flatMap(over -> over.girth(wearer)),
                loop(elastic, body),
                elastic.fit().overlap().orElse(OVERLAP.on(tape)),
                sides,
                new Casing(elastic.width(), elastic.casing()),
                on.flatMap(edges -> fit.map(altered -> altered.lengthAfter(edges))),
                on.flatMap(edges -> fit.map(altered -> altered.reach(edges))),
                on.map(this::edges).orElse(List.of()));
    }

    private Optional<Length> body(BodyMeasure measure) {
        return wearer.flatMap(w -> w.measure(measure));
    }

    private static Optional<Length> loop(Elastic elastic, Optional<Length> body) {
        Optional<Length> shorter =
                elastic.fit().less().flatMap(less -> body.map(round -> round.minus(less)));
        return elastic.fit().loop().or(() -> shorter).filter(Length::isPositive);
    }

    private List<DrawnIn> edges(EdgeSum on) {
        return on.pieceEdges().stream().flatMap(edge -> drawnIn(on, edge)).toList();
    }

    private Stream<DrawnIn> drawnIn(EdgeSum on, PieceEdge edge) {
        Optional<Piece> piece = fit.flatMap(altered -> altered.find(edge.piece()));
        int count =
                on.terms().stream()
                        .filter(term -> term.edge().equals(edge))
                        .mapToInt(EdgeSum.Term::count)
                        .sum();
        boolean isHem = hems.values().stream().anyMatch(hem -> hem.edges().contains(edge));
        return piece.stream()
                .map(
                        p ->
                                new DrawnIn(
                                        edge,
                                        count,
                                        p.timesRoundTheBody(),
                                        room(p, edge.edge()),
                                        isHem,
                                        p.shape().isOpen(edge.edge())));
    }

    /** How much cloth is cut beyond an edge. */
    private Length room(Piece piece, String edge) {
        Optional<CutPiece> drawn =
                cutting.flatMap(
                        c ->
                                c.pieces().stream()
                                        .filter(cut -> cut.name().equals(piece.name()))
                                        .findFirst());
        return drawn.map(cut -> cut.edges().get(cut.number(edge)).width())
                .orElseGet(() -> hemOf(piece.name(), edge).orElseGet(() -> plain(piece, edge)));
    }

    private Optional<Length> hemOf(String piece, String edge) {
        return hems.values().stream()
                .filter(hem -> hem.edges().contains(new PieceEdge(piece, edge)))
                .map(hem -> hem.turnedUp(tape))
                .findFirst();
    }

    private Length plain(Piece piece, String edge) {
        return cutting.map(c -> piece.allowance(edge, c.allowance())).orElse(Length.ZERO);
    }
}
