package secondbolt.lay.search;

/** Looks for a better place for one item: over all the ground, near by, then step by step. */
final class Placer {
    private static final int KEPT = 3;

    /** So many places are looked at all over the ground, and so many near by. */
    private static final int WIDE = 32;

    private static final int NEAR = 16;

    private final Scorer scorer;
    private final Dice dice;
    private final int grounds;
    private final double[] costs = new double[KEPT];
    private final int[] keptGrounds = new int[KEPT];
    private final int[] stanceOf = new int[KEPT];
    private final double[] xs = new double[KEPT];
    private final double[] ys = new double[KEPT];
    private int kept;
    private double bestCost;
    private double bestX;
    private double bestY;

    Placer(Scorer scorer, Dice dice, int grounds) {
        this.scorer = scorer;
        this.dice = dice;
        this.grounds = grounds;
    }

    /** Moves an item to a better place if one is found. */
    void improve(int item) {
        double was = scorer.cost(item);
        kept = 0;
        Layout layout = scorer.layout;
        int[] choices = scorer.problem.choices.get(item);
        keep(was, layout.ground[item], layout.stance[item], layout.x[item], layout.y[item]);
        for (int i = 0; i < NEAR; i++) {
            nearBy(item, choices);
        }
        for (int i = 0; i < WIDE; i++) {
            anywhere(item, choices);
        }
        double least = was;
        int at = -1;
        double x = 0;
        double y = 0;
        for (int i = 0; i < kept; i++) {
            if (!scorer.hasRoom(keptGrounds[i], stanceOf[i])) {
                continue;
            }
            descend(item, i);
            if (bestCost < least) {
                least = bestCost;
                at = i;
                x = bestX;
                y = bestY;
            }
        }
        if (at >= 0) {
            scorer.move(item, keptGrounds[at], stanceOf[at], x, y);
        }
    }

    private void nearBy(int item, int[] choices) {
        Layout layout = scorer.layout;
        int ground = layout.ground[item];
        int stance = choices[dice.below(choices.length)];
        if (!scorer.hasRoom(ground, stance)) {
            return;
        }
        Stance shape = scorer.problem.stances.get(stance);
        Stance is = scorer.problem.stances.get(layout.stance[item]);
        double middleX = layout.x[item] + is.widthMm() / 2;
        double middleY = layout.y[item] + is.heightMm() / 2;
        double x = middleX - shape.widthMm() / 2 + (dice.share() - 0.5) * shape.widthMm();
        double y = middleY - shape.heightMm() / 2 + (dice.share() - 0.5) * shape.heightMm();
        score(item, ground, stance, x, y);
    }

    private void anywhere(int item, int[] choices) {
        int ground = ground();
        int stance = choices[dice.below(choices.length)];
        if (!scorer.hasRoom(ground, stance)) {
            return;
        }
        Bounds bounds = scorer.bounds(ground, stance);
        double x = bounds.atShareX(dice.share());
        double y = bounds.atShareY(dice.share(), scorer.limit[ground]);
        score(item, ground, stance, x, y);
    }

    private int ground() {
        int count = grounds;
        if (count == 1) {
            return 0;
        }
        double all = 0;
        for (int i = 0; i < count; i++) {
            all += scorer.problem.grounds.get(i).areaMm2();
        }
        double at = dice.share() * all;
        for (int i = 0; i < count; i++) {
            at -= scorer.problem.grounds.get(i).areaMm2();
            if (at < 0) {
                return i;
            }
        }
        return count - 1;
    }

    private void score(int item, int ground, int stance, double x, double y) {
        double cx = scorer.withinX(ground, stance, x);
        double cy = scorer.withinY(ground, stance, y);
        double bound = kept < KEPT ? Double.POSITIVE_INFINITY : costs[KEPT - 1];
        double cost = scorer.cost(item, ground, stance, cx, cy, bound);
        if (cost < bound) {
            keep(cost, ground, stance, cx, cy);
        }
    }

    private void keep(double cost, int ground, int stance, double x, double y) {
        int at = kept < KEPT ? kept++ : KEPT - 1;
        while (at > 0 && costs[at - 1] > cost) {
            copy(at - 1, at);
            at--;
        }
        costs[at] = cost;
        keptGrounds[at] = ground;
        stanceOf[at] = stance;
        xs[at] = x;
        ys[at] = y;
    }

    private void copy(int from, int to) {
        costs[to] = costs[from];
        keptGrounds[to] = keptGrounds[from];
        stanceOf[to] = stanceOf[from];
        xs[to] = xs[from];
        ys[to] = ys[from];
    }

    /** Along one axis or slantwise, longer while it helps and shorter when it does not. */
    private void descend(int item, int which) {
        int ground = keptGrounds[which];
        int stance = stanceOf[which];
        Stance shape = scorer.problem.stances.get(stance);
        double size = Math.min(shape.widthMm(), shape.heightMm());
        Bounds bounds = scorer.bounds(ground, stance);
        double stepX = Math.max(size * 0.12, bounds.across().everyMm());
        double stepY = Math.max(size * 0.12, bounds.along().everyMm());
        double least = size * 0.0005;
        double x = xs[which];
        double y = ys[which];
        double cost = costs[which];
        while (cost > 0 && (stepX > least || stepY > least)) {
            int way = dice.below(4);
            double byX = way == 1 ? 0 : stepX;
            double byY = way == 0 ? 0 : way == 3 ? -stepY : stepY;
            double ax = scorer.withinX(ground, stance, x + byX);
            double ay = scorer.withinY(ground, stance, y + byY);
            double bx = scorer.withinX(ground, stance, x - byX);
            double by = scorer.withinY(ground, stance, y - byY);
            double a = scorer.cost(item, ground, stance, ax, ay, cost);
            double b = scorer.cost(item, ground, stance, bx, by, Math.min(a, cost));
            double next = Math.min(a, b);
            boolean better = next < cost;
            if (better) {
                cost = next;
                x = b < a ? bx : ax;
                y = b < a ? by : ay;
            }
            double factor = better ? 1.1 : way > 1 ? 0.7071 : 0.5;
            stepX = way == 1 ? stepX : stepX * factor;
            stepY = way == 0 ? stepY : stepY * factor;
        }
        bestCost = cost;
        bestX = x;
        bestY = y;
    }
}
