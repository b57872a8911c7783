package secondbolt.trim.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.file.Spelling;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.plan.Hem;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/** Finds bindings and elastics on edges that are not there or that something else claims. */
public final class TrimCheck {
    private final Pattern pattern;
    private final Set<PieceEdge> hemmed;
    private final Set<PieceEdge> bound = new LinkedHashSet<>();
    private final List<Trouble> troubles = new ArrayList<>();

    private TrimCheck(Pattern pattern, Collection<Hem> hems) {
        this.pattern = pattern;
        this.hemmed =
                hems.stream().flatMap(hem -> hem.edges().stream()).collect(Collectors.toSet());
    }

    /**
     * All mistakes; none if they suit the pattern.
     *
     * @param cloths the names of all cloths
     */
    public static List<Trouble> of(
            Map<String, Binding> bindings,
            Map<String, Elastic> elastics,
            Pattern pattern,
            Collection<Hem> hems,
            Collection<String> cloths) {
        TrimCheck check = new TrimCheck(pattern, hems);
        bindings.values().forEach(check::binding);
        for (Binding binding : bindings.values()) {
            binding.cloth().ifPresent(cloth -> check.isCloth(cloth, cloths));
        }
        elastics.values().forEach(elastic -> elastic.on().ifPresent(check::areThere));
        return List.copyOf(check.troubles);
    }

    private void binding(Binding binding) {
        if (!areThere(binding.on()) || !binding.closesOverTheEdge()) {
            return;
        }
        for (PieceEdge edge : binding.on().value().pieceEdges()) {
            if (hemmed.contains(edge)) {
                tell(binding.on(), edge, ", which a hem turns up", "one of both: bound, or hemmed");
            } else if (!bound.add(edge)) {
                tell(binding.on(), edge, ", which is bound already", "each edge in one binding");
            }
        }
    }

    private boolean areThere(Placed<EdgeSum> on) {
        int before = troubles.size();
        on.value().pieceEdges().forEach(edge -> isThere(on, edge));
        return troubles.size() == before;
    }

    private void isThere(Placed<EdgeSum> on, PieceEdge edge) {
        Optional<Piece> piece = pattern.find(edge.piece());
        if (piece.isEmpty()) {
            List<String> pieces = pattern.pieces().stream().map(Piece::name).toList();
            troubles.add(
                    trouble(
                                    on,
                                    edge,
                                    ", which names no piece of the pattern",
                                    "one of its pieces: " + Spelling.listed(pieces))
                            .ofName(edge.piece(), pieces));
        } else if (!piece.get().hasEdge(edge.edge())) {
            Set<String> edges = piece.get().shape().edgeLengths().keySet();
            troubles.add(
                    trouble(
                                    on,
                                    edge,
                                    ", which is no edge of " + edge.piece(),
                                    "one of its edges: " + Spelling.listed(edges))
                            .ofName(edge.edge(), edges));
        } else if (piece.get().fold().filter(edge.edge()::equals).isPresent()) {
            tell(on, edge, ", an edge that lies on the fold", "an edge that is cut");
        }
    }

    private void isCloth(Placed<String> cloth, Collection<String> cloths) {
        if (!cloths.contains(cloth.value())) {
            troubles.add(
                    new Trouble(
                                    cloth.place(),
                                    "`" + cloth.value() + "`, which is no cloth",
                                    cloths.isEmpty()
                                            ? "a cloth under `cloth`"
                                            : "one of " + Spelling.listed(cloths))
                            .ofName(cloth.value(), cloths));
        }
    }

    private void tell(Placed<EdgeSum> on, PieceEdge edge, String found, String right) {
        troubles.add(trouble(on, edge, found, right));
    }

    private static Trouble trouble(Placed<EdgeSum> on, PieceEdge edge, String found, String right) {
        return new Trouble(on.place(), "`" + edge + "`" + found, right);
    }
}
