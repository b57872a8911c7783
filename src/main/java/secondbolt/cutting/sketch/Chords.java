package secondbolt.cutting.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.shape.Box;
import secondbolt.shape.InsideTest;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Straight runs inside an outline.
 *
 * @param outline the outline
 * @param stepMm how finely it is looked through, above zero
 */
record Chords(Outline outline, double stepMm) {
    /**
     * A straight run.
     *
     * @param from one end
     * @param to the other
     */
    record Chord(Point from, Point to) {
        double lengthMm() {
            return from.distanceMm(to);
        }

        Point at(double share) {
            return new Point(
                    from.xMm() + (to.xMm() - from.xMm()) * share,
                    from.yMm() + (to.yMm() - from.yMm()) * share);
        }

        /** The same about its middle, at most so long. */
        Chord shortened(double mostMm) {
            double half = Math.min(mostMm, lengthMm()) / lengthMm() / 2;
            return new Chord(at(0.5 - half), at(0.5 + half));
        }
    }

    /** All level runs at a height. */
    List<Chord> level(double yMm) {
        Box box = outline.box();
        InsideTest inside = new InsideTest(outline);
        return runs(new Point(box.leftMm(), yMm), 1, 0, box.widthMm(), inside::contains);
    }

    /**
     * A long run in one direction, near the middle rather than at the side, clear of what is taken.
     *
     * @param turnRadians of the run, from level, clockwise
     */
    Optional<Chord> longest(double turnRadians, LabelRoom room) {
        Box box = outline.box();
        double reach = Math.hypot(box.widthMm(), box.heightMm()) / 2;
        double cos = Math.cos(turnRadians);
        double sin = Math.sin(turnRadians);
        InsideTest inside = new InsideTest(outline);
        Predicate<Point> free = at -> inside.contains(at) && room.isFree(at, stepMm);
        List<Chord> found = new ArrayList<>();
        for (double share :
                List.of(0.0, 0.15, -0.15, 0.3, -0.3, 0.45, -0.45, 0.6, -0.6, 0.8, -0.8)) {
            Point foot =
                    box.middle()
                            .moved(
                                    -sin * share * box.widthMm() / 2 - cos * reach,
                                    cos * share * box.heightMm() / 2 - sin * reach);
            found.addAll(runs(foot, cos, sin, 2 * reach, free));
        }
        double best = found.stream().mapToDouble(Chord::lengthMm).max().orElse(0);
        return found.stream().filter(chord -> chord.lengthMm() >= 0.75 * best).findFirst();
    }

    private List<Chord> runs(
            Point foot, double cos, double sin, double longMm, Predicate<Point> isFree) {
        List<Chord> runs = new ArrayList<>();
        int steps = (int) Math.ceil(longMm / stepMm);
        Optional<Point> start = Optional.empty();
        Point last = foot;
        for (int i = 0; i <= steps + 1; i++) {
            Point at = foot.moved(cos * i * stepMm, sin * i * stepMm);
            boolean free = i <= steps && isFree.test(at);
            if (free && start.isEmpty()) {
                start = Optional.of(at);
            } else if (!free && start.isPresent()) {
                if (start.get().distanceMm(last) > stepMm) {
                    runs.add(new Chord(start.get(), last));
                }
                start = Optional.empty();
            }
            last = at;
        }
        return runs;
    }
}
