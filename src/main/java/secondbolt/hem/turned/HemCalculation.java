package secondbolt.hem.turned;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.fault.Fault;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.plan.Hem;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.cut.IncludedHem;
import secondbolt.shape.cut.TurnedEdge;
import secondbolt.textile.Cloth;
import secondbolt.worksheet.Convention;

/**
 * Works hems out on the altered pieces: how long each fold is, how long the edge that is turned up,
 * and the line it lands on.
 *
 * <p>What is compared is the edge that is sewn down, at the depth from the fold; the raw edge of a
 * hem turned twice lies farther out, but is hidden in the turn.
 */
public final class HemCalculation {
    /** Common practice, no source. */
    public static final double PRESSES_FLAT = 0.005;

    /** Common practice, no source: more will not shrink flat in firm cotton. */
    public static final double SHRINKS_IN = 0.05;

    /** How far apart the marks of a level are. */
    private static final Convention MARK_EVERY =
            new Convention(
                    Length.ofInches(3, 1),
                    Length.ofMillimetres(75),
                    "T. Johnson, It's Fun to Sew a Cotton School Dress, 4-H bulletin L-87: mark"
                            + " from the floor every 3 in");

    /** A strip of paper is not cut off lower than this above the floor. */
    private static final Length LEAST_TRIM = Length.ofMillimetres(5);

    private final FitResult fit;
    private final Collection<Hem> hems;
    private final Collection<Cloth> cloths;
    private final Tape tape;

    private HemCalculation(
            FitResult fit, Collection<Hem> hems, Collection<Cloth> cloths, Tape tape) {
        this.fit = fit;
        this.hems = hems;
        this.cloths = cloths;
        this.tape = tape;
    }

    /**
     * The hems of a pattern, in the maker's order.
     *
     * @param hems by name; their edges must be there, which reading has checked
     * @param cloths all there are; heavy ones hang longer
     */
    public static List<HemResult> all(
            FitResult fit, Map<String, Hem> hems, Collection<Cloth> cloths, Tape tape) {
        HemCalculation all = new HemCalculation(fit, hems.values(), cloths, tape);
        List<HemResult> results = new ArrayList<>();
        hems.forEach((name, hem) -> results.add(Fault.during(name, () -> all.work(name, hem))));
        return List.copyOf(results);
    }

    private HemResult work(String name, Hem hem) {
        List<HemEdge> edges = hem.edges().stream().map(edge -> edge(hem, edge)).toList();
        return new HemResult(
                name,
                hem,
                hem.turnedUp(tape),
                hem.pressingDepths(tape),
                edges,
                UsualHang.of(hem.hang().orElseGet(() -> UsualHang.byShape(edges)), edges, cloths),
                hem.fromFloor().map(floor -> level(hem, floor, edges)));
    }

    private HemLevel level(Hem hem, Length floor, List<HemEdge> edges) {
        Length round = edges.stream().map(HemEdge::foldAllRound).reduce(Length.ZERO, Length::plus);
        Length every = MARK_EVERY.on(tape);
        int marks = (int) Math.ceil(round.millimetres() / every.millimetres() - 1e-9);
        Length up = hem.turnedUp(tape);
        Optional<Length> trim =
                Optional.of(floor.minus(up))
                        .filter(above -> up.isPositive() && !above.isShorterThan(LEAST_TRIM));
        return new HemLevel(floor, every, marks, trim);
    }

    private HemEdge edge(Hem hem, PieceEdge edge) {
        Piece piece = fit.find(edge.piece()).orElseThrow();
        Optional<PieceShape.Drawn> drawn = piece.shape().asDrawn();
        boolean included = isIncluded() && hem.turned() != Hem.Turned.FACED;
        Optional<TurnedEdge> turned =
                hem.depth()
                        .flatMap(
                                depth ->
                                        drawn.map(
                                                shape ->
                                                        included
                                                                ? inside(piece, shape, edge)
                                                                : asDrawn(hem, shape, edge)));
        Length fold =
                turned.filter(t -> included)
                        .map(t -> HemEdge.mm(t.foldMm()))
                        .orElseGet(() -> piece.shape().edgeLengths().get(edge.edge()));
        return new HemEdge(
                edge,
                piece,
                fold,
                turned,
                handling(hem, turned),
                drawn.map(shape -> ends(piece, shape, edge))
                        .map(ends -> turned.map(ends::mitred).orElse(ends))
                        .orElse(HemEdge.Ends.UNKNOWN),
                included);
    }

