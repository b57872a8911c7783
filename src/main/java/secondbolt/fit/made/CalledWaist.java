package secondbolt.fit.made;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;
import secondbolt.wearer.BodyMeasure;

/**
 * Whether an edge that is called waist lies there. The edges of a ring have their names from us,
 * and a cape has no waist.
 *
 * @param piece it is an edge of
 * @param pattern the piece belongs to
 */
record CalledWaist(Piece piece, Pattern pattern) {
    private static final Set<String> OF_A_RING = Set.of("waist", "right", "hem", "left");

    /** Whether it is called so and lies there. */
    boolean isTheWaist(String edge) {
        return isCalled(edge) && liesThere(edge);
    }

    /** Whether it is called so though nothing says it lies there. */
    boolean isElsewhere(String edge) {
        return isCalled(edge) && !liesThere(edge);
    }

    /** The upper edge of a ring that lies elsewhere. */
    Optional<String> topOfARing() {
        return piece.shape().edgeNames().stream()
                .filter(edge -> isARing() && edge.equals("waist") && !isTheWaist(edge))
                .findFirst();
    }

    private boolean isARing() {
        return Set.copyOf(piece.shape().edgeNames()).equals(OF_A_RING);
    }

    private boolean isCalled(String edge) {
        return pattern.meanings().serves(piece.name(), edge, Serves.WAIST);
    }

    /**
     * If she says so, if it is sewn to anything but a neckline, or if the pattern tells a waist.
     */
    private boolean liesThere(String edge) {
        PieceEdge here = new PieceEdge(piece.name(), edge);
        List<Seam> seams =
                pattern.seams().stream().filter(seam -> seam.edges().contains(here)).toList();
        boolean isTold = pattern.meanings().told().get(edge) == Serves.WAIST;
        boolean isMeasured = pattern.sizes().allFinished().containsKey(BodyMeasure.WAIST);
        return isTold
                || (seams.stream().noneMatch(this::isAtTheNeck)
                        && (!isARing() || !seams.isEmpty() || isMeasured));
    }

    private boolean isAtTheNeck(Seam seam) {
        return seam.edges().stream()
                .anyMatch(e -> pattern.meanings().serves(e.piece(), e.edge(), Serves.NECKLINE));
    }
}
