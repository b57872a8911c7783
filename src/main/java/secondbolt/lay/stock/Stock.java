package secondbolt.lay.stock;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.placement.Container;
import secondbolt.shape.Point;

/**
 * All cloths of one role, in the order they are used.
 *
 * @param role of the cloths
 * @param spreads on each of which a piece could lie
 * @param fixed the copies that have their place already, with which others may have to match
 */
public record Stock(Role role, List<SpreadCloth> spreads, List<Fixed> fixed) {
    /** Repeats that differ by less are of one pattern. */
    private static final double SAME_REPEAT_MM = 0.5;

    /** Copies the lists. */
    public Stock {
        spreads = List.copyOf(spreads);
        fixed = List.copyOf(fixed);
    }

    /** Cloths of which nothing is cut. */
    public Stock(Role role, List<SpreadCloth> spreads) {
        this(role, spreads, List.of());
    }

    /**
     * A copy that is cut, or keeps its place.
     *
     * @param piece the copy
     * @param cloth the cloth it lies on, by name
     * @param repeat of that cloth
     * @param turnDegrees how it is turned there
     * @param at how far it is moved there; nothing if that says nothing of its seams, since it was
     *     cut in another shape, or is used with its wrong side out
     */
    public record Fixed(
            LayPiece piece,
            String cloth,
            ClothYield.Repeat repeat,
            int turnDegrees,
            Optional<Point> at) {}

    /** The same with other cloths, and more copies that have their place. */
    Stock with(List<SpreadCloth> others, List<Fixed> more) {
        return new Stock(role, others, Stream.concat(fixed.stream(), more.stream()).toList());
    }

    /** The repeat that is heeded: the first cloth's that has one. */
    ClothYield.Repeat repeat() {
        return spreads.stream()
                .map(SpreadCloth::repeat)
                .filter(ClothYield.Repeat::isAny)
                .findFirst()
                .orElse(ClothYield.Repeat.NONE);
    }

    /** The numbers of the cloths that have this repeat, from 0. */
    List<Integer> patterned() {
        return IntStream.range(0, spreads.size())
                .filter(i -> isOfRepeat(spreads.get(i).repeat()))
                .boxed()
                .toList();
    }

    /** Whether a repeat is the one that is heeded. */
    boolean isOfRepeat(ClothYield.Repeat other) {
        return other.isAny()
                && Math.abs(other.acrossMm() - repeat().acrossMm()) < SAME_REPEAT_MM
                && Math.abs(other.alongMm() - repeat().alongMm()) < SAME_REPEAT_MM;
    }

    /** Whether it is told of each of them where its pattern begins. */
    boolean isTold() {
        return patterned().stream().allMatch(i -> spreads.get(i).repeat().begins().isPresent());
    }

    /** Where the pattern of a cloth begins, if that is told of each; else its corner. */
    Point begins(int cloth) {
        return isTold() ? spreads.get(cloth).repeat().begins().orElse(Point.ORIGIN) : Point.ORIGIN;
    }

    /** The cloths on which a piece can match one that has its place. */
    List<Integer> matching(Fixed fixed) {
        if (!isOfRepeat(fixed.repeat())) {
            return List.of();
        }
        return isTold()
                ? fixed.repeat().begins().map(begins -> patterned()).orElse(List.of())
                : patterned().stream()
                        .filter(i -> spreads.get(i).name().equals(fixed.cloth()))
                        .toList();
    }

    /** The edges of pieces that are made of a feature. */
    List<PieceEdge> keptEdges() {
        return spreads.stream()
                .flatMap(s -> s.kept().stream())
                .map(k -> k.edge())
                .distinct()
                .toList();
    }

    /** The cloths as the search sees them. */
    List<Container> containers() {
        List<PieceEdge> edges = keptEdges();
        return spreads.stream().map(spread -> spread.container(edges)).toList();
    }

    /** Whether the cloths are folded for cutting. */
    boolean isFolded() {
        return spreads.stream().anyMatch(spread -> spread.fold().isPresent());
    }
}
