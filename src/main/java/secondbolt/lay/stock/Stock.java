package secondbolt.lay.stock;

import java.util.List;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.lay.placement.Container;

/**
 * All cloths of one role, in the order they are used.
 *
 * @param role of the cloths
 * @param spreads on each of which a piece could lie
 */
public record Stock(Role role, List<SpreadCloth> spreads) {
    /** Copies the list. */
    public Stock {
        spreads = List.copyOf(spreads);
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
