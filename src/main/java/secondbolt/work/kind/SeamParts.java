package secondbolt.work.kind;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.garment.Serves;
import secondbolt.pattern.Meaning;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * Says which part of the work sews a seam, by what its edges serve and what its pieces are.
 *
 * @param pattern with all its seams
 */
record SeamParts(Pattern pattern) {
    /** What tells it, the surest first: a cap makes it a sleeve's whatever else meets there. */
    private static final Map<Serves, Part> BY_EDGE = byEdge();

    /** Where a piece is sewn on that finishes an edge. */
    private static final Set<Part> BANDS =
            EnumSet.of(Part.NECKLINE, Part.WRISTS, Part.BAND, Part.OPENING_EDGES);

    private static Map<Serves, Part> byEdge() {
        Map<Serves, Part> parts = new LinkedHashMap<>();
        parts.put(Serves.CAP, Part.SLEEVES);
        parts.put(Serves.UNDERARM, Part.SLEEVE_SEAMS);
        parts.put(Serves.WRIST, Part.WRISTS);
        parts.put(Serves.NECKLINE, Part.NECKLINE);
        parts.put(Serves.SHOULDER, Part.SHOULDERS);
        parts.put(Serves.CROTCH, Part.SEAT);
        parts.put(Serves.INSEAM, Part.INSIDE_LEGS);
        parts.put(Serves.OUTSEAM, Part.OUTSIDE_LEGS);
        parts.put(Serves.WAIST, Part.BAND);
        parts.put(Serves.CENTRE_FRONT, Part.OPENING_EDGES);
        parts.put(Serves.CENTRE_BACK, Part.CENTRE_BACK);
        parts.put(Serves.SIDE, Part.SIDE_SEAMS);
        return parts;
    }

    /** The part of each seam, if any is known. */
    Optional<Part> of(Seam seam) {
        Set<String> names = new LinkedHashSet<>();
        seam.edges().forEach(edge -> names.add(edge.piece()));
        return unit(names)
                .or(() -> lining(names))
                .or(() -> faced(seam, names))
                .or(() -> byEdge(seam))
                .or(() -> banded(names))
                .or(() -> aroundOneSleeve(names))
                .or(() -> toItself(seam, names))
                .or(() -> downTheSkirt(names));
    }

    /** Small pieces among themselves. */
    private static Optional<Part> unit(Set<String> names) {
        List<Optional<Part>> parts = names.stream().map(PieceWords::of).toList();
        return parts.stream().allMatch(Optional::isPresent) ? parts.get(0) : Optional.empty();
    }

    private Optional<Part> lining(Set<String> names) {
        long linings =
                names.stream()
                        .flatMap(name -> pattern.find(name).stream())
                        .filter(SeamParts::isLining)
                        .count();
        if (linings == 0) {
            return Optional.empty();
        }
        return Optional.of(linings == names.size() ? Part.LINING : Part.LINING_IN);
    }

    /** Whether a piece is cut of lining alone. */
    static boolean isLining(Piece piece) {
        return piece.cuts().containsKey(Role.LINING) && !piece.cuts().containsKey(Role.MAIN);
    }

    /**
     * Whether a piece is cut of the outside and once more of lining, as large pieces are that are
     * lined; the lining of a pocket or a collar is sewn with it.
     */
    static boolean isLined(Piece piece) {
        return piece.cuts().containsKey(Role.LINING)
                && piece.cuts().containsKey(Role.MAIN)
                && PieceWords.of(piece.name()).isEmpty()
                && !PieceWords.isFacing(piece.name());
    }

    /** A band is known by its name where the edge it is sewn to is not. */
    private static Optional<Part> banded(Set<String> names) {
        return names.stream()
                .flatMap(name -> PieceWords.of(name).stream())
                .filter(part -> part == Part.BAND)
                .findFirst();
    }

    /** A facing sewn to a front, a back or an edge of which nothing is known. */
    private Optional<Part> faced(Seam seam, Set<String> names) {
        long facings = names.stream().filter(PieceWords::isFacing).count();
        Optional<Part> edge = byEdge(seam);
        boolean isOpening =
                edge.isEmpty()
                        || edge.get() == Part.CENTRE_BACK
                        || edge.get() == Part.OPENING_EDGES;
        return facings > 0 && facings < names.size() && isOpening
                ? Optional.of(Part.OPENING_EDGES)
                : Optional.empty();
    }

    private Optional<Part> byEdge(Seam seam) {
        Map<Part, Boolean> told = new EnumMap<>(Part.class);
        seam.edges().stream()
                .flatMap(edge -> serves(edge).stream())
                .flatMap(serves -> Stream.ofNullable(BY_EDGE.get(serves)))
                .forEach(part -> told.put(part, true));
        return BY_EDGE.values().stream().filter(told::containsKey).findFirst();
    }

    private Optional<Serves> serves(PieceEdge edge) {
        return pattern.meanings().edge(edge.piece(), edge.edge()).map(Meaning::serves);
    }

    private Optional<Part> aroundOneSleeve(Set<String> names) {
        return names.size() == 1 && names.stream().allMatch(name -> has(name, Serves.CAP))
                ? Optional.of(Part.SLEEVE_SEAMS)
                : Optional.empty();
    }

    /**
     * A band folded onto itself or its like belongs where it is sewn on. A leg or a back has other
     * seams than that: which of its own edges meet, only their names can tell.
     */
    private Optional<Part> toItself(Seam seam, Set<String> names) {
        if (!seam.first().value().equals(seam.second().value())) {
            return Optional.empty();
        }
        List<Optional<Part>> others =
                pattern.seams().stream()
                        .filter(other -> !other.equals(seam))
                        .filter(o -> o.edges().stream().anyMatch(e -> names.contains(e.piece())))
                        .map(this::byEdge)
                        .toList();
        boolean isBand = others.stream().allMatch(part -> part.filter(BANDS::contains).isPresent());
        return isBand && !others.isEmpty() ? others.get(0) : Optional.empty();
    }

    /** Between pieces that reach to the lower edge, or from the waist down. */
    private Optional<Part> downTheSkirt(Set<String> names) {
        boolean isLong =
                names.stream().allMatch(name -> has(name, Serves.HEM) || has(name, Serves.WAIST));
        return isLong ? Optional.of(Part.GORES) : Optional.empty();
    }

    private boolean has(String name, Serves what) {
        return pattern.find(name)
                .filter(
                        piece ->
                                pattern.meanings().has(piece, what)
                                        || (what == Serves.HEM && isTurned(piece)))
                .isPresent();
    }

    private boolean isTurned(Piece piece) {
        return piece.shape().edgeNames().stream()
                .anyMatch(edge -> pattern.meanings().isHem(piece.name(), edge));
    }
}
