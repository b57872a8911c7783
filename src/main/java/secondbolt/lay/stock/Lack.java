package secondbolt.lay.stock;

import java.util.Comparator;
import java.util.List;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.placement.Orientation;
import secondbolt.shape.Box;

/**
 * A piece that has room on no cloth, even alone, and what the cloth that comes nearest lacks for
 * it, in the turn that its grain allows and that lacks least.
 *
 * @param piece which
 * @param acrossMm how much wider the cloth would have to be, zero or more
 * @param alongMm how much longer, zero or more; one of the two is above zero
 */
public record Lack(LayPiece piece, double acrossMm, double alongMm) {
    /** What fits exactly may exceed its cloth by the last bits of its coordinates. */
    private static final double SAME_MM = 1e-6;

    /** Of those left over, what is too large for every cloth. */
    static List<Lack> of(List<LayPiece> leftOver, Stock stock, Trial trial) {
        return stock.spreads().isEmpty()
                ? List.of()
                : leftOver.stream()
                        .map(piece -> of(piece, stock, trial))
                        .filter(lack -> lack.acrossMm + lack.alongMm > 0)
                        .toList();
    }

    private static Lack of(LayPiece piece, Stock stock, Trial trial) {
        return stock.spreads().stream()
                .flatMap(
                        spread ->
                                trial.turns(piece, spread.isOneWay()).stream()
                                        .map(turn -> on(spread, piece, turn)))
                .min(
                        Comparator.<Lack>comparingDouble(l -> l.acrossMm + l.alongMm)
                                .thenComparingDouble(Lack::acrossMm))
                .orElseThrow();
    }

    private static Lack on(SpreadCloth spread, LayPiece piece, int turn) {
        Box box = Orientation.turned(turn).applyTo(piece.outline()).box();
        Box sound = spread.soundForHidden().box();
        return new Lack(
                piece,
                over(box.widthMm() - sound.widthMm()),
                over(box.heightMm() - sound.heightMm()));
    }

    private static double over(double mm) {
        return mm > SAME_MM ? mm : 0;
    }
}
