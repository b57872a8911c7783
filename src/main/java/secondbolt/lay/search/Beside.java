package secondbolt.lay.search;

/** Where a second shape must not be put beside a first: a field, or its mirror image. */
final class Beside {
    private final Field field;
    private final double acrossX;
    private final double fromX;
    private final double acrossY;
    private final double fromY;

    Beside(Field field, Flip flip, Orientation first, Orientation second) {
        this.field = field;
        acrossX = flip.across() ? -1 : 1;
        fromX = flip.across() ? first.widthMm() - second.widthMm() : 0;
        acrossY = flip.along() ? -1 : 1;
        fromY = flip.along() ? first.heightMm() - second.heightMm() : 0;
    }

    private Beside(Beside other) {
        field = other.field;
        acrossX = -other.acrossX;
        fromX = other.fromX;
        acrossY = -other.acrossY;
        fromY = other.fromY;
    }

    /** Where the first must not be put beside the second. */
    Beside swapped() {
        return new Beside(this);
    }

    /** How far the second must move to come free, from its place beside the first. */
    double depthMm(double x, double y) {
        return field.depthMm(fromX + acrossX * x, fromY + acrossY * y);
    }
}
