package secondbolt.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * A strip of paper filled from the top: what lies on it is known by its lower edge alone. Not for
 * sharing: it remembers what was laid.
 */
final class Skyline {
    private static final double GAP_MM = 4;

    private final double acrossMm;
    private final double alongMm;
    private final Turns turns;
    private final List<Step> steps = new ArrayList<>();

    /** When a piece is turned by a quarter. */
    enum Turns {
        /** Where it has no room upright. */
        IF_IT_MUST,
        /** Where it then lies further up. */
        IF_IT_SERVES
    }

    /** Part of the lower edge. */
    private record Step(double leftMm, double rightMm, double yMm) {}

    /**
     * Where something lies.
     *
     * @param box what it takes up
     * @param isTurned whether it was turned by a quarter
     */
    record Spot(Box box, boolean isTurned) {
        Point at() {
            return new Point(box.leftMm(), box.topMm());
        }
    }

    /**
     * An empty strip.
     *
     * @param alongMm how far down it may be filled; may be infinite
     */
    Skyline(double acrossMm, double alongMm, Turns turns) {
        this.turns = turns;
        this.acrossMm = acrossMm;
        this.alongMm = alongMm;
        steps.add(new Step(0, acrossMm, 0));
    }

    /** Lays a frame as far up as there is room, then as far left, upright rather than turned. */
    Optional<Spot> lay(Box frame) {
        Stream<Spot> upright = spots(frame.widthMm(), frame.heightMm(), false);
        Stream<Spot> turned = spots(frame.heightMm(), frame.widthMm(), true);
        Optional<Spot> best =
                switch (turns) {
                    case IF_IT_MUST -> furthestUp(upright).or(() -> furthestUp(turned));
                    case IF_IT_SERVES -> furthestUp(Stream.concat(upright, turned));
                };
        best.ifPresent(spot -> take(spot.box()));
        return best;
    }

    private static Optional<Spot> furthestUp(Stream<Spot> spots) {
        return spots.min(
                Comparator.comparingDouble((Spot s) -> s.box().bottomMm())
                        .thenComparingDouble(s -> s.box().leftMm()));
    }

    private Stream<Spot> spots(double widthMm, double heightMm, boolean isTurned) {
        return steps.stream()
                .filter(step -> step.leftMm() + widthMm <= acrossMm)
                .map(step -> spot(step.leftMm(), widthMm, heightMm, isTurned))
                .filter(spot -> spot.box().bottomMm() <= alongMm);
    }

    private Spot spot(double leftMm, double widthMm, double heightMm, boolean isTurned) {
        double topMm =
                steps.stream()
                        .filter(s -> s.leftMm() < leftMm + widthMm && s.rightMm() > leftMm)
                        .mapToDouble(Step::yMm)
                        .max()
                        .orElseThrow();
        return new Spot(new Box(leftMm, topMm, widthMm, heightMm), isTurned);
    }

    private void take(Box box) {
        double rightMm = Math.min(acrossMm, box.rightMm() + GAP_MM);
        List<Step> after = new ArrayList<>();
        for (Step step : steps) {
            if (step.leftMm() < box.leftMm()) {
                double end = Math.min(step.rightMm(), box.leftMm());
                after.add(new Step(step.leftMm(), end, step.yMm()));
            }
        }
        after.add(new Step(box.leftMm(), rightMm, box.bottomMm() + GAP_MM));
        for (Step step : steps) {
            if (step.rightMm() > rightMm) {
                double start = Math.max(step.leftMm(), rightMm);
                after.add(new Step(start, step.rightMm(), step.yMm()));
            }
        }
        steps.clear();
        steps.addAll(after);
    }
}
