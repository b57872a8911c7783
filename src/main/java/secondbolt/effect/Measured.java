package secondbolt.effect;

import java.util.Optional;
import secondbolt.figure.Figure;
import secondbolt.figure.Leaves;
import secondbolt.measure.Area;
import secondbolt.measure.Length;

/** Picks the figures of one measure. */
final class Measured {
    /** Lengths only. */
    static final Figure.Visitor<Optional<Length>> LENGTH =
            new Leaves<Optional<Length>>(Optional.empty()) {
                @Override
                public Optional<Length> size(Figure.Size size) {
                    return size.value();
                }
            };

    /** Areas only. */
    static final Figure.Visitor<Optional<Area>> AREA =
            new Leaves<Optional<Area>>(Optional.empty()) {
                @Override
                public Optional<Area> surface(Figure.Surface surface) {
                    return surface.value();
                }
            };

    private Measured() {}
}
