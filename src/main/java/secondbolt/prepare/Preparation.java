package secondbolt.prepare;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import secondbolt.cloth.yields.ClothResult;

/**
 * All cloths, and what is still to be done to them before they are cut.
 *
 * @param cloths in the maker's order
 */
public record Preparation(List<PreparedCloth> cloths) {
    /** Copies the cloths. */
    public Preparation {
        cloths = List.copyOf(cloths);
    }

    /**
     * Works it out.
     *
     * @param cut the names of the cloths of which a piece is cut already
     */
    static Preparation of(List<ClothResult> cloths, Set<String> cut) {
        return new Preparation(
                cloths.stream().map(c -> PreparedCloth.of(c, cut.contains(c.name()))).toList());
    }

    /** Those that are like that, in the maker's order. */
    List<PreparedCloth> those(Predicate<PreparedCloth> like) {
        return cloths.stream().filter(like).toList();
    }

    /** Whether one is like that. */
    boolean hasAny(Predicate<PreparedCloth> like) {
        return cloths.stream().anyMatch(like);
    }

    /** The names of those that are like that, as one lists them. */
    String names(Predicate<PreparedCloth> like) {
        return those(like).stream().map(PreparedCloth::name).collect(Collectors.joining(", "));
    }
}
