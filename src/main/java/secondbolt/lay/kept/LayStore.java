package secondbolt.lay.kept;

import java.util.Optional;

/**
 * Stores finished lays and their remnants from run to run, so that a change of something else costs
 * nothing.
 */
public interface LayStore {
    /** What was kept under a key; nothing if nothing was, or it cannot be read. */
    Optional<String> find(String key);

    /** Keeps a value under a key. */
    void keep(String key, String value);
}
