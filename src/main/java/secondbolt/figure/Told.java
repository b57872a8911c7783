package secondbolt.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Area;

/** Gathers the figures that carry what a maker calls them. */
public final class Told {
    private final Map<String, Figure> told = new LinkedHashMap<>();

    private Told() {}

    /**
     * By what she calls them, in order; areas that she calls the same are added up.
     *
     * @param all figures of several topics, in the order of working
     * @throws IllegalStateException if she calls two alike that are not areas
     */
    public static Map<String, Figure> of(List<Figures> all) {
        Told told = new Told();
        all.forEach(told::gather);
        return Collections.unmodifiableMap(told.told);
    }

    private void gather(Figures figures) {
        for (FigureEntry entry : figures.entries().values()) {
            if (entry.isLater()) {
                continue;
            }
            entry.told().ifPresent(what -> told.merge(what, entry.figure(), Told::together));
            Inside inside = Inside.of(entry.figure());
            inside.groups().ifPresent(this::gather);
            inside.items().ifPresent(items -> items.forEach(this::gather));
        }
    }

    private static Figure together(Figure one, Figure other) {
        Optional<Area> sum = area(one).flatMap(a -> area(other).map(a::plus));
        if (sum.isEmpty()) {
            throw new IllegalStateException("told twice and no areas: " + one + ", " + other);
        }
        return new Figure.Surface(sum);
    }

    private static Optional<Area> area(Figure figure) {
        return figure.accept(
                new Leaves<Optional<Area>>(Optional.empty()) {
                    @Override
                    public Optional<Area> surface(Figure.Surface surface) {
                        return surface.value();
                    }
                });
    }
}
