package secondbolt.figure;

import java.util.List;
import java.util.Optional;

/**
 * What a figure holds inside.
 *
 * @param groups its figures, if it is a group that is not open
 * @param items its items, if it is a list
 */
record Inside(Optional<Figures> groups, Optional<List<Figures>> items) {
    private static final Inside NOTHING = new Inside(Optional.empty(), Optional.empty());

    static Inside of(Figure figure) {
        return figure.accept(
                new Leaves<Inside>(NOTHING) {
                    @Override
                    public Inside group(Figure.Group group) {
                        return new Inside(group.figures(), Optional.empty());
                    }

                    @Override
                    public Inside items(Figure.Items items) {
                        return new Inside(Optional.empty(), Optional.of(items.items()));
                    }
                });
    }
}
