package secondbolt.fit.stretch;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.fit.seam.EdgeStretch;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.pattern.Bulge;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.Box;
import secondbolt.textile.Stretch;

/**
 * How far each edge of a pattern stretches: by the least of the cloths that its piece may be cut
 * from, by how the piece lies on it and how the edge lies in the piece. A piece with interfacing
 * does not stretch. An edge that runs both ways stretches as the ways of its box share it. Common
 * practice, no source.
 *
 * @param roles how far the cloths of a role stretch; one that is not in it does not
 */
public record ClothStretch(Map<Role, Stretch> roles) {
    /** Copies the map. */
    public ClothStretch {
        roles = Map.copyOf(roles);
    }

    /** How far each edge of a pattern stretches, and which of its pieces are bands. */
    public EdgeStretch of(Pattern pattern) {
        if (roles.isEmpty()) {
            return EdgeStretch.NONE;
        }
        Map<PieceEdge, Share> shares = new LinkedHashMap<>();
        Map<PieceEdge, Length> depths = new LinkedHashMap<>();
        Set<String> straight = new LinkedHashSet<>();
        for (Piece piece : pattern.pieces()) {
            Stretch lies = lying(piece);
            for (String name : piece.shape().edgeNames()) {
                PieceEdge edge = new PieceEdge(piece.name(), name);
                Way way = Way.of(piece.shape(), name);
                way.share(lies).ifPresent(s -> shares.put(edge, s));
                depths.put(edge, way.depth(piece.shape()));
            }
            if (piece.shape().asTaped().isPresent() || Bulge.isStraightAllRound(piece)) {
                straight.add(piece.name());
            }
        }
        return new EdgeStretch(shares, depths, straight, of(Role.MAIN).across());
    }

    private Stretch of(Role role) {
        return roles.getOrDefault(role, Stretch.NONE);
    }

    /** How a piece stretches across and along itself. */
    private Stretch lying(Piece piece) {
        if (piece.cuts().containsKey(Role.INTERFACING)) {
            return Stretch.NONE;
        }
        Stretch cloth =
                piece.cuts().keySet().stream()
                        .map(this::of)
                        .reduce(StretchTopic::lesser)
                        .orElse(Stretch.NONE);
        return switch (piece.grain()) {
            case ALONG -> cloth;
            case ACROSS -> new Stretch(/* across= */ cloth.along(), /* along= */ cloth.across());
            case BIAS, ANY -> {
                Optional<Share> least = StretchTopic.lesser(cloth.across(), cloth.along());
                yield new Stretch(least, least);
            }
        };
    }

    /**
     * Which way an edge runs in its piece.
     *
     * @param acrossMm its part across the piece
     * @param alongMm its part along it
     */
    private record Way(double acrossMm, double alongMm) {
        static Way of(PieceShape shape, String edge) {
            return shape.asDrawn()
                    .flatMap(drawn -> drawn.find(edge))
                    .map(line -> new Way(line.box().widthMm(), line.box().heightMm()))
                    .orElseGet(() -> taped(shape.asTaped().orElseThrow(), edge));
        }

        /** Of a piece known by tape: the way of the side of the box that it is nearest to. */
        private static Way taped(PieceShape.Taped taped, String edge) {
            Length length = taped.edges().get(edge);
            Length toAcross = length.minus(taped.across()).size();
            boolean isAcross = toAcross.isShorterThan(length.minus(taped.along()).size());
            return isAcross ? new Way(1, 0) : new Way(0, 1);
        }

        /** In whole hundredths, rounded down; nothing below one. */
        Optional<Share> share(Stretch lies) {
            double stretched =
                    acrossMm * lies.across().map(Share::fraction).orElse(0.0)
                            + alongMm * lies.along().map(Share::fraction).orElse(0.0);
            long percent = (long) Math.floor(100 * stretched / (acrossMm + alongMm) + 1e-9);
            return percent > 0 ? Optional.of(Share.ofPercent(percent)) : Optional.empty();
        }

        /** How deep the piece lies behind it. */
        Length depth(PieceShape shape) {
            boolean isAcross = acrossMm >= alongMm;
            return shape.asTaped()
                    .map(taped -> isAcross ? taped.along() : taped.across())
                    .orElseGet(() -> drawnDepth(shape.asDrawn().orElseThrow().box(), isAcross));
        }

        private static Length drawnDepth(Box box, boolean isAcross) {
            return Length.ofComputedMillimetres(isAcross ? box.heightMm() : box.widthMm());
        }
    }
}
