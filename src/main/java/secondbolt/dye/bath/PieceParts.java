package secondbolt.dye.bath;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.garment.Role;
import secondbolt.measure.Area;
import secondbolt.pattern.JoinedPieces;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Box;

/**
 * The pieces of a pattern in groups that meet in seams that are seen.
 *
 * @param joined which pieces are sewn to which
 * @param areas what each piece covers as it is cut, once, with whether it is hidden in wear
 * @param cuts how many of each are cut of which cloth
 */
public record PieceParts(
        JoinedPieces joined, Map<String, Covered> areas, Map<String, Map<Role, Piece.Cut>> cuts) {
    /**
     * What one copy covers.
     *
     * @param areaMm2 in square millimetres
     * @param isHidden whether it is hidden in wear
     */
    public record Covered(double areaMm2, boolean isHidden) {}

    /**
     * A group of pieces.
     *
     * @param pieces their names
     * @param area what all copies of them cover
     */
    public record Group(List<String> pieces, Area area) {
        /** Copies the names. */
        public Group {
            pieces = List.copyOf(pieces);
        }
    }

    /** Copies the maps in order. */
    public PieceParts {
        areas = Collections.unmodifiableMap(new LinkedHashMap<>(areas));
        cuts = Collections.unmodifiableMap(new LinkedHashMap<>(cuts));
    }

    /**
     * The pieces of a pattern.
     *
     * @param isMade which of them are made
     */
    public static PieceParts of(Pattern pattern, CuttingResult cutting, Predicate<String> isMade) {
        Map<String, Covered> areas = new LinkedHashMap<>();
        Map<String, Map<Role, Piece.Cut>> cuts = new LinkedHashMap<>();
        cutting.pieces().stream()
                .filter(cut -> isMade.test(cut.name()))
                .forEach(
                        cut -> {
                            int halves = cut.piece().fold().isPresent() ? 2 : 1;
                            add(areas, cuts, cut.piece(), cut.cut().areaMm2() * halves);
                        });
        cutting.taped().stream()
                .filter(cut -> isMade.test(cut.piece().name()))
                .forEach(cut -> add(areas, cuts, cut.piece(), area(cut.whole())));
        return new PieceParts(JoinedPieces.of(pattern), areas, cuts);
    }

    private static void add(
            Map<String, Covered> areas,
            Map<String, Map<Role, Piece.Cut>> cuts,
            Piece piece,
            double areaMm2) {
        areas.put(piece.name(), new Covered(areaMm2, piece.seen() == Piece.Seen.HIDDEN));
        cuts.put(piece.name(), piece.cuts());
    }

    private static double area(Box box) {
        return box.widthMm() * box.heightMm();
    }

    /** No pieces. */
    public static final PieceParts NONE =
            new PieceParts(new JoinedPieces(Map.of()), Map.of(), Map.of());

    /** Whether there are none. */
    public boolean isNone() {
        return areas.isEmpty();
    }

    /** Whether a piece is cut of a cloth of this role. */
    public boolean hasAnyOf(Role role) {
        return cuts.values().stream().anyMatch(byRole -> byRole.containsKey(role));
    }

    /** Those cut of some roles, in groups that meet in seams that are seen. */
    public List<Group> groups(Set<Role> roles) {
        List<Group> groups = new ArrayList<>();
        Set<String> left = new LinkedHashSet<>();
        areas.keySet().stream()
                .filter(name -> cuts.get(name).keySet().stream().anyMatch(roles::contains))
                .forEach(left::add);
        while (!left.isEmpty()) {
            List<String> group = new ArrayList<>(List.of(left.iterator().next()));
            left.remove(group.get(0));
            for (int i = 0; i < group.size(); i++) {
                String from = group.get(i);
                List<String> met = left.stream().filter(to -> isSeen(from, to)).toList();
                group.addAll(met);
                met.forEach(left::remove);
            }
            groups.add(new Group(group, area(group, roles)));
        }
        return groups;
    }

    private boolean isSeen(String from, String to) {
        return !areas.get(from).isHidden()
                && !areas.get(to).isHidden()
                && joined.partners(from).contains(to);
    }

    private Area area(List<String> group, Set<Role> roles) {
        double mm2 = 0;
        for (String name : group) {
            int copies =
                    cuts.get(name).entrySet().stream()
                            .filter(entry -> roles.contains(entry.getKey()))
                            .mapToInt(entry -> entry.getValue().count())
                            .sum();
            mm2 += copies * areas.get(name).areaMm2();
        }
        return Area.ofComputedSquareMillimetres(mm2);
    }

    /** Each two pieces that meet in a seam that is seen, once. */
    public List<Pair> seen() {
        List<String> names = List.copyOf(areas.keySet());
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (String to : names.subList(i, names.size())) {
                if (isSeen(names.get(i), to)) {
                    pairs.add(new Pair(names.get(i), to));
                }
            }
        }
        return pairs;
    }

    /**
     * Two pieces that are sewn together.
     *
     * @param first its name
     * @param second its name; the same where copies of one piece are
     */
    public record Pair(String first, String second) {
        /** As a page names them. */
        public String words() {
            return first.equals(second) ? first + " to itself" : first + " to " + second;
        }
    }
}
