package secondbolt.shape;

/**
 * An upright rectangle, in millimetres.
 *
 * @param leftMm the left side
 * @param topMm the top side, which is the smaller y
 * @param widthMm across, zero or more
 * @param heightMm along, zero or more
 */
public record Box(double leftMm, double topMm, double widthMm, double heightMm) {
    /** Checks the sides. */
    public Box {
        if (!(widthMm >= 0) || !(heightMm >= 0)) {
            throw new IllegalArgumentException(
                    "a box needs sides of zero or more, was " + widthMm + " by " + heightMm);
        }
    }

    /** The box between two corners, in any order. */
    public static Box between(Point a, Point b) {
        return new Box(
                Math.min(a.xMm(), b.xMm()),
                Math.min(a.yMm(), b.yMm()),
                Math.abs(a.xMm() - b.xMm()),
                Math.abs(a.yMm() - b.yMm()));
    }

    /** The right side. */
    public double rightMm() {
        return leftMm + widthMm;
    }

    /** The bottom side. */
    public double bottomMm() {
        return topMm + heightMm;
    }

    /** What it covers, in square millimetres. */
    public double areaMm2() {
        return widthMm * heightMm;
    }

    /** The point in its middle. */
    public Point middle() {
        return new Point(leftMm + widthMm / 2, topMm + heightMm / 2);
    }

    /** This with every side moved out by so much; negative moves them in, to nothing at most. */
    public Box grown(double byMm) {
        double width = Math.max(0, widthMm + 2 * byMm);
        double height = Math.max(0, heightMm + 2 * byMm);
        Point middle = middle();
        return new Box(middle.xMm() - width / 2, middle.yMm() - height / 2, width, height);
    }

    /** The smallest box round both. */
    public Box with(Box other) {
        double left = Math.min(leftMm, other.leftMm);
        double top = Math.min(topMm, other.topMm);
        return new Box(
                left,
                top,
                Math.max(rightMm(), other.rightMm()) - left,
                Math.max(bottomMm(), other.bottomMm()) - top);
    }

    /** Whether another lies wholly inside, but for so much along its sides. */
    public boolean contains(Box other, double toleranceMm) {
        return other.leftMm >= leftMm - toleranceMm
                && other.topMm >= topMm - toleranceMm
                && other.rightMm() <= rightMm() + toleranceMm
                && other.bottomMm() <= bottomMm() + toleranceMm;
    }

    /** Whether both share more than a side. */
    public boolean overlaps(Box other) {
        return leftMm < other.rightMm()
                && other.leftMm < rightMm()
                && topMm < other.bottomMm()
                && other.topMm < bottomMm();
    }
}
