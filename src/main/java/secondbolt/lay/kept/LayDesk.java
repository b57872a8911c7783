package secondbolt.lay.kept;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import secondbolt.lay.search.SearchObserver;

/**
 * What lays are worked out with; no lay depends on it.
 *
 * @param store keeps finished lays
 * @param cores how many threads may work, one or more
 * @param observer is told how far a search is, and may end it
 */
public record LayDesk(LayStore store, int cores, SearchObserver observer) {
    /** A desk without a folder: lays are kept as long as it is. */
    public static LayDesk inMemory() {
        return new LayDesk(new Memory(new ConcurrentHashMap<>()), 2, SearchObserver.NONE);
    }

    /** Keeps lays in memory. */
    private record Memory(Map<String, String> kept) implements LayStore {
        @Override
        public Optional<String> find(String key) {
            return Optional.ofNullable(kept.get(key));
        }

        @Override
        public void keep(String key, String value) {
            kept.put(key, value);
        }
    }
}
