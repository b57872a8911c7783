package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.figure.Figures;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * The figures of the lay, for other programs.
 *
 * @param result the designs
 * @param tape that prices are told for
 */
record LayFigures(LayResult result, Tape tape) {
    Figures figures() {
        Figures figures = new Figures();
        result.designs().forEach(design -> figures.inside(design.name(), figures(design)));
        return figures;
    }

    /** Which of the other designs can be made of the same cloth as well. */
    private List<Figures> together(String design) {
        List<Figures> together = new ArrayList<>();
        for (LayResult.DesignPair both : result.together()) {
            if (both.first().equals(design) || both.second().equals(design)) {
                String other = both.first().equals(design) ? both.second() : both.first();
                together.add(new Figures().text("with", other).claim("fits", both.fits()));
            }
        }
        return together;
    }

    private Figures figures(DesignLay design) {
        List<Figures> placed = new ArrayList<>();
        List<Figures> left = new ArrayList<>();
        List<Figures> remnants = new ArrayList<>();
        double used = 0;
        double sound = 0;
        for (StockLay stock : design.stocks()) {
            stock.laid().forEach(laid -> placed.addAll(figures(laid, stock)));
            stock.leftOver().forEach(piece -> left.addAll(figures(piece)));
            stock.spreads().forEach(c -> remnants.add(remnant(c.name(), design.remnants().of(c))));
            used += stock.used().squareMillimetres();
            sound += stock.sound().squareMillimetres();
        }
        Figures figures = new Figures();
        if (result.waitsFor(design).isEmpty()) {
            figures = figures.claim("fits", design.fits());
        }
        return figures.list("placed", placed)
                .list("left_over", left)
                .share("used", sound > 0 ? used / sound : 0)
                .list("remnants", remnants)
                .list("bolt_lengths", design.bolts().stream().map(LayFigures::figures).toList())
                .list("together", together(design.name()))
                .text("saved", NewClothInstead.of(result.plan(), tape).saved(design));
    }

    /** The copies it makes, on the cloth laid out single. */
    private static List<Figures> figures(LaidPiece laid, StockLay stock) {
        SpreadCloth spread = stock.spreads().get(laid.cloth());
        return laid.copies(spread.fold()).stream()
                .map(
                        copy ->
                                new Figures()
                                        .text("piece", laid.piece().piece().name())
                                        .count("copy", copy.number())
                                        .text("cloth", spread.name())
                                        .count(
                                                "turn_deg",
                                                laid.placement().orientation().turnDegrees())
                                        .claim("mirrored", copy.isMirrored())
                                        .claim("opened", laid.piece().isOpened())
                                        .points("outline", copy.outline().corners()))
                .toList();
    }

    private static List<Figures> figures(LayPiece piece) {
        return IntStream.range(piece.copy(), piece.copy() + piece.copies())
                .mapToObj(
                        copy ->
                                new Figures()
                                        .text("piece", piece.piece().name())
                                        .count("copy", copy))
                .toList();
    }

    private static Figures remnant(String cloth, Optional<Box> box) {
        return new Figures()
                .text("cloth", cloth)
                .acrossAlong("at", box.map(b -> new Point(b.leftMm(), b.topMm())))
                .acrossAlong("size", box.map(b -> new Point(b.widthMm(), b.heightMm())));
    }

    private static Figures figures(BoltLength bolt) {
        return new Figures()
                .text("role", bolt.role().word())
                .length("width", bolt.width())
                .length("length", bolt.length())
                .length("to_buy", bolt.toBuy());
    }
}
