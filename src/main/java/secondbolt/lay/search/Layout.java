package secondbolt.lay.search;

/** Where every item lies. Not for sharing: a search changes it. */
final class Layout {
    final int[] ground;
    final int[] stance;
    final double[] x;
    final double[] y;

    Layout(int items) {
        ground = new int[items];
        stance = new int[items];
        x = new double[items];
        y = new double[items];
    }

    void set(Layout other) {
        System.arraycopy(other.ground, 0, ground, 0, ground.length);
        System.arraycopy(other.stance, 0, stance, 0, ground.length);
        System.arraycopy(other.x, 0, x, 0, ground.length);
        System.arraycopy(other.y, 0, y, 0, ground.length);
    }

    void copy(Layout other, int from, int to) {
        ground[to] = other.ground[from];
        stance[to] = other.stance[from];
        x[to] = other.x[from];
        y[to] = other.y[from];
    }

    Layout copy() {
        Layout copy = new Layout(ground.length);
        copy.set(this);
        return copy;
    }
}
