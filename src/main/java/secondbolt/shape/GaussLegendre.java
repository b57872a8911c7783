package secondbolt.shape;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals by Gauss-Legendre with eight points, halving the span until both halves agree with the
 * whole.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, formula 25.4.30 and
 * table 25.4, n = 8 (from memory).
 */
final class GaussLegendre {
    private static final double[] PLACES = {
        0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
    };

    private static final double[] WEIGHTS = {
        0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
    };

    /** A cusp is halved no more often than this. */
    private static final int DEEPEST = 24;

    private GaussLegendre() {}

    static double integral(DoubleUnaryOperator f, double from, double to, double tolerance) {
        return halved(f, from, to, once(f, from, to), tolerance, 0);
    }

    private static double halved(
            DoubleUnaryOperator f,
            double from,
            double to,
            double whole,
            double tolerance,
            int depth) {
        double middle = (from + to) / 2;
        double first = once(f, from, middle);
        double second = once(f, middle, to);
        if (Math.abs(first + second - whole) <= tolerance || depth == DEEPEST) {
            return first + second;
        }
        return halved(f, from, middle, first, tolerance / 2, depth + 1)
                + halved(f, middle, to, second, tolerance / 2, depth + 1);
    }

    private static double once(DoubleUnaryOperator f, double from, double to) {
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        double sum = 0;
        for (int i = 0; i < PLACES.length; i++) {
            double aside = half * PLACES[i];
            sum += WEIGHTS[i] * (f.applyAsDouble(middle - aside) + f.applyAsDouble(middle + aside));
        }
        return sum * half;
    }
}
