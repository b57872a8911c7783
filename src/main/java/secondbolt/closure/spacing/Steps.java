package secondbolt.closure.spacing;

import java.util.concurrent.atomic.AtomicLong;

/**
 * How many steps a search may still take. They are counted, not timed, so that a row that is found
 * is found everywhere. Some four hundred million are taken in a second.
 */
public final class Steps {
    private final AtomicLong left;

    /** So many. */
    public Steps(long most) {
        left = new AtomicLong(most);
    }

    /**
     * Takes some.
     *
     * @throws TooFree if no more are left
     */
    void take(long some) {
        if (left.addAndGet(-some) < 0) {
            throw new TooFree();
        }
    }
}
