package secondbolt.fit.size;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.SizeChart;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Convention;

/**
 * The sizes a wearer's measurements point to.
 *
 * @param nearest the size nearest to each measurement that chart and wearer share; of two as near
 *     the larger
 * @param upper the size to start from for what hangs from the shoulders
 * @param lower the size to start from for what hangs from the waist
 * @param start the one of both that what the pieces make needs, as far as they tell
 */
public record SizeChoice(
        Map<BodyMeasure, String> nearest,
        Optional<Start> upper,
        Optional<Start> lower,
        Optional<Start> start) {
    /**
     * From this difference on the upper body goes by the high bust.
     *
     * <p>Source: Principles of Pattern Alteration, extension publication: if the full bust is 2 in
     * or more larger than the high bust, take the smaller size, that fits the upper chest, and
     * enlarge the bust. On both tapes the metric value decides: no sixteenth of an inch lies
     * between the two.
     */
    static final Convention FULL_BUST =
            new Convention(
                    Length.ofInches(2, 1),
                    Length.ofMillimetres(50),
                    "Principles of Pattern Alteration, extension publication");

    /** Copies the sizes in their order. */
    public SizeChoice {
        nearest = Collections.unmodifiableMap(new LinkedHashMap<>(nearest));
    }

    /** How a body's measurement lies to the size it starts from. */
    public enum Lies {
        /** It is that size, or passes it by less than is worth an alteration. */
        AT_THE_SIZE,
        /** It lies between the next smaller size and that size. */
        BELOW_THE_SIZE,
        /** It is smaller than the smallest size. */
        BELOW_ALL,
        /** It is larger than the largest size. */
        ABOVE_ALL
    }

    /**
     * A size to start from.
     *
     * @param size its label
     * @param by the measurement of the body that decides
     * @param row the row of the chart it is held against
     * @param body the body's measurement
     * @param charted the size's
     * @param lies how the one lies to the other
     */
    public record Start(
            String size, BodyMeasure by, BodyMeasure row, Length body, Length charted, Lies lies) {}

    /**
     * Chooses by the trade's rule: bodices and dresses by the bust, or by the high bust if it is
     * much smaller; skirts and trousers by the hip, whatever else the chart has a row for; between
     * two sizes the next larger.
     *
     * <p>Source: The New Dressmaker, 1921, and Robson, Use and Alterations of Commercial Patterns,
     * bulletin 78, State College of Washington, 1922; for the high bust see {@link #FULL_BUST}. By
     * chest, by the waist where a skirt's or trousers' hip is not told, and, for children's charts
     * without girths, by height: from memory.
     *
     * @param chart the pattern's
     * @param wearer whose measurements count
     * @param made what the pieces make; where they do not tell, a chart with a bust or chest is of
     *     what hangs from the shoulders
     * @param least a body that passes a size by less than this still is that size
     */
    public static SizeChoice of(SizeChart chart, Wearer wearer, SizeInput.Made made, Length least) {
        Map<BodyMeasure, String> nearest = new LinkedHashMap<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            wearer.measure(measure)
                    .flatMap(body -> chart.nearest(measure, body))
                    .ifPresent(size -> nearest.put(measure, size));
        }
        Rule rule = new Rule(chart, wearer, least);
        return new SizeChoice(nearest, rule.upper(), rule.lower(), rule.start(made));
    }

    /** Whether the bust is so much larger than the high bust that the latter decides. */
    static boolean goesByHighBust(Wearer wearer) {
        return bustOverHighBust(wearer)
                .filter(d -> !d.isShorterThan(FULL_BUST.metric()))
                .isPresent();
    }

    /** By how much the bust is larger than the high bust, if both are known. */
    static Optional<Length> bustOverHighBust(Wearer wearer) {
        return wearer.measure(BodyMeasure.BUST)
                .flatMap(b -> wearer.measure(BodyMeasure.HIGH_BUST).map(b::minus));
    }

    private record Rule(SizeChart chart, Wearer wearer, Length least) {
        Optional<Start> upper() {
            Optional<Start> byBust =
                    goesByHighBust(wearer)
                            ? by(
                                    BodyMeasure.HIGH_BUST,
                                    chart.has(BodyMeasure.HIGH_BUST)
                                            ? BodyMeasure.HIGH_BUST
                                            : BodyMeasure.BUST)
                            : by(BodyMeasure.BUST, BodyMeasure.BUST);
            return byBust.or(() -> by(BodyMeasure.CHEST, BodyMeasure.CHEST));
        }

        Optional<Start> lower() {
            return by(BodyMeasure.HIP, BodyMeasure.HIP);
        }

        Optional<Start> start(SizeInput.Made made) {
            return switch (made) {
                case LEGS, SKIRT -> fromTheWaist();
                case FROM_THE_SHOULDERS, UNKNOWN ->
                        chart.has(BodyMeasure.BUST) || chart.has(BodyMeasure.CHEST)
                                ? upper()
                                : byTheChartAlone();
            };
        }

        /** A bust decides nothing of what hangs from the waist. */
        private Optional<Start> fromTheWaist() {
            return lower().or(() -> by(BodyMeasure.WAIST, BodyMeasure.WAIST))
                    .or(() -> by(BodyMeasure.HEIGHT, BodyMeasure.HEIGHT));
        }

        private Optional<Start> byTheChartAlone() {
            return chart.has(BodyMeasure.HIP)
                    ? lower()
                    : by(BodyMeasure.HEIGHT, BodyMeasure.HEIGHT);
        }

        private Optional<Start> by(BodyMeasure measure, BodyMeasure row) {
            Optional<Length> body = wearer.measure(measure);
            return chart.has(row) ? body.map(b -> start(measure, row, b)) : Optional.empty();
        }

        private Start start(BodyMeasure measure, BodyMeasure row, Length body) {
            List<Length> values = chart.rows().get(row);
            int index = 0;
            while (index < values.size() - 1 && passes(body, values.get(index))) {
                index++;
            }
            Length charted = values.get(index);
            return new Start(
                    chart.sizes().get(index),
                    measure,
                    row,
                    body,
                    charted,
                    lies(body, charted, index));
        }

        private boolean passes(Length body, Length charted) {
            return !body.minus(charted).isShorterThan(least);
        }

        private Lies lies(Length body, Length charted, int index) {
            if (passes(body, charted)) {
                return Lies.ABOVE_ALL;
            }
            if (charted.minus(body).isShorterThan(least)) {
                return Lies.AT_THE_SIZE;
            }
            return index == 0 ? Lies.BELOW_ALL : Lies.BELOW_THE_SIZE;
        }
    }
}
