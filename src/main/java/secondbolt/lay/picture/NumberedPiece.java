package secondbolt.lay.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.stock.StockLay;

/**
 * A piece with its number on the plan of its cloth.
 *
 * @param number from 1, from the top of the cloth down
 * @param laid where it lies
 */
public record NumberedPiece(int number, LaidPiece laid) {
    /** The pieces on a cloth in the order of cutting: from the top down, from the left. */
    static List<NumberedPiece> on(StockLay stock, int cloth) {
        List<LaidPiece> here =
                new ArrayList<>(stock.laid().stream().filter(l -> l.cloth() == cloth).toList());
        here.sort(
                Comparator.comparingDouble((LaidPiece l) -> Math.rint(l.box().topMm() / 10))
                        .thenComparingDouble(l -> l.box().leftMm()));
        List<NumberedPiece> numbered = new ArrayList<>();
        for (LaidPiece laid : here) {
            numbered.add(new NumberedPiece(numbered.size() + 1, laid));
        }
        return numbered;
    }
}
