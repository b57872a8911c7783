package secondbolt.lay.giving;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.cutting.line.TapedCut;
import secondbolt.garment.Role;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.stock.StockLay;
import secondbolt.pattern.piece.Piece;

/**
 * How many copies the design that is made has, and how many are still to be cut.
 *
 * @param pieces those of the design
 * @param wanted copies of each role
 * @param left copies of each role that are not cut yet
 */
record CutCount(List<Piece> pieces, Map<Role, Integer> wanted, Map<Role, Integer> left) {
    static CutCount of(DesignLay made, CuttingResult cutting) {
        List<Piece> pieces =
                Stream.concat(
                                cutting.pieces().stream().map(CutPiece::piece),
                                cutting.taped().stream().map(TapedCut::piece))
                        .filter(piece -> made.design().map(d -> d.needs(piece.name())).orElse(true))
                        .toList();
        Map<Role, Integer> wanted = new EnumMap<>(Role.class);
        pieces.forEach(
                piece ->
                        piece.cuts()
                                .forEach(
                                        (role, cut) ->
                                                wanted.merge(role, cut.count(), Integer::sum)));
        Map<Role, Integer> left = new EnumMap<>(wanted);
        made.stocks().stream()
                .filter(stock -> wanted.containsKey(stock.role()))
                .forEach(stock -> left.put(stock.role(), left(stock)));
        return new CutCount(pieces, wanted, left);
    }

    private static int left(StockLay stock) {
        return Stream.concat(
                        stock.laid().stream().map(laid -> laid.piece().copies()),
                        stock.leftOver().stream().map(LayPiece::copies))
                .mapToInt(Integer::intValue)
                .sum();
    }

    int all() {
        return sum(wanted);
    }

    int allLeft() {
        return sum(left);
    }

    private static int sum(Map<Role, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Whether the log tells that every copy is cut. */
    boolean isDone() {
        return all() > 0 && allLeft() == 0;
    }

    /** How many are left of each role, those of which none is left out. */
    String words() {
        return left.entrySet().stream()
                .filter(of -> of.getValue() > 0)
                .map(of -> of.getValue() + " of " + of.getKey().cloth())
                .collect(Collectors.joining(", "));
    }

    /** The pieces of which every other copy is a mirror image. */
    List<String> pairs() {
        return pieces.stream()
                .filter(piece -> piece.cuts().values().stream().anyMatch(Piece.Cut::mirrored))
                .map(Piece::name)
                .toList();
    }
}
