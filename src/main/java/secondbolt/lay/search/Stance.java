package secondbolt.lay.search;

/**
 * A way of lying with the shape it gives.
 *
 * @param shape the number of the shape in its problem
 * @param lies the shape
 * @param way how it comes to lie so
 */
record Stance(int shape, Orientation lies, Way way) {
    double widthMm() {
        return lies.widthMm();
    }

    double heightMm() {
        return lies.heightMm();
    }
}
