package secondbolt.closure.spacing;

/** A search that was given up: there are more rows than can be looked through. */
public final class TooFree extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooFree() {
        super("more rows than can be looked through", null, false, false);
    }
}
