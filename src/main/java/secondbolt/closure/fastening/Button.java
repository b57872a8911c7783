package secondbolt.closure.fastening;

import java.util.Optional;
import secondbolt.measure.Length;

/**
 * A button, as measured.
 *
 * @param shape flat, domed or ball
 * @param across its diameter, if told
 * @param thick its thickness or height, if told
 * @param girth half-way round is what a hole must let through: the tape once round the widest part
 * @param attached through its face or by a shank
 */
public record Button(
        Shape shape,
        Optional<Length> across,
        Optional<Length> thick,
        Optional<Length> girth,
        Attached attached) {
    /** How a button is attached. */
    public enum Attached {
        /** Sewn on through holes in its face. */
        SEWN_THROUGH("sewn through"),
        /** By a shank of its own. */
        SHANK("shank");

        private final String word;

        Attached(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** The shapes whose girth differs. */
    public enum Shape {
        /** A disc, with holes or a low shank. */
        FLAT("flat"),
        /** Flat below and round above. */
        DOMED("domed"),
        /** Round all over. */
        BALL("ball");

        private final String word;

        Shape(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /**
     * How long a slit the button needs to pass: half its girth.
     *
     * <p>For a flat disc that is diameter plus thickness. Source: Buttons and Buttonholes,
     * Extension Bulletin 576, August 1965. For the others half of the tape wrapped round the widest
     * part. Source: Machine Buttonholes Made Easy, Guide C-231, New Mexico State University.
     * Derived: a ball of diameter d has the girth πd; a dome of diameter d and height h has the
     * girth d plus the arc over it, d(1 + π/2) if it is half a ball.
     *
     * @return the length without any ease for thick cloth
     */
    public Length hole() {
        return girth.orElseGet(this::girthOfShape).dividedBy(2);
    }

    private Length girthOfShape() {
        double d = across.map(Length::millimetres).orElseThrow();
        return switch (shape) {
            case FLAT -> across.orElseThrow().plus(thick.orElseThrow()).times(2);
            case DOMED ->
                    Length.ofComputedMillimetres(
                            d + arcMm(d, thick.map(Length::millimetres).orElse(d / 2)));
            case BALL -> Length.ofComputedMillimetres(Math.PI * d);
        };
    }

    /** The arc of a circle over a chord, of the given height. */
    private static double arcMm(double chordMm, double heightMm) {
        double radiusMm = (chordMm * chordMm / 4 + heightMm * heightMm) / (2 * heightMm);
        return radiusMm * 4 * StrictMath.atan2(heightMm, chordMm / 2);
    }

    /** Whether its height was not told and half a ball is taken. */
    public boolean isTakenAsHalfABall() {
        return shape == Shape.DOMED && thick.isEmpty() && girth.isEmpty();
    }
}
