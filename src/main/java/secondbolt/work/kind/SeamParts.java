package secondbolt.work.kind;

import java.util.EnumMap;
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
        parts.put(Serves.CENTRE_FRONT, Part.FRONT_EDGES);
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
                .or(() -> byEdge(seam))
                .or(() -> aroundOneSleeve(names))
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
