package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;

/**
 * What holds pieces together where they are measured round. An edge that is sewn to nothing is
 * taken to meet its like, which is told; one that is sewn to a band, or turned, leaves a gap that
 * the pieces do not tell.
 */
final class RoundEnds {
    private final Pattern pattern;
    private final Set<String> round;
    private final Set<PieceEdge> free = new LinkedHashSet<>();
    private final Set<PieceEdge> away = new LinkedHashSet<>();

    RoundEnds(Pattern pattern, Set<String> round) {
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
        List<Seam> seams =
                pattern.seams().stream().filter(seam -> seam.edges().contains(end)).toList();
        boolean isTurned = pattern.meanings().turned().contains(end);
        if (seams.isEmpty() && !isTurned) {
            free.add(end);
        } else if (isTurned || seams.stream().noneMatch(this::isInTheRound)) {
            away.add(end);
        }
    }

    private boolean isInTheRound(Seam seam) {
        return seam.edges().stream().allMatch(edge -> round.contains(edge.piece()));
    }

    /** Whether nothing but the pieces goes round. */
    boolean areClosed() {
        return away.isEmpty();
    }

    /** Where the pieces end, if they do. */
    String words() {
        List<String> edges = new ArrayList<>();
        away.forEach(edge -> edges.add(edge.words()));
        return edges.isEmpty() ? "" : ", without what lies beyond " + String.join(", ", edges);
    }

    /** Edges that are taken to meet edge to edge. */
    List<String> meeting() {
        return free.stream().map(PieceEdge::words).toList();
    }
}
