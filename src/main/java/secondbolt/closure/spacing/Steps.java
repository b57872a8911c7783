package secondbolt.closure.spacing;

/**
 * How many steps a search may still take. They are counted, not timed, so that a row that is found
 * is found everywhere. Some four hundred million are taken in a second.
 */
public final class Steps {
    private long left;

    /** So many. */
    public Steps(long most) {
        left = most;
    }

    /**
     * Takes some.
     *
     * @throws TooFree if no more are left
     */
    void take(long some) {
        left -= some;
        if (left < 0) {
            throw new TooFree();
        }
    }
}
