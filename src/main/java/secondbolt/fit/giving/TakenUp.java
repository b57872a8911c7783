package secondbolt.fit.giving;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.measure.Plural;
import secondbolt.pattern.piece.Piece;

/**
 * Darts or pleats of a piece.
 *
 * @param piece its name
 * @param each how many one copy has, both halves of one on the fold together
 * @param copies how many are cut of outside and lining; what lies between is cut without
 */
record TakenUp(String piece, int each, int copies) {
    static List<TakenUp> darts(List<Piece> pieces) {
        return all(pieces, Piece.Features::darts);
    }

    static List<TakenUp> pleats(List<Piece> pieces) {
        return all(pieces, Piece.Features::pleats);
    }

    private static List<TakenUp> all(
            List<Piece> pieces, Function<Piece.Features, List<Piece.Dart>> which) {
        return pieces.stream()
                .filter(piece -> !which.apply(piece.features()).isEmpty())
                .map(piece -> of(piece, which.apply(piece.features()).size()))
                .filter(one -> one.copies > 0)
                .toList();
    }

    private static TakenUp of(Piece piece, int drawn) {
        int copies =
                piece.cuts().entrySet().stream()
                        .filter(cut -> !cut.getKey().isBetween())
                        .mapToInt(cut -> cut.getValue().count())
                        .sum();
        return new TakenUp(piece.name(), piece.fold().isPresent() ? 2 * drawn : drawn, copies);
    }

    /** How many there are in all. */
    static int count(List<TakenUp> all) {
        return all.stream().mapToInt(one -> one.each * one.copies).sum();
    }

    /** Where they are, in words. */
    static String where(List<TakenUp> all) {
        return all.stream()
                .map(
                        one ->
                                one.piece
                                        + ", "
                                        + one.each
                                        + (one.copies == 1
                                                ? ""
                                                : " on each of "
                                                        + Plural.of(one.copies, "copy", "copies")))
                .collect(Collectors.joining("; "));
    }
}
