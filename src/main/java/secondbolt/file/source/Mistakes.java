package secondbolt.file.source;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Gathers mistakes, so that all are told together in the order of the file. */
public final class Mistakes {
    private final SortedSet<Mistake> told = new TreeSet<>();

    /** Tells one more; the same mistake at the same place counts once. */
    public void add(Mistake mistake) {
        told.add(mistake);
    }

    /** Tells more. */
    public void addAll(Collection<Mistake> mistakes) {
        told.addAll(mistakes);
    }

    /** How many there are. */
    public int count() {
        return told.size();
    }

    /** Whether there are none. */
    public boolean isEmpty() {
        return told.isEmpty();
    }

    /** All of them, in the order of the file. */
    public List<Mistake> inOrder() {
        return List.copyOf(Collections.unmodifiableSortedSet(told));
    }
}
