package secondbolt.lay.kept;

import java.util.Optional;

/**
 * Stores finished lays and their remnants from run to run, so that a change of something else costs
 * nothing. It gives back only what was kept in it: what somebody else put there may be cuttable and
 * yet longer than it need be, and nobody would see.
 */
public interface LayStore {
    /** What was kept under a key; nothing if nothing was, or it cannot be read. */
    Optional<String> find(String key);

    /** Keeps a value under a key. */
    void keep(String key, String value);
}
