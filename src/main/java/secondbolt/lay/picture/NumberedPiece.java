package secondbolt.lay.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.plan.Lies;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.shape.Region;

/**
 * A piece with its number on the plan of its cloth.
 *
 * @param number from 1, from the top of the cloth down; a piece keeps it when it is cut
 * @param words the copy by name
 * @param lies how it lies
 * @param region where it lies
 * @param laid where it is to be cut; nothing if it is cut already
 */
public record NumberedPiece(
        int number, String words, Lies lies, Region region, Optional<LaidPiece> laid) {
    private static final int NOT_NUMBERED = 0;

    /** The pieces on a cloth in the order of cutting: from the top down, from the left. */
    static List<NumberedPiece> on(StockLay stock, int cloth) {
        SpreadCloth spread = stock.spreads().get(cloth);
        List<NumberedPiece> here =
                Stream.concat(
                                stock.laid().stream()
                                        .filter(laid -> laid.cloth() == cloth)
                                        .map(NumberedPiece::of),
                                spread.cuts().holes().stream().map(NumberedPiece::of))
                        .sorted(
                                Comparator.comparingDouble(
                                                (NumberedPiece p) ->
                                                        Math.rint(p.region.box().topMm() / 10))
                                        .thenComparingDouble(p -> p.region.box().leftMm()))
                        .toList();
        List<NumberedPiece> numbered = new ArrayList<>();
        for (NumberedPiece piece : here) {
            numbered.add(
                    new NumberedPiece(
                            numbered.size() + 1,
                            piece.words,
                            piece.lies,
                            piece.region,
                            piece.laid));
        }
        return numbered;
    }

    private static NumberedPiece of(LaidPiece laid) {
        return new NumberedPiece(
                NOT_NUMBERED,
                laid.piece().words(),
                laid.lies(),
                Region.of(laid.outline()),
                Optional.of(laid));
    }

    private static NumberedPiece of(SpreadCloth.Hole hole) {
        return new NumberedPiece(
                NOT_NUMBERED, hole.words(), hole.lies(), hole.region(), Optional.empty());
    }
}