    private boolean isIncluded() {
        return fit.pattern().allowance().map(Pattern.Allowance::isIncluded).orElse(false);
    }

    static HemEdge.Handling handling(Hem hem, Optional<TurnedEdge> turned) {
        if (hem.turned() == Hem.Turned.FACED) {
            return HemEdge.Handling.FACE;
        }
        if (turned.isEmpty()) {
            return HemEdge.Handling.OPEN;
        }
        double landing = turned.get().landingMm();
        double share = landing > 0 ? turned.get().surplusMm() / landing : Double.POSITIVE_INFINITY;
        if (share < -PRESSES_FLAT) {
            return HemEdge.Handling.SHORT;
        }
        return share < PRESSES_FLAT
                ? HemEdge.Handling.FLAT
                : share <= SHRINKS_IN ? HemEdge.Handling.EASE : HemEdge.Handling.TOO_FULL;
    }

    private static int number(PieceShape.Drawn shape, PieceEdge edge) {
        for (int i = 0; i < shape.edges().size(); i++) {
            if (shape.edges().get(i).name().equals(edge.edge())) {
                return i;
            }
        }
        throw new IllegalArgumentException("edge must be one of the piece, was " + edge);
    }

    private HemEdge.Ends ends(Piece piece, PieceShape.Drawn shape, PieceEdge edge) {
        int number = number(shape, edge);
        int count = shape.edges().size();
        return new HemEdge.Ends(
                neighbour(piece, shape.edges().get((number + count - 1) % count).name()),
                neighbour(piece, shape.edges().get((number + 1) % count).name()));
    }

    private HemEdge.Neighbour neighbour(Piece piece, String edge) {
        HemEdge.Neighbour.Kind kind = HemEdge.Neighbour.Kind.SIDE;
        if (piece.fold().filter(edge::equals).isPresent()) {
            kind = HemEdge.Neighbour.Kind.FOLD;
        } else if (isTurned(new PieceEdge(piece.name(), edge))) {
            kind = HemEdge.Neighbour.Kind.HEM;
        } else if (isIncluded()) {
            kind = HemEdge.Neighbour.Kind.SQUARE;
        }
        return new HemEdge.Neighbour(edge, kind);
    }

    private boolean isTurned(PieceEdge edge) {
        return turning(edge).isPresent();
    }

    private Optional<Hem> turning(PieceEdge edge) {
        return hems.stream()
                .filter(hem -> hem.turned() != Hem.Turned.FACED && hem.isOn(edge))
                .findFirst();
    }

    private TurnedEdge asDrawn(Hem hem, PieceShape.Drawn shape, PieceEdge edge) {
        List<EdgeLine> lines = shape.edges().stream().map(NamedEdge::line).toList();
        double ownMm = hem.depth().orElseThrow().millimetres();
        List<Double> depthsMm =
                shape.edges().stream()
                        .map(e -> new PieceEdge(edge.piece(), e.name()))
                        .map(e -> e.equals(edge) ? ownMm : depthMm(e))
                        .toList();
        return TurnedEdge.of(lines, number(shape, edge), depthsMm);
    }

    private double depthMm(PieceEdge edge) {
        return turning(edge).flatMap(Hem::depth).map(Length::millimetres).orElse(0.0);
    }

    /**
     * Where the outline is the cutting line, the fold lies inside it by all that is turned up, and
     * ends where the seams at its ends are sewn, which run on past it as drawn.
     */
    private TurnedEdge inside(Piece piece, PieceShape.Drawn shape, PieceEdge edge) {
        return IncludedHem.turned(
                shape.edges().stream().map(NamedEdge::line).toList(),
                number(shape, edge),
                shape.edges().stream().map(e -> included(piece, e.name())).toList());
    }

    private IncludedHem.Included included(Piece piece, String edge) {
        PieceEdge of = new PieceEdge(piece.name(), edge);
        return turning(of)
                .map(
                        hem ->
                                new IncludedHem.Included(
                                        hem.turnedUp(tape).millimetres(),
                                        hem.depth().orElseThrow().millimetres()))
                .orElseGet(
                        () ->
                                new IncludedHem.Included(
                                        piece.allowance(edge, allowance()).millimetres(), 0));
    }

    private Length allowance() {
        return fit.pattern().allowance().map(Pattern.Allowance::of).orElse(Length.ZERO);
    }
}
