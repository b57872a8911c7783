package secondbolt.lay.search;

/**
 * Where every item lies at the moment, overlaps among them: its container, which of the problem's
 * options it takes, and the left low corner of its box in millimetres. A search changes it.
 */
final class Arrangement {
    final int[] container;
    final int[] option;
    final double[] x;
    final double[] y;

    Arrangement(int items) {
        container = new int[items];
        option = new int[items];
        x = new double[items];
        y = new double[items];
    }

    void set(Arrangement other) {
        System.arraycopy(other.container, 0, container, 0, container.length);
        System.arraycopy(other.option, 0, option, 0, container.length);
        System.arraycopy(other.x, 0, x, 0, container.length);
        System.arraycopy(other.y, 0, y, 0, container.length);
    }

    void copy(Arrangement other, int from, int to) {
        container[to] = other.container[from];
        option[to] = other.option[from];
        x[to] = other.x[from];
        y[to] = other.y[from];
    }

    Arrangement copy() {
        Arrangement copy = new Arrangement(container.length);
        copy.set(this);
        return copy;
    }
}
