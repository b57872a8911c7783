package secondbolt.figure;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/** A figure under its name: there already, or made when it is first read. */
public final class FigureEntry {
    private final AtomicReference<Figure> made;
    private final Supplier<Figure> make;
    private final Optional<String> told;
    private final boolean isLater;

    private FigureEntry(
            Figure made, Supplier<Figure> make, Optional<String> told, boolean isLater) {
        this.made = new AtomicReference<>(made);
        this.make = make;
        this.told = told;
        this.isLater = isLater;
    }

    static FigureEntry of(Figure figure, Optional<String> told) {
        return new FigureEntry(figure, () -> figure, told, false);
    }

    static FigureEntry later(Supplier<Figure> make) {
        return new FigureEntry(null, make, Optional.empty(), true);
    }

    /** What it is. */
    public Figure figure() {
        // Made twice at the worst, by two threads at once: it is pure.
        if (made.get() == null) {
            made.compareAndSet(null, make.get());
        }
        return made.get();
    }

    /** What a maker calls it, if she is told when it moves. */
    public Optional<String> told() {
        return told;
    }

    /** Whether it was put off, and so holds nothing that a maker is told of. */
    boolean isLater() {
        return isLater;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FigureEntry entry
                && told.equals(entry.told)
                && figure().equals(entry.figure());
    }

    @Override
    public int hashCode() {
        return 31 * told.hashCode() + figure().hashCode();
    }
}
