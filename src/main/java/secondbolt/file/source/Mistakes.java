package secondbolt.file.source;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Gathers mistakes, so that all are told together in the order of the file. Of very many only the
 * first are kept, and the others counted.
 */
public final class Mistakes {
    /** More than these nobody reads before she mends the first. */
    public static final int MOST_TOLD = 50;

    private final SortedSet<Mistake> told = new TreeSet<>();
    private final Set<Counted> more = new HashSet<>();

    /** A mistake behind the first ones, held only so that it counts once. */
    private record Counted(Place place, int found) {
        static Counted of(Mistake mistake) {
            return new Counted(mistake.place(), mistake.found().hashCode());
        }
    }

    /** Tells one more; the same mistake at the same place counts once. */
    public void add(Mistake mistake) {
        if (more.contains(Counted.of(mistake)) || !told.add(mistake)) {
            return;
        }
        if (told.size() > MOST_TOLD) {
            Mistake last = told.last();
            told.remove(last);
            more.add(Counted.of(last));
        }
    }

    /** Tells more. */
    public void addAll(Iterable<Mistake> mistakes) {
        mistakes.forEach(this::add);
    }

    /** Tells all that others were told. */
    public void addAll(Mistakes others) {
        addAll(others.told);
        more.addAll(others.more);
        more.removeIf(counted -> told.stream().anyMatch(one -> Counted.of(one).equals(counted)));
    }

    /** How many there are. */
    public int count() {
        return told.size() + more.size();
    }

    /** Whether there are none. */
    public boolean isEmpty() {
        return told.isEmpty();
    }

    /** The first of them, {@link #MOST_TOLD} at most, in the order of the file. */
    public List<Mistake> inOrder() {
        return List.copyOf(Collections.unmodifiableSortedSet(told));
    }
}
