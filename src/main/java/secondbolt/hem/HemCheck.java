package secondbolt.hem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.Placed;
import secondbolt.fit.FitCheck;
import secondbolt.fit.Pattern;
import secondbolt.fit.Piece;

/** Finds hems on edges that are not there, or that something else claims. */
public final class HemCheck {
    private final Pattern pattern;
    private final Set<Hem.Edge> hemmed = new HashSet<>();
    private final List<FitCheck.Trouble> troubles = new ArrayList<>();

    private HemCheck(Pattern pattern) {
        this.pattern = pattern;
    }

    /** All mistakes; none if the hems suit the pattern. */
    public static List<FitCheck.Trouble> of(Map<String, Hem> hems, Pattern pattern) {
        HemCheck check = new HemCheck(pattern);
        hems.values().forEach(hem -> hem.on().forEach(check::isFree));
        return List.copyOf(check.troubles);
    }

    private void isFree(Placed<Hem.Edge> placed) {
        Hem.Edge edge = placed.value();
        Optional<Piece> piece = pattern.find(edge.piece());
        if (piece.isEmpty()) {
            tell(
                    placed,
                    ", which names no piece of the pattern",
                    "one of its pieces: "
                            + String.join(
                                    ", ", pattern.pieces().stream().map(Piece::name).toList()));
        } else if (!piece.get().hasEdge(edge.edge())) {
            tell(
                    placed,
                    ", which is no edge of " + edge.piece(),
                    "one of its edges: "
                            + String.join(", ", piece.get().shape().edgeLengths().keySet()));
        } else if (piece.get().fold().filter(edge.edge()::equals).isPresent()) {
            tell(placed, ", an edge that lies on the fold", "an edge that is turned up");
        } else if (piece.get().allowances().containsKey(edge.edge())) {
            tell(
                    placed,
                    ", an edge that has a seam allowance of its own",
                    "one of both: the hem alone sets the allowance of its edges");
        } else if (!hemmed.add(edge)) {
            tell(placed, ", which another hem lies on", "each edge in one hem");
        }
    }

    private void tell(Placed<Hem.Edge> placed, String found, String right) {
        troubles.add(
                new FitCheck.Trouble(placed.place(), "`" + placed.value() + "`" + found, right));
    }
}
