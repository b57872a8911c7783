package secondbolt.sewing.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.Spelling;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.garment.PieceEdge;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/** Finds edges that are not there, and exceptions that are of no join. */
public final class SewingCheck {
    private final Optional<Pattern> pattern;
    private final List<Trouble> troubles = new ArrayList<>();

    private SewingCheck(Optional<Pattern> pattern) {
        this.pattern = pattern;
    }

    /** All mistakes; none if the sewing suits the pattern. */
    public static List<Trouble> of(SewingPlan plan, Optional<Pattern> pattern) {
        SewingCheck check = new SewingCheck(pattern);
        plan.except().forEach(one -> check.isOfAJoin(one.on()));
        check.areOfOneChoice(plan.except());
        plan.also().forEach(line -> line.along().forEach(check::isThere));
        return List.copyOf(check.troubles);
    }

    private void isOfAJoin(Placed<PieceEdge> placed) {
        boolean isThere = isThere(placed);
        boolean isJoined =
                pattern.stream()
                        .flatMap(p -> p.seams().stream())
                        .anyMatch(seam -> seam.edges().contains(placed.value()));
        if (isThere && !isJoined) {
            troubles.add(
                    new Trouble(
                            placed.place(),
                            "`" + placed.value() + "`, an edge that no join of `seams` names",
                            "an edge of a join, or a line under `also`: `{what: …, along: ["
                                    + placed.value()
                                    + "]}`"));
        }
    }

    /** Only the first of two exceptions of one edge would hold. */
    private void areOfOneChoice(List<SeamException> exceptions) {
        Set<PieceEdge> before = new HashSet<>();
        for (SeamException one : exceptions) {
            if (!before.add(one.on().value())) {
                troubles.add(
                        new Trouble(
                                one.on().place(),
                                "`" + one.on().value() + "`, which is told of above",
                                "each edge once, with all that is told of it"));
            }
        }
    }

    private boolean isThere(Placed<PieceEdge> placed) {
        PieceEdge edge = placed.value();
        if (pattern.isEmpty()) {
            troubles.add(
                    new Trouble(
                            placed.place(),
                            "`" + edge + "`, an edge of no pattern",
                            "`pattern` as well, or `length` under `also`"));
            return false;
        }
        Optional<Piece> piece = pattern.get().find(edge.piece());
        if (piece.isEmpty()) {
            List<String> pieces = pattern.get().pieces().stream().map(Piece::name).toList();
            troubles.add(
                    new Trouble(
                                    placed.place(),
                                    "`" + edge + "`, which names no piece of the pattern",
                                    "one of its pieces: " + Spelling.listed(pieces))
                            .ofName(edge.piece(), pieces));
            return false;
        }
        if (!piece.get().hasEdge(edge.edge())) {
            Set<String> edges = piece.get().shape().edgeNames();
            troubles.add(
                    new Trouble(
                                    placed.place(),
                                    "`" + edge + "`, which is no edge of " + edge.piece(),
                                    "one of its edges: " + Spelling.listed(edges))
                            .ofName(edge.edge(), edges));
            return false;
        }
        return true;
    }
}
