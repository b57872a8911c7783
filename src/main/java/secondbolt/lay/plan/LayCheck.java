package secondbolt.lay.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import secondbolt.file.Spelling;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.garment.PieceEdge;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.textile.Cloth;

/**
 * Finds what a plan for the lay says of pieces, cloths and designs that are not there, and what
 * cannot go together.
 */
public final class LayCheck {
    private final List<Trouble> troubles = new ArrayList<>();
    private final Map<String, Piece> pieces = new LinkedHashMap<>();
    private final Map<String, Cloth> cloths;
    private final LayPlan plan;

    private LayCheck(LayPlan plan, Pattern pattern, Map<String, Cloth> cloths) {
        this.plan = plan;
        pattern.pieces().forEach(piece -> pieces.put(piece.name(), piece));
        this.cloths = cloths;
    }

    /** All mistakes; none if the plan can be worked out. */
    public static List<Trouble> of(LayPlan plan, Pattern pattern, Map<String, Cloth> cloths) {
        LayCheck check = new LayCheck(plan, pattern, cloths);
        check.names();
        plan.rules().matches().forEach(check::match);
        cloths.values().forEach(check::kept);
        return List.copyOf(check.troubles);
    }

    private void names() {
        for (Map.Entry<String, Design> design : plan.designs().entrySet()) {
            design.getValue().uses().forEach(this::piece);
        }
        plan.make()
                .ifPresent(
                        make ->
                                known(
                                        make,
                                        plan.designs().keySet(),
                                        "which is no design",
                                        "a design under `designs`"));
        plan.rules().grains().forEach((name, grain) -> piece(new Placed<>(name, grain.place())));
        for (Placing cut : plan.namedBy(pieces.keySet()).soFar()) {
            piece(cut.piece());
            known(cut.cloth(), cloths.keySet(), "which is no cloth", "a cloth under `cloth`");
        }
    }

    private boolean piece(Placed<String> name) {
        return known(
                name,
                pieces.keySet(),
                "which is no piece of the pattern",
                "a piece under `pattern`");
    }

    private boolean known(Placed<String> name, Set<String> all, String isNot, String none) {
        if (all.contains(name.value())) {
            return true;
        }
        troubles.add(
                new Trouble(
                                name.place(),
                                "`" + name.value() + "`, " + isNot,
                                all.isEmpty()
                                        ? none
                                        : "one of " + Spelling.listed(new TreeSet<>(all)))
                        .ofName(name.value(), all));
        return false;
    }

    private void tell(Placed<?> at, String found, String right) {
        troubles.add(new Trouble(at.place(), found, right));
    }

    private void match(Match match) {
        boolean repeats = cloths.values().stream().anyMatch(c -> c.textile().repeat().isAny());
        if (!repeats) {
            tell(
                    match.first(),
                    "`match` without a cloth whose pattern repeats",
                    "`repeat: {along: …, across: …}` with the cloth, measured on it");
        } else if (plan.isFolded()) {
            tell(
                    plan.rules().layers().orElseThrow(),
                    "`match` on folded cloth, where nobody sees the layer below",
                    "`layers: single`");
        } else {
            matched(match.first());
            matched(match.second());
        }
    }

    private void matched(Placed<PieceEdge> part) {
        Optional<Piece> piece = drawn(part);
        if (piece.isEmpty()) {
            return;
        }
        Set<String> parts = new TreeSet<>(piece.get().shape().edgeNames());
        piece.get().features().marks().forEach(mark -> parts.add(mark.what()));
        known(
                new Placed<>(part.value().edge(), part.place()),
                parts,
                "which is no edge and no mark of " + part.value().piece(),
                "an edge of it");
        if (isKept(part.value().piece())) {
            tell(
                    part,
                    "`" + part.value() + "` of a piece that is made of a feature, and lies with it",
                    "a piece that no feature of a cloth is kept for");
        }
        if (plan.grain(piece.get()) == Piece.Grain.BIAS) {
            tell(
                    part,
                    "`" + part.value() + "` of a piece on the bias, which runs across the checks",
                    "a piece that lies along or across");
        }
    }

    private boolean isKept(String piece) {
        return cloths.values().stream()
                .flatMap(cloth -> cloth.condition().flaws().stream())
                .flatMap(flaw -> flaw.keptFor().stream())
                .anyMatch(kept -> kept.value().piece().equals(piece));
    }

    /** The piece, if it is there and drawn; else that is told. */
    private Optional<Piece> drawn(Placed<PieceEdge> part) {
        if (!piece(new Placed<>(part.value().piece(), part.place()))) {
            return Optional.empty();
        }
        Piece piece = pieces.get(part.value().piece());
        if (piece.shape().asDrawn().isEmpty()) {
            tell(
                    part,
                    "`" + part.value() + "` of a piece that is known by tape only",
                    "an edge of a piece whose outline is told");
            return Optional.empty();
        }
        return Optional.of(piece);
    }

    private void kept(Cloth cloth) {
        cloth.condition().flaws().forEach(flaw -> flaw.keptFor().ifPresent(this::kept));
    }

    private void kept(Placed<PieceEdge> written) {
        PieceEdge edge = written.value();
        Optional<Piece> piece = drawn(written);
        if (piece.isEmpty()) {
            return;
        }
        PieceShape.Drawn shape = piece.get().shape().asDrawn().orElseThrow();
        boolean isThere =
                known(
                        new Placed<>(edge.edge(), written.place()),
                        new TreeSet<>(shape.edgeNames()),
                        "which is no edge of " + edge.piece(),
                        "an edge of it");
        if (isThere && !shape.find(edge.edge()).orElseThrow().isStraight()) {
            tell(written, "`" + written.value() + "`, which is curved", "a straight edge");
        } else if (isThere && plan.isFolded()) {
            tell(
                    written,
                    "`keep` on folded cloth, of which only one layer has the feature",
                    "`layers: single`");
        }
    }
}
