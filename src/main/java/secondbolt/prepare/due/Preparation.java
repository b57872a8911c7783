package secondbolt.prepare.due;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.textile.state.CameWith;

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
    public static Preparation of(List<ClothResult> cloths, Set<String> cut) {
        return new Preparation(
                cloths.stream().map(c -> PreparedCloth.of(c, cut.contains(c.name()))).toList());
    }

    /** Those that are like that, in the maker's order. */
    public List<PreparedCloth> those(Predicate<PreparedCloth> like) {
        return cloths.stream().filter(like).toList();
    }

    /** Whether one is like that. */
    public boolean hasAny(Predicate<PreparedCloth> like) {
        return cloths.stream().anyMatch(like);
    }

    /** The names of those that are like that, as one lists them. */
    public String names(Predicate<PreparedCloth> like) {
        return those(like).stream().map(PreparedCloth::name).collect(Collectors.joining(", "));
    }

    /** What is due, each with the cloths it is due for, in order; a press always is. */
    public List<String> due() {
        List<String> due = new ArrayList<>();
        add(due, "freeze ", c -> c.has(CameWith.MOTHS));
        add(due, "dry and brush ", c -> c.has(CameWith.MILDEW));
        add(due, "air ", c -> c.has(CameWith.CAMPHOR));
        add(due, "unpick ", c -> c.has(CameWith.OLD_SEAMS));
        add(due, "weigh ", c -> c.isWetDue() && c.isWeighingDue());
        add(due, "wash ", PreparedCloth::isWashDue);
        add(due, "wash once more ", PreparedCloth::isWashDueAgain);
        return due;
    }

    private void add(List<String> due, String what, Predicate<PreparedCloth> like) {
        if (hasAny(like)) {
            due.add(what + names(like));
        }
    }
}
