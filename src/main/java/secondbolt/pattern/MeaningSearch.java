package secondbolt.pattern;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.pattern.piece.Piece;

/**
 * Works out what edges and lines serve: first from what the maker says, with all that follows from
 * it along the joins; of the others from the trade's words in their names, with what follows from
 * those.
 */
final class MeaningSearch {
    /** What is sewn to one of these serves the same, if it is the only one sewn to it. */
    private static final Set<Serves> ALIKE =
            EnumSet.of(
                    Serves.SIDE,
                    Serves.SHOULDER,
                    Serves.WAIST,
                    Serves.UNDERARM,
                    Serves.INSEAM,
                    Serves.OUTSEAM,
                    Serves.CROTCH);

    private final List<Piece> pieces;
    private final List<Seam> seams;
    private final Map<PieceEdge, Meaning> edges = new LinkedHashMap<>();

    MeaningSearch(List<Piece> pieces, List<Seam> seams) {
        this.pieces = pieces;
        this.seams = seams;
    }

    Meanings meanings(Map<String, Serves> told) {
        for (PieceEdge edge : all()) {
            Optional.ofNullable(told.get(edge.edge()))
                    .filter(Serves::isOfAnEdge)
                    .ifPresent(says -> put(edge, says, Meaning.How.TOLD));
        }
        followJoins();
        for (PieceEdge edge : all()) {
            Serves.edgeNamed(edge.edge()).ifPresent(says -> put(edge, says, Meaning.How.NAMED));
        }
        followJoins();
        return new Meanings(told, Set.of(), edges, lines(told));
    }

    private List<PieceEdge> all() {
        return pieces.stream()
                .flatMap(p -> p.shape().edgeNames().stream().map(e -> new PieceEdge(p.name(), e)))
                .toList();
    }

    private void put(PieceEdge edge, Serves serves, Meaning.How how) {
        edges.putIfAbsent(edge, new Meaning(serves, how));
    }

    private void followJoins() {
        int before = -1;
        while (before != edges.size()) {
            before = edges.size();
            Map<PieceEdge, Set<Serves>> found = new LinkedHashMap<>();
            for (Seam seam : seams) {
                across(seam, seam.first().value(), seam.second().value(), found);
                across(seam, seam.second().value(), seam.first().value(), found);
            }
            found.forEach(
                    (edge, serves) -> {
                        // Two joins that say different things leave it unknown.
                        if (serves.size() == 1) {
                            put(edge, serves.iterator().next(), Meaning.How.DERIVED);
                        }
                    });
        }
    }

    private void across(Seam seam, EdgeSum from, EdgeSum to, Map<PieceEdge, Set<Serves>> found) {
        Optional<Serves> one = oneMeaning(from);
        if (one.isEmpty()) {
            return;
        }
        for (EdgeSum.Term term : to.terms()) {
            Optional<Piece> piece =
                    pieces.stream()
                            .filter(
                                    p ->
                                            p.name().equals(term.piece())
                                                    && p.hasEdge(term.edge().edge()))
                            .findFirst();
            if (piece.isPresent() && !edges.containsKey(term.edge())) {
                sewnTo(one.get(), seam, from, piece.get(), term.edge().edge())
                        .ifPresent(
                                serves ->
                                        found.computeIfAbsent(
                                                        term.edge(),
                                                        edge -> EnumSet.noneOf(Serves.class))
                                                .add(serves));
            }
        }
    }

    /** What all edges of a side of a join serve; nothing if they differ or one is unknown. */
    private Optional<Serves> oneMeaning(EdgeSum side) {
        Set<Optional<Serves>> meanings = new HashSet<>();
        side.terms().forEach(t -> meanings.add(known(t.edge())));
        return meanings.size() == 1 ? meanings.iterator().next() : Optional.empty();
    }

    private Optional<Serves> known(PieceEdge edge) {
        return Optional.ofNullable(edges.get(edge)).map(Meaning::serves);
    }

