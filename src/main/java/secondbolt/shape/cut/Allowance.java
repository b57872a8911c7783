package secondbolt.shape.cut;

/**
 * What lies between the sewing line and the cutting line along one edge.
 *
 * @param widthMm how wide, zero or more; zero on a fold; the whole depth of a hem with its turnings
 * @param kind what becomes of it
 */
public record Allowance(double widthMm, Kind kind) {
    /** What becomes of an allowance. */
    public enum Kind {
        /** A seam allowance; its corners run out to a mitre. */
        PLAIN,
        /** No allowance: the cloth is folded there, and the fold runs straight on. */
        FOLD,
        /** Turned up along the edge, so its ends mirror the sides of the piece. */
        HEM
    }

    /**
     * Checks the width.
     *
     * @throws IllegalArgumentException if it is negative, or not zero on a fold
     */
    public Allowance {
        if (!(widthMm >= 0) || (kind == Kind.FOLD && widthMm > 0)) {
            throw new IllegalArgumentException("widthMm of " + kind + " was " + widthMm);
        }
    }

    /** A seam allowance. */
    public static Allowance plain(double widthMm) {
        return new Allowance(widthMm, Kind.PLAIN);
    }

    /** No allowance, on the fold of the cloth. */
    public static Allowance fold() {
        return new Allowance(0, Kind.FOLD);
    }

    /** A hem turned up along the edge. */
    public static Allowance hem(double depthMm) {
        return new Allowance(depthMm, Kind.HEM);
    }
}
