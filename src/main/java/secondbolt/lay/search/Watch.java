package secondbolt.lay.search;

/** Looks on while a lay is searched. */
public interface Watch {
    /** Nobody looks on. */
    Watch NONE = (share, bestMm) -> true;

    /**
     * Told now and then, and at the end.
     *
     * @param share of the effort that is spent, 0 to 1; 1 at the end only
     * @param bestMm how much of the last bed's length the best lay takes; 0 while there is none
     * @return whether to go on
     */
    boolean goOn(double share, double bestMm);
}
