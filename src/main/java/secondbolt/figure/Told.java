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
     * By what she calls them, in order; areas that she calls the same are added up, others that she
     * calls alike, such as two marks for the same pocket, are numbered.
     *
     * @param all figures of several topics, in the order of working
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
            entry.told().ifPresent(what -> add(what, entry.figure()));
            Inside inside = Inside.of(entry.figure());
            inside.groups().ifPresent(this::gather);
            inside.items().ifPresent(items -> items.forEach(this::gather));
        }
    }

    private void add(String what, Figure figure) {
        Optional<Area> before = Optional.ofNullable(told.get(what)).flatMap(Told::area);
        Optional<Area> sum = before.flatMap(one -> area(figure).map(one::plus));
        told.put(
                sum.isPresent() ? what : free(what), sum.<Figure>map(Told::surface).orElse(figure));
    }

    private static Figure surface(Area area) {
        return new Figure.Surface(Optional.of(area));
    }

    private String free(String what) {
        String name = what;
        for (int number = 2; told.containsKey(name); number++) {
            name = what + " (" + number + ")";
        }
        return name;
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
