package secondbolt.fit.made;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.pattern.Meaning;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;

/**
 * Where a piece ends: at its hem, wrist or waist; else, if no name and no join tells, at the lowest
 * edge across it, or at the one that lies against the edge it is sewn on by.
 */
final class LowerEdge {
    /** What an edge at the end may serve, the last first. */
    static final List<Serves> ENDS = List.of(Serves.HEM, Serves.WRIST, Serves.WAIST);

    private static final Set<Serves> ABOVE =
            EnumSet.of(Serves.SHOULDER, Serves.NECKLINE, Serves.ARMHOLE, Serves.CAP, Serves.CROTCH);

    private LowerEdge() {}

    /** Of a piece that begins at its top. */
    static Optional<String> of(SewnPiece piece, String from) {
        return ENDS.stream()
                .flatMap(serves -> lowest(piece, from, serves).stream())
                .findFirst()
                .or(
                        () ->
                                piece.edges()
                                        .filter(edge -> !edge.equals(from) && !piece.isDown(edge))
                                        .filter(edge -> !isAbove(piece, edge))
                                        .filter(e -> piece.bottomMm(e) > piece.bottomMm(from))
                                        .max(Comparator.comparingDouble(piece::bottomMm)));
    }

    /**
     * The edges that go round as its hem: what is called so; else the lowest of those turned that
     * serve nothing else, with what goes on from it. A turned side, bib or armhole is none.
     */
    static List<String> hems(SewnPiece piece) {
        List<String> called =
                piece.edges()
                        .filter(e -> isHem(piece, e, how -> how != Meaning.How.DERIVED))
                        .toList();
        if (!called.isEmpty()) {
            return called;
        }
        return withWhatGoesOn(
                piece,
                piece.edges()
                        .filter(e -> !piece.isDown(e) && isHem(piece, e, how -> true))
                        .toList());
    }

    private static boolean isHem(SewnPiece piece, String edge, Predicate<Meaning.How> how) {
        return piece.pattern()
                .meanings()
                .edge(piece.piece().name(), edge)
                .filter(m -> m.serves() == Serves.HEM && how.test(m.how()))
                .isPresent();
    }

    /** The edges at its lower end: its hem, or the lowest across it. */
    static List<String> across(SewnPiece piece) {
        List<String> hems = hems(piece);
        return hems.isEmpty()
                ? withWhatGoesOn(piece, piece.edges().filter(e -> !piece.isDown(e)).toList())
                : hems;
    }

    private static List<String> withWhatGoesOn(SewnPiece piece, List<String> edges) {
        Optional<String> lowest = edges.stream().max(Comparator.comparingDouble(piece::bottomMm));
        return edges.stream()
                .filter(e -> lowest.filter(l -> l.equals(e) || piece.goesOn(l, e)).isPresent())
                .toList();
    }

    private static Optional<String> lowest(SewnPiece piece, String from, Serves serves) {
        return piece.edges()
                .filter(edge -> !edge.equals(from) && piece.serves(edge, serves))
                .filter(edge -> !runsAlong(piece, edge))
                .max(Comparator.comparingDouble(piece::bottomMm));
    }

    /** A side may be turned as well, as of an apron. */
    private static boolean runsAlong(SewnPiece piece, String edge) {
        return piece.pattern()
                .meanings()
                .edge(piece.piece().name(), edge)
                .filter(m -> m.serves().isLengthwise())
                .isPresent();
    }

    private static boolean isAbove(SewnPiece piece, String edge) {
        return piece.pattern()
                .meanings()
                .edge(piece.piece().name(), edge)
                .filter(m -> ABOVE.contains(m.serves()))
                .isPresent();
    }

    /** Of a piece that is sewn on by an edge; nothing if none lies against it. */
    static Optional<String> against(Piece piece, String on, Pattern pattern) {
        SewnPiece sewn = new SewnPiece(piece, pattern);
        return ENDS.stream()
                .flatMap(
                        serves ->
                                piece.shape().edgeNames().stream()
                                        .filter(e -> sewn.serves(e, serves) && lies(sewn, e, on)))
                .findFirst()
                .or(
                        () ->
                                piece.shape().asDrawn().stream()
                                        .flatMap(drawn -> drawn.edges().stream())
                                        .filter(edge -> lies(sewn, edge.name(), on))
                                        .max(
                                                Comparator.comparingDouble(
                                                        edge -> edge.line().lengthMm()))
                                        .map(edge -> edge.name()));
    }

    private static boolean lies(SewnPiece piece, String edge, String on) {
        boolean isDrawn = piece.piece().shape().asDrawn().isPresent();
        return !edge.equals(on)
                && (!isDrawn || (!piece.meet(edge, on) && piece.acrossMm(on, edge).isPresent()));
    }

    /** How a piece known by tape lies: from an edge as far as its box goes the other way. */
    static double boxMm(Piece piece, PieceShape.Taped taped, String on, Pattern pattern) {
        double edgeMm =
                taped.edges().containsKey(on)
                        ? taped.edges().get(on).millimetres()
                        : taped.across().millimetres();
        double acrossMm = taped.across().millimetres();
        double alongMm = taped.along().millimetres();
        boolean isAcross = Math.abs(edgeMm - acrossMm) <= Math.abs(edgeMm - alongMm);
        return (isAcross ? alongMm : acrossMm) - allowancesMm(piece, on, pattern);
    }

    /** What the box has of allowances at the edge and against it. */
    private static double allowancesMm(Piece piece, String on, Pattern pattern) {
        return pattern.allowance()
                .filter(Pattern.Allowance::isIncluded)
                .map(
                        a -> {
                            String end = against(piece, on, pattern).orElse("");
                            return piece.allowance(on, a.of()).millimetres()
                                    + piece.allowance(end, a.of()).millimetres();
                        })
                .orElse(0.0);
    }

    /** How it is called at the end of a sentence. */
    static String words(PieceEdge end, Pattern pattern) {
        return ENDS.stream()
                .filter(
                        serves ->
                                serves == Serves.HEM
                                        ? pattern.meanings().isHem(end.piece(), end.edge())
                                        : pattern.meanings()
                                                .serves(end.piece(), end.edge(), serves))
                .map(Serves::word)
                .findFirst()
                .orElse(end.edge());
    }
}
