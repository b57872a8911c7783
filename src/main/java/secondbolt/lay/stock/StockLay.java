package secondbolt.lay.stock;

import java.util.List;
import java.util.Optional;
import secondbolt.cloth.ClothResult;
import secondbolt.garment.Role;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPiece;
import secondbolt.measure.Area;
import secondbolt.shape.Box;

/**
 * The pieces of one design on all cloths of one role.
 *
 * @param role of the cloths and the pieces
 * @param cloths with sound cloth, in the order they are used
 * @param spreads each of them as it is spread for cutting
 * @param laid the pieces that found a place
 * @param leftOver those that did not
 * @param tooLarge those of them that have room on none of the cloths, were they alone
 * @param remnants the largest clear rectangle beside the pieces, for each cloth
 * @param sound how much sound cloth there is
 * @param unmetMatches matches that others rule out
 * @param isFinished whether the search ran to its end
 */
public record StockLay(
        Role role,
        List<ClothResult> cloths,
        List<SpreadCloth> spreads,
        List<LaidPiece> laid,
        List<LayPiece> leftOver,
        List<LayPiece> tooLarge,
        List<Optional<Box>> remnants,
        Area sound,
        List<Matching.UnmetMatch> unmetMatches,
        boolean isFinished) {
    /** Copies the lists. */
    public StockLay {
        cloths = List.copyOf(cloths);
        spreads = List.copyOf(spreads);
        unmetMatches = List.copyOf(unmetMatches);
        laid = List.copyOf(laid);
        leftOver = List.copyOf(leftOver);
        tooLarge = List.copyOf(tooLarge);
        remnants = List.copyOf(remnants);
    }

    /** Whether every piece found a place. */
    public boolean fits() {
        return leftOver.isEmpty();
    }

    /** Whether any of the cloths has places for hidden pieces only. */
    boolean hasHiddenCloth() {
        return spreads.stream()
                .anyMatch(s -> s.soundForHidden().areaMm2() > s.sound().areaMm2() + 1);
    }

    /** Whether an edge of a piece is made of a feature of one of the cloths. */
    public boolean isKept(LayPiece piece) {
        return spreads.stream()
                .flatMap(spread -> spread.kept().stream())
                .anyMatch(feature -> PlacementRules.isOf(piece, feature.edge()));
    }

    /** Whether the cloth is folded for cutting. */
    public boolean isFolded() {
        return spreads.stream().anyMatch(spread -> spread.fold().isPresent());
    }

    /** The area of what is laid. */
    public Area used() {
        return Area.ofComputedSquareMillimetres(
                laid.stream().mapToDouble(l -> l.piece().areaMm2()).sum());
    }

    /** The largest of the remnants; nothing if there is none. */
    public Optional<Box> largestRemnant() {
        return remnants.stream()
                .flatMap(Optional::stream)
                .reduce((a, b) -> b.areaMm2() > a.areaMm2() ? b : a);
    }
}
