package secondbolt.notebook.site;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a part of the site was made from, and what it came to: while both are as they were, it need
 * not be made again.
 *
 * @param from the hashes of all it was made from, by their names
 * @param files the marks of the files made, by their paths in the site
 * @param told what was told of it
 */
public record Seal(Map<String, String> from, SortedMap<String, String> files, List<String> told) {
    /** Copies all three. */
    public Seal {
        from = Collections.unmodifiableMap(new TreeMap<>(from));
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
        told = List.copyOf(told);
    }
}
