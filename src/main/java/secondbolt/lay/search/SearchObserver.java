package secondbolt.lay.search;

/** Is told how far a search is, and may end it. */
@FunctionalInterface
public interface SearchObserver {
    /** Lets every search run to its end. */
    SearchObserver NONE = (share, bestMm) -> true;

    /**
     * Told now and then, and at the end.
     *
     * @param share of the effort that is spent, from 0 to 1; 1 at the end only
     * @param bestMm how much of the last container's length the best lay takes; 0 while there is
     *     none
     * @return whether to go on
     */
    boolean goOn(double share, double bestMm);
}
