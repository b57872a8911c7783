package secondbolt.lay.search;

/**
 * Random numbers that are the same on every machine.
 *
 * <p>Source: SplitMix64, G. Steele, D. Lea, C. Flood, Fast splittable pseudorandom number
 * generators, OOPSLA 2014 (constants from memory).
 */
final class SeededRandom {
    private long state;

    SeededRandom(long seed) {
        state = seed;
    }

    private long next() {
        state += 0x9E3779B97F4A7C15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** A number from 0 to below 1. */
    double share() {
        return (next() >>> 11) * 0x1.0p-53;
    }

    /** A whole number from 0 to below a bound. */
    int below(int bound) {
        return (int) (share() * bound);
    }
}
