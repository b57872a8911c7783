package secondbolt.lay.stock;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.garment.Role;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPiece;
import secondbolt.measure.Area;

/**
 * The pieces of one design on all cloths of one role.
 *
 * @param role of the cloths and the pieces
 * @param spreads the cloths with sound cloth, as they are spread for cutting, in the order they are
 *     used
 * @param laid the pieces that found a place
 * @param leftOver those that did not
 * @param tooLarge those of them that have room on none of the cloths, were they alone, and what
 *     lacks
 * @param unmetMatches matches that others rule out
 * @param apart matches with what is cut that are not held
 * @param pinned what became of the places that are pinned
 * @param isFinished whether the search ran to its end
 */
public record StockLay(
        Role role,
        List<SpreadCloth> spreads,
        List<LaidPiece> laid,
        List<LayPiece> leftOver,
        List<Lack> tooLarge,
        List<Matching.UnmetMatch> unmetMatches,
        List<Matching.Apart> apart,
        Pinned pinned,
        boolean isFinished) {
    /** Copies the lists. */
    public StockLay {
        spreads = List.copyOf(spreads);
        unmetMatches = List.copyOf(unmetMatches);
        apart = List.copyOf(apart);
        laid = List.copyOf(laid);
        leftOver = List.copyOf(leftOver);
        tooLarge = List.copyOf(tooLarge);
    }

    /** The same with some of its pieces only. */
    public StockLay only(Predicate<String> isWanted) {
        return new StockLay(
                role,
                spreads,
                laid.stream().filter(l -> isWanted.test(l.piece().piece().name())).toList(),
                leftOver.stream().filter(p -> isWanted.test(p.piece().name())).toList(),
                tooLarge.stream().filter(l -> isWanted.test(l.piece().piece().name())).toList(),
                unmetMatches,
                apart,
                pinned,
                isFinished);
    }

    /** The cloths, in the order they are used. */
    public List<ClothResult> cloths() {
        return spreads.stream().flatMap(spread -> spread.cloth().stream()).toList();
    }

    /**
     * How much room is to spare on a cloth; nothing if no piece lies there.
     *
     * @param number of the cloth, from 0
     * @param gapMm between two pieces
     */
    public Optional<Slack> slack(int number, double gapMm) {
        List<LaidPiece> there = laid.stream().filter(l -> l.cloth() == number).toList();
        return there.isEmpty()
                ? Optional.empty()
                : Optional.of(Slack.of(spreads.get(number), there, gapMm));
    }

    /** Whether every piece found a place. */
    public boolean fits() {
        return leftOver.isEmpty();
    }

    /** Whether an edge of a piece is made of a feature of one of the cloths. */
    public boolean isKept(LayPiece piece) {
        return spreads.stream()
                .flatMap(spread -> spread.kept().stream())
                .anyMatch(feature -> PlacementRules.isOf(piece, feature.edge()));
    }

    /** How much sound cloth there is. */
    public Area sound() {
        return Area.ofComputedSquareMillimetres(
                spreads.stream().mapToDouble(SpreadCloth::soundAreaMm2).sum());
    }

    /** The area of what is laid. */
    public Area used() {
        return Area.ofComputedSquareMillimetres(
                laid.stream().mapToDouble(l -> l.piece().areaMm2()).sum());
    }

    /** What share of the sound cloth is used, from 0 to 1; 0 if there is none. */
    public double usedShare() {
        double all = sound().squareMillimetres();
        return all > 0 ? used().squareMillimetres() / all : 0;
    }
}
