package secondbolt.lay.search;

/** When a search ends. */
@FunctionalInterface
interface Stop {
    /** Whether to end after so many steps. */
    boolean now(long steps);

    /** How much of the time given has passed. */
    @FunctionalInterface
    interface Progress {
        /** From 0 to 1, after so many steps. */
        double share(long steps);
    }
}
