package secondbolt.lay.stock;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import secondbolt.lay.search.Watch;

/**
 * What lays are worked out with; no lay depends on it.
 *
 * @param keeper keeps finished lays
 * @param cores how many threads may work
 * @param watch looks on
 */
public record LayDesk(LayKeeper keeper, int cores, Watch watch) {
    /** A desk without a folder: lays are kept as long as it is. */
    public static LayDesk inMemory() {
        return new LayDesk(new Memory(new ConcurrentHashMap<>()), 2, Watch.NONE);
    }

    /** Keeps lays in memory. */
    private record Memory(Map<String, String> kept) implements LayKeeper {
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
