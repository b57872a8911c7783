package secondbolt.wearer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Length;

/**
 * The body measurements a pattern is made for, size by size.
 *
 * @param sizes their labels, from the smallest
 * @param rows for each measurement its value in each size, never decreasing
 */
public record SizeChart(List<String> sizes, Map<BodyMeasure, List<Length>> rows) {
    /**
     * Copies and checks the rows.
     *
     * @throws IllegalArgumentException if there is no size, one twice, or a row of another count
     */
    public SizeChart {
        sizes = List.copyOf(sizes);
        if (sizes.isEmpty() || sizes.stream().distinct().count() != sizes.size()) {
            throw new IllegalArgumentException("sizes must be there and differ, were " + sizes);
        }
        Map<BodyMeasure, List<Length>> copy = new LinkedHashMap<>();
        for (Map.Entry<BodyMeasure, List<Length>> row : rows.entrySet()) {
            if (row.getValue().size() != sizes.size()) {
                throw new IllegalArgumentException(
                        row.getKey() + " must have " + sizes.size() + " values");
            }
            copy.put(row.getKey(), List.copyOf(row.getValue()));
        }
        rows = Collections.unmodifiableMap(copy);
    }

    /** Whether it has a row for a measurement. */
    public boolean has(BodyMeasure measure) {
        return rows.containsKey(measure);
    }

    /** What a measurement is in a size, if both are in the chart. */
    public Optional<Length> at(BodyMeasure measure, String size) {
        int index = sizes.indexOf(size);
        return index < 0
                ? Optional.empty()
                : Optional.ofNullable(rows.get(measure)).map(row -> row.get(index));
    }

    /** The size nearest to a body's measurement, the larger of two as near; if there is a row. */
    public Optional<String> nearest(BodyMeasure measure, Length body) {
        return Optional.ofNullable(rows.get(measure)).map(row -> sizes.get(nearest(row, body)));
    }

    private static int nearest(List<Length> row, Length body) {
        int best = 0;
        for (int i = 1; i < row.size(); i++) {
            if (!off(row, i, body).isLongerThan(off(row, best, body))) {
                best = i;
            }
        }
        return best;
    }

    private static Length off(List<Length> row, int index, Length body) {
        return row.get(index).minus(body).size();
    }
}
