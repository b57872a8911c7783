package secondbolt.fit.made;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.closure.placket.DrawnLaps;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * What holds pieces together where they are measured round. An edge that is sewn to nothing is
 * taken to meet its like, which is told; one that is sewn to a band, or turned, leaves a gap that
 * the pieces do not tell.
 */
final class RoundEnds {
    private final Pattern pattern;
    private final Set<String> round;
    private final DrawnLaps laps;
    private final Map<PieceEdge, Length> lapped = new LinkedHashMap<>();
    private final Set<PieceEdge> free = new LinkedHashSet<>();
    private final Set<PieceEdge> away = new LinkedHashSet<>();

    RoundEnds(Pattern pattern, Set<String> round, DrawnLaps laps) {
        this.laps = laps;
        this.pattern = pattern;
        this.round = Set.copyOf(round);
    }

    /** At the ends of an edge across a piece. */
    void beside(SewnPiece piece, String across) {
        piece.edges()
                .filter(edge -> !edge.equals(across) && piece.meet(edge, across))
                .filter(piece::isDown)
                .forEach(edge -> at(piece, edge));
    }

    /** At an edge that runs down a piece. */
    void at(SewnPiece piece, String edge) {
        PieceEdge end = new PieceEdge(piece.piece().name(), edge);
        if (edge.isEmpty() || piece.piece().fold().filter(edge::equals).isPresent()) {
            return;
        }
        Optional<Length> past = laps.past(end);
        if (past.isPresent()) {
            lapped.put(end, past.get().times(sides(piece.piece())));
            return;
        }
        List<Seam> seams =
                pattern.seams().stream().filter(seam -> seam.edges().contains(end)).toList();
        boolean isTurned = pattern.meanings().turned().contains(end);
        if (seams.isEmpty() && !isTurned) {
            free.add(end);
        } else if (isTurned || seams.stream().noneMatch(this::isInTheRound)) {
            away.add(end);
        }
    }

    /**
     * How many sides lie over each other there: mirror images meet each other, and what is none
     * meets an edge of another name, which is drawn as far.
     */
    private static int sides(Piece piece) {
        return meetsItself(piece) ? piece.timesRoundTheBody() : 2 * piece.timesRoundTheBody();
    }

    private static boolean meetsItself(Piece piece) {
        return piece.fold().isPresent()
                || piece.cuts().values().stream().anyMatch(Piece.Cut::mirrored);
    }

    private boolean isInTheRound(Seam seam) {
        return seam.edges().stream().allMatch(edge -> round.contains(edge.piece()));
    }

    /** Whether nothing but the pieces goes round. */
    boolean areClosed() {
        return away.isEmpty();
    }

    /** How much lies double where the sides lie over each other. */
    Length over() {
        return lapped.values().stream().reduce(Length.ZERO, Length::plus);
    }

    /** How much of bands runs past what they are sewn to, of all their copies. */
    Length lapOfBands() {
        Length lap = Length.ZERO;
        for (Seam seam : pattern.seams()) {
            EdgeSum band = seam.second().value();
            if (seam.isLapped() && isRound(band) && !isRound(seam.first().value())) {
                lap = lap.orLonger(ofAllCopies(seam.laps(), band.terms().get(0)));
            }
        }
        return lap;
    }

    private boolean isRound(EdgeSum sum) {
        return round.equals(
                sum.terms().stream().map(EdgeSum.Term::piece).collect(Collectors.toSet()));
    }

    private Length ofAllCopies(Length each, EdgeSum.Term term) {
        int times = pattern.find(term.piece()).orElseThrow().timesRoundTheBody();
        return each.times(times).dividedBy(term.count());
    }

    /** Where the pieces end or lie over each other, if they do. */
    String words() {
        return words(", without what lies beyond ", away)
                + words(", less what laps over at ", lapped.keySet());
    }

    private static String words(String before, Set<PieceEdge> edges) {
        return edges.isEmpty()
                ? ""
                : before + edges.stream().map(PieceEdge::words).collect(Collectors.joining(", "));
    }

    /** Edges that are taken to meet edge to edge. */
    List<String> meeting() {
        boolean isTheOther =
                free.size() == 1
                        && lapped.keySet().stream()
                                .anyMatch(e -> !meetsItself(pattern.find(e.piece()).orElseThrow()));
        return isTheOther ? List.of() : allFree();
    }

    private List<String> allFree() {
        return free.stream().map(PieceEdge::words).toList();
    }
}
