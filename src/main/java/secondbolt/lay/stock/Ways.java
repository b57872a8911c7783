package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.ClothYield;
import secondbolt.cutting.CutPiece;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.search.Placed;
import secondbolt.lay.search.Rail;
import secondbolt.lay.search.Way;
import secondbolt.shape.Box;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * How a piece may lie on the cloths of a stock: by its grain and the nap of each, on the fold,
 * along a feature it is made of.
 *
 * @param stock the cloths
 * @param trial what is let go
 */
public record Ways(Stock stock, Trial trial) {
    /** An edge and a strip that differ by less run the same way. */
    private static final double LEVEL_MM = 0.5;

    private static final Way NO_WAY = Way.turned(0).on(Rail.between(1, 0), Rail.between(1, 0));

    /** All ways; one that leads nowhere if there are none. */
    List<Way> of(LayPiece piece) {
        List<PieceEdge> kept =
                stock.keptEdges().stream().filter(edge -> isOf(piece, edge)).toList();
        List<Way> ways = new ArrayList<>();
        boolean alike = stock.spreads().stream().map(Spread::isOneWay).distinct().count() < 2;
        for (int bed = 0; bed < stock.spreads().size(); bed++) {
            List<Way> here = new ArrayList<>();
            Spread spread = stock.spreads().get(bed);
            for (int turn : trial.turns(piece, spread.isOneWay())) {
                here.addAll(kept.isEmpty() ? free(piece, spread, turn) : kept(piece, spread, turn));
            }
            if (alike && kept.isEmpty()) {
                return here.isEmpty() ? List.of(NO_WAY) : here;
            }
            for (Way way : here) {
                ways.add(way.onBed(bed));
            }
        }
        return ways.isEmpty() ? List.of(NO_WAY) : ways;
    }

    /**
     * Whether an edge is one of a piece.
     *
     * @param edge with the name of its piece
     */
    public static boolean isOf(LayPiece piece, PieceEdge edge) {
        return edge.piece().equals(piece.piece().name());
    }

    private static List<Way> free(LayPiece piece, Spread spread, int turn) {
        Way up = Way.turned(turn);
        if (spread.fold().isEmpty()) {
            return List.of(up);
        }
        return switch (piece.layers()) {
            case ON_FOLD -> onFold(piece, List.of(up, up.mirrored()));
            case BOTH -> List.of(besideFold(piece, up), besideFold(piece, up.mirrored()));
            case UPPER, SINGLE -> List.of(besideFold(piece, up));
        };
    }

    private static Placed placed(Way way) {
        return new Placed(0, 0, way.isMirrored(), way.turnDegrees(), 0, 0);
    }

    /** Nowhere beyond the fold. */
    private static Way besideFold(LayPiece piece, Way way) {
        double leftMm = placed(way).lying(piece.outline()).box().leftMm();
        return way.on(Rail.between(-leftMm, Double.POSITIVE_INFINITY), Rail.ANYWHERE);
    }

    /** With its own fold on that of the cloth, which lies at the left. */
    private static List<Way> onFold(LayPiece piece, List<Way> ways) {
        List<Way> on = new ArrayList<>();
        EdgeLine fold = piece.cut().flatMap(LayPieces::fold).orElseThrow();
        for (Way way : ways) {
            double fromMm = placed(way).at(fold.start()).xMm();
            double toMm = placed(way).at(fold.end()).xMm();
            Box box = placed(way).lying(piece.outline()).box();
            boolean upright = Math.abs(fromMm - toMm) < LEVEL_MM;
            boolean atLeft = Math.abs(box.leftMm() - fromMm) < Math.abs(box.rightMm() - fromMm);
            if (upright && atLeft) {
                on.add(way.on(Rail.at(-(fromMm + toMm) / 2), Rail.ANYWHERE));
            }
        }
        return on;
    }

    /** With its edge along one long side of a feature, and the feature in the piece. */
    private static List<Way> kept(LayPiece piece, Spread spread, int turn) {
        List<Way> ways = new ArrayList<>();
        for (ClothYield.Kept feature : spread.kept()) {
            if (isOf(piece, feature.edge())) {
                along(piece, feature, Way.turned(turn)).ifPresent(ways::add);
            }
        }
        return ways;
    }

    private static Optional<Way> along(LayPiece piece, ClothYield.Kept feature, Way way) {
        String name = feature.edge().edge();
        Box edge = edge(piece, name, placed(way));
        Box strip = feature.strip();
        boolean isLevel = edge.heightMm() < LEVEL_MM;
        boolean isUpright = edge.widthMm() < LEVEL_MM;
        Point inside = placed(way).lying(piece.outline()).box().middle();
        if (isLevel && strip.widthMm() >= strip.heightMm()) {
            double side = inside.yMm() > edge.topMm() ? strip.topMm() : strip.bottomMm();
            return Optional.of(
                    way.on(
                            Rail.between(
                                    strip.leftMm() - edge.leftMm(),
                                    strip.rightMm() - edge.rightMm()),
                            Rail.at(side - edge.topMm())));
        }
        if (isUpright && strip.heightMm() >= strip.widthMm()) {
            double side = inside.xMm() > edge.leftMm() ? strip.leftMm() : strip.rightMm();
            return Optional.of(
                    way.on(
                            Rail.at(side - edge.leftMm()),
                            Rail.between(
                                    strip.topMm() - edge.topMm(),
                                    strip.bottomMm() - edge.bottomMm())));
        }
        return Optional.empty();
    }

    /** The box round an edge as it lies, with its mirror image if the piece is opened out. */
    private static Box edge(LayPiece piece, String name, Placed placed) {
        CutPiece cut = piece.cut().orElseThrow();
        EdgeLine line = cut.shape().find(name).orElseThrow();
        List<Point> ends = new ArrayList<>(List.of(line.start(), line.end()));
        if (piece.isOpened()) {
            EdgeLine fold = LayPieces.fold(cut).orElseThrow();
            for (Point end : List.of(line.start(), line.end())) {
                ends.add(LayPieces.mirrored(end, fold.start(), fold.end()));
            }
        } else if (piece.isMirrored()) {
            ends.replaceAll(LayPieces.MIRROR);
        }
        return new Outline(ends.size() == 2 ? List.of(ends.get(0), ends.get(1), ends.get(1)) : ends)
                .map(placed::at)
                .box();
    }
}
