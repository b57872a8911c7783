package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.cutting.line.CutPiece;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.placement.AllowedPositions;
import secondbolt.lay.placement.Orientation;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.shape.Box;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * The rules the pieces of a stock are placed by: how each may lie by its grain and the nap of a
 * cloth, on the fold, or along a feature that it is made of.
 *
 * @param stock the cloths
 * @param trial what of the maker's plan is let go
 */
public record PlacementRules(Stock stock, Trial trial) {
    /** An edge and a strip that differ by less run the same way. */
    private static final double LEVEL_MM = 0.5;

    private static final PlacementRule NOWHERE =
            PlacementRule.turned(0)
                    .at(AllowedPositions.between(1, 0), AllowedPositions.between(1, 0));

    /** All rules; one that leads nowhere if there are none. */
    List<PlacementRule> of(LayPiece piece) {
        List<PieceEdge> kept =
                stock.keptEdges().stream().filter(edge -> isOf(piece, edge)).toList();
        List<PlacementRule> rules = new ArrayList<>();
        boolean alike = stock.spreads().stream().map(SpreadCloth::isOneWay).distinct().count() < 2;
        for (int container = 0; container < stock.spreads().size(); container++) {
            List<PlacementRule> here = new ArrayList<>();
            SpreadCloth spread = stock.spreads().get(container);
            for (int turn : trial.turns(piece, spread.isOneWay())) {
                here.addAll(kept.isEmpty() ? free(piece, spread, turn) : kept(piece, spread, turn));
            }
            if (alike && kept.isEmpty()) {
                return here.isEmpty() ? List.of(NOWHERE) : here;
            }
            for (PlacementRule rule : here) {
                rules.add(rule.onContainer(container));
            }
        }
        return rules.isEmpty() ? List.of(NOWHERE) : rules;
    }

    /**
     * Whether an edge is one of a piece.
     *
     * @param edge with the name of its piece
     */
    public static boolean isOf(LayPiece piece, PieceEdge edge) {
        return edge.piece().equals(piece.piece().name());
    }

    private static List<PlacementRule> free(LayPiece piece, SpreadCloth spread, int turn) {
        PlacementRule up = PlacementRule.turned(turn);
        if (spread.fold().isEmpty()) {
            return List.of(up);
        }
        return switch (piece.layers()) {
            case ON_FOLD -> onFold(piece, List.of(up, up.mirrored()));
            case BOTH -> List.of(besideFold(piece, up), besideFold(piece, up.mirrored()));
            case UPPER, SINGLE -> List.of(besideFold(piece, up));
        };
    }

    /** Nowhere beyond the fold. */
    private static PlacementRule besideFold(LayPiece piece, PlacementRule rule) {
        double leftMm = rule.orientation().applyTo(piece.outline()).box().leftMm();
        return rule.at(
                AllowedPositions.between(-leftMm, Double.POSITIVE_INFINITY), AllowedPositions.ANY);
    }

    /** With its own fold on that of the cloth, which lies at the left. */
    private static List<PlacementRule> onFold(LayPiece piece, List<PlacementRule> rules) {
        List<PlacementRule> on = new ArrayList<>();
        EdgeLine fold = piece.opened().orElseThrow().fold();
        for (PlacementRule rule : rules) {
            double fromMm = rule.orientation().applyTo(fold.start()).xMm();
            double toMm = rule.orientation().applyTo(fold.end()).xMm();
            Box box = rule.orientation().applyTo(piece.outline()).box();
            boolean upright = Math.abs(fromMm - toMm) < LEVEL_MM;
            boolean atLeft = Math.abs(box.leftMm() - fromMm) < Math.abs(box.rightMm() - fromMm);
            if (upright && atLeft) {
                on.add(rule.at(AllowedPositions.at(-(fromMm + toMm) / 2), AllowedPositions.ANY));
            }
        }
        return on;
    }

    /** With its edge along one long side of a feature, and the feature in the piece. */
    private static List<PlacementRule> kept(LayPiece piece, SpreadCloth spread, int turn) {
        List<PlacementRule> rules = new ArrayList<>();
        for (ClothYield.Kept feature : spread.kept()) {
            if (isOf(piece, feature.edge())) {
                along(piece, feature, PlacementRule.turned(turn)).ifPresent(rules::add);
            }
        }
        return rules;
    }

    private static Optional<PlacementRule> along(
            LayPiece piece, ClothYield.Kept feature, PlacementRule rule) {
        String name = feature.edge().edge();
        Box edge = edge(piece, name, rule.orientation());
        Box strip = feature.strip();
        boolean isLevel = edge.heightMm() < LEVEL_MM;
        boolean isUpright = edge.widthMm() < LEVEL_MM;
        Point inside = rule.orientation().applyTo(piece.outline()).box().middle();
        if (isLevel && strip.widthMm() >= strip.heightMm()) {
            double side = inside.yMm() > edge.topMm() ? strip.topMm() : strip.bottomMm();
            return Optional.of(
                    rule.at(
                            AllowedPositions.between(
                                    strip.leftMm() - edge.leftMm(),
                                    strip.rightMm() - edge.rightMm()),
                            AllowedPositions.at(side - edge.topMm())));
        }
        if (isUpright && strip.heightMm() >= strip.widthMm()) {
            double side = inside.xMm() > edge.leftMm() ? strip.leftMm() : strip.rightMm();
            return Optional.of(
                    rule.at(
                            AllowedPositions.at(side - edge.leftMm()),
                            AllowedPositions.between(
                                    strip.topMm() - edge.topMm(),
                                    strip.bottomMm() - edge.bottomMm())));
        }
        return Optional.empty();
    }

    /** The box round an edge as it lies, with its mirror image if the piece is opened out. */
    private static Box edge(LayPiece piece, String name, Orientation orientation) {
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
                .map(orientation::applyTo)
                .box();
    }
}
