package secondbolt.supply.left;

import java.util.ArrayList;
import java.util.List;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Area;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.ClearRectangles;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * What a design recovers, uses and leaves of the outside and the lining; what lies between is
 * bought.
 *
 * @param sound how much sound cloth there is
 * @param used the area of what is laid
 * @param rectangles beside the pieces, cloth by cloth, the largest first
 */
public record LeftOver(Area sound, Area used, List<Rectangle> rectangles) {
    private static final int MOST_OF_A_CLOTH = 4;

    /** Nothing narrower is good for anything here. */
    private static final double LEAST_SIDE_MM = 50;

    /** Copies the list. */
    public LeftOver {
        rectangles = List.copyOf(rectangles);
    }

    /**
     * One rectangle.
     *
     * @param cloth which cloth
     * @param box in millimetres from the left edge or the fold, and from the top
     * @param isDouble whether the cloth lies folded, so that there are two of it
     * @param uses what it is good for, never none
     */
    public record Rectangle(String cloth, Box box, boolean isDouble, List<RemnantUse> uses) {
        /** Copies the uses. */
        public Rectangle {
            uses = List.copyOf(uses);
        }
    }

    /** Of a design that is laid. */
    public static LeftOver of(DesignLay design, Tape tape) {
        List<StockLay> stocks =
                design.stocks().stream().filter(stock -> !stock.role().isBetween()).toList();
        Area sound = Area.ZERO;
        Area used = Area.ZERO;
        List<Rectangle> rectangles = new ArrayList<>();
        for (StockLay stock : stocks) {
            sound = sound.plus(stock.sound());
            used = used.plus(stock.used());
            for (int i = 0; i < stock.spreads().size(); i++) {
                rectangles.addAll(rectangles(stock, i, tape));
            }
        }
        return new LeftOver(sound, used, rectangles);
    }

    /** What is not used, offcuts between the pieces counted. */
    public Area left() {
        return sound.minus(used);
    }

    private static List<Rectangle> rectangles(StockLay stock, int cloth, Tape tape) {
        SpreadCloth spread = stock.spreads().get(cloth);
        List<Region> laid =
                stock.laid().stream()
                        .filter(piece -> piece.cloth() == cloth)
                        .map(LaidPiece::outline)
                        .map((Outline outline) -> Region.of(outline))
                        .toList();
        Region free = spread.sound().minus(Region.union(laid));
        return ClearRectangles.greedy(free, MOST_OF_A_CLOTH, LEAST_SIDE_MM).stream()
                .map(
                        box ->
                                new Rectangle(
                                        spread.name(),
                                        box,
                                        spread.fold().isPresent(),
                                        RemnantUse.of(box, tape)))
                .filter(rectangle -> !rectangle.uses().isEmpty())
                .toList();
    }
}