    /** What an edge serves that is sewn to others which all serve one thing, if it is certain. */
    private Optional<Serves> sewnTo(
            Serves serves, Seam seam, EdgeSum others, Piece piece, String edge) {
        if (serves == Serves.CAP) {
            boolean isCap = Bulge.of(piece, edge) == Bulge.OUTWARD;
            return Optional.of(isCap ? Serves.CAP : Serves.ARMHOLE);
        }
        if (serves == Serves.ARMHOLE) {
            return sewnToAnArmhole(seam, others, piece, edge);
        }
        boolean isBand = serves == Serves.WAIST && Bulge.isStraightAllRound(piece);
        return ALIKE.contains(serves) && !isBand && isFree(serves, seam, others)
                ? Optional.of(serves)
                : Optional.empty();
    }

    /**
     * A cap bulges out of its piece; a facing or lining is hollow like the armhole; a strip not.
     */
    private static Optional<Serves> sewnToAnArmhole(
            Seam seam, EdgeSum others, Piece piece, String edge) {
        return switch (Bulge.of(piece, edge)) {
            case OUTWARD -> Optional.of(Serves.CAP);
            case INWARD -> Optional.of(Serves.ARMHOLE);
            case STRAIGHT -> Optional.empty();
            case UNKNOWN -> {
                // Known by tape: one edge eased into several armholes is a cap.
                boolean isEased = seam.ease().isPositive() && seam.second().value().equals(others);
                yield isEased && others.terms().size() > 1
                        ? Optional.of(Serves.CAP)
                        : Optional.empty();
            }
        };
    }

    /**
     * Whether nothing else that serves the same is sewn to these: a pocket at a side is no side.
     */
    private boolean isFree(Serves serves, Seam seam, EdgeSum side) {
        Set<PieceEdge> here = Set.copyOf(side.terms().stream().map(EdgeSum.Term::edge).toList());
        return seams.stream()
                .filter(other -> !other.equals(seam))
                .flatMap(MeaningSearch::bothWays)
                .filter(way -> way.get(0).terms().stream().anyMatch(t -> here.contains(t.edge())))
                .noneMatch(way -> oneMeaning(way.get(1)).filter(s -> s == serves).isPresent());
    }

    private static Stream<List<EdgeSum>> bothWays(Seam seam) {
        return Stream.of(
                List.of(seam.first().value(), seam.second().value()),
                List.of(seam.second().value(), seam.first().value()));
    }

    private Map<String, Meaning> lines(Map<String, Serves> told) {
        Map<String, Meaning> lines = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            for (String line : piece.lines().keySet()) {
                line(line, told).ifPresent(meaning -> lines.put(line, meaning));
            }
        }
        return lines;
    }

    private Optional<Meaning> line(String name, Map<String, Serves> told) {
        return Optional.ofNullable(told.get(name))
                .filter(Serves::isOfALine)
                .map(serves -> new Meaning(serves, Meaning.How.TOLD))
                .or(() -> Serves.lineNamed(name).map(s -> new Meaning(s, Meaning.How.NAMED)))
                .or(() -> onSleevesAlone(name));
    }

    /** A line that only pieces with a cap carry lengthens the sleeve, wherever it lies on it. */
    private Optional<Meaning> onSleevesAlone(String line) {
        boolean isOnSleeves =
                pieces.stream()
                        .filter(piece -> piece.lines().containsKey(line))
                        .allMatch(this::hasCap);
        return isOnSleeves
                ? Optional.of(new Meaning(Serves.SLEEVE, Meaning.How.DERIVED))
                : Optional.empty();
    }

    private boolean hasCap(Piece piece) {
        return piece.shape().edgeNames().stream()
                .map(edge -> known(new PieceEdge(piece.name(), edge)))
                .anyMatch(serves -> serves.equals(Optional.of(Serves.CAP)));
    }
}
