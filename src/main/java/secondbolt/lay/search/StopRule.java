package secondbolt.lay.search;

/** When a search ends. */
@FunctionalInterface
interface StopRule {
    /** Whether to end after so many steps. */
    boolean endsAfter(long steps);
}
