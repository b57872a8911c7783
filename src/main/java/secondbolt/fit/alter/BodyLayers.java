package secondbolt.fit.alter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import secondbolt.garment.Role;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * Which pieces go round the body together: an amount all round is shared within each layer, so that
 * a lining, or a skirt below its bodice, grows by as much as what it is sewn to.
 *
 * <p>Pieces joined along edges of the names belong together; pieces of which no such join is
 * declared, by the cloth they are cut of.
 *
 * @param layers the pieces' names, each piece in one layer
 */
record BodyLayers(List<Set<String>> layers) {
    BodyLayers {
        layers = layers.stream().map(layer -> (Set<String>) new LinkedHashSet<>(layer)).toList();
    }

    static BodyLayers of(Pattern pattern, List<String> edges) {
        List<Set<String>> layers = new ArrayList<>();
        for (Seam seam : pattern.seams()) {
            if (seam.sides().stream().allMatch(side -> !named(side.value(), edges).isEmpty())) {
                Set<String> joined = new LinkedHashSet<>();
                seam.sides().forEach(side -> joined.addAll(named(side.value(), edges)));
                add(joined, layers);
            }
        }
        Map<Role, Set<String>> byCloth = new LinkedHashMap<>();
        for (Piece piece : pattern.pieces()) {
            boolean isJoined = layers.stream().anyMatch(layer -> layer.contains(piece.name()));
            if (!isJoined && edges.stream().anyMatch(piece::hasEdge)) {
                Role cloth = piece.cuts().keySet().iterator().next();
                byCloth.computeIfAbsent(cloth, c -> new LinkedHashSet<>()).add(piece.name());
            }
        }
        layers.addAll(byCloth.values());
        return new BodyLayers(layers);
    }

    private static Set<String> named(EdgeSum sum, List<String> edges) {
        Set<String> pieces = new LinkedHashSet<>();
        sum.terms().stream()
                .filter(term -> edges.contains(term.edge().edge()))
                .forEach(term -> pieces.add(term.piece()));
        return pieces;
    }

    /** Layers that share a piece become one. */
    private static void add(Set<String> joined, List<Set<String>> layers) {
        Set<String> all = new LinkedHashSet<>();
        List<Set<String>> apart = new ArrayList<>();
        for (Set<String> layer : layers) {
            if (layer.stream().anyMatch(joined::contains)) {
                all.addAll(layer);
            } else {
                apart.add(layer);
            }
        }
        all.addAll(joined);
        layers.clear();
        layers.addAll(apart);
        layers.add(all);
    }
}
