package secondbolt.lay.search;

import secondbolt.parallel.Workers;

/**
 * Moves items off each other until nothing overlaps, or until nothing more helps.
 *
 * <p>Source: overlap minimisation by guided local search, in the form of Gardeyn, Vanden Berghe and
 * Wauters, An open-source heuristic to reboot 2D nesting research, arXiv 2509.13329, 2025; how
 * deeply two shapes penetrate each other is measured by the distance to the boundary of their sum,
 * as Imamichi, Yagiura and Nagamochi do, Discrete Optimization 6, 2009.
 */
final class Separation {
    /** What a run costs at the least, even one that finds nothing to do. */
    private static final long STEPS_A_RUN = 200;

    /** What a pass costs at the least, even one in which no item has a position to try. */
    private static final long STEPS_A_PASS = 20;

    /** Every run goes through all items, and every pass through what is kept of so many. */
    private static final int ITEMS_A_STEP = 10;

    /** When a search ends. */
    @FunctionalInterface
    interface StopRule {
        /** Whether to end after so many steps. */
        boolean endsAfter(long steps);
    }

    private final OverlapScorer[] workers;
    private final PositionSearch[] searches;
    private final SeededRandom[] randoms;
    private final Workers pool;
    private final Arrangement best;
    private double bestTotal;
    private long runs;
    private long passes;

    Separation(
            Problem problem, int containers, double[] limit, int workers, long seed, Workers pool) {
        this.pool = pool;
        this.workers = new OverlapScorer[workers];
        this.searches = new PositionSearch[workers];
        this.randoms = new SeededRandom[workers];
        for (int i = 0; i < workers; i++) {
            this.workers[i] = new OverlapScorer(problem, limit);
            randoms[i] = new SeededRandom(seed * 1_000_003 + i);
            searches[i] = new PositionSearch(this.workers[i], randoms[i], containers);
        }
        best = new Arrangement(problem.items());
    }

    OverlapScorer first() {
        return workers[0];
    }

    Arrangement best() {
        return best;
    }

    double bestTotal() {
        return bestTotal;
    }

    long steps() {
        long items = best.container.length;
        long steps =
                runs * Math.max(STEPS_A_RUN, items)
                        + passes * Math.max(STEPS_A_PASS, items / ITEMS_A_STEP);
        for (OverlapScorer worker : workers) {
            steps += worker.steps();
        }
        return steps;
    }

    /**
     * Whether it came to an arrangement without overlap; the best it came to is kept either way.
     *
     * @param patience so many passes without a better total end a strike
     * @param strikes so many strikes without a clearly better total end the run
     */
    boolean run(Arrangement from, double[] limit, int patience, int strikes, StopRule stop) {
        OverlapScorer lead = workers[0];
        System.arraycopy(limit, 0, lead.limit, 0, limit.length);
        lead.resetWeights();
        lead.take(from);
        best.set(from);
        bestTotal = lead.total();
        runs++;
        int left = strikes;
        while (left > 0 && bestTotal > 0 && !stop.endsAfter(steps())) {
            double before = bestTotal;
            strike(patience, stop);
            left = bestTotal < 0.98 * before ? strikes : left - 1;
            lead.take(best);
        }
        return bestTotal == 0;
    }

    private void strike(int patience, StopRule stop) {
        OverlapScorer lead = workers[0];
        int waited = 0;
        while (waited < patience && !stop.endsAfter(steps())) {
            for (int i = 1; i < workers.length; i++) {
                workers[i].set(lead);
            }
            pool.all(workers.length, this::pass);
            passes++;
            int chosen = 0;
            for (int i = 1; i < workers.length; i++) {
                chosen = workers[i].weighted() < workers[chosen].weighted() ? i : chosen;
            }
            if (chosen > 0) {
                lead.set(workers[chosen]);
            }
            double total = lead.total();
            if (total < bestTotal) {
                waited = total < 0.98 * bestTotal ? 0 : waited;
                bestTotal = total;
                best.set(lead.arrangement);
                if (total == 0) {
                    return;
                }
            } else {
                waited++;
            }
            lead.reweigh();
        }
    }

    /** Every item that overlaps is moved once, in any order. */
    private void pass(int worker) {
        OverlapScorer scorer = workers[worker];
        SeededRandom random = randoms[worker];
        int n = scorer.problem.items();
        int[] order = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (scorer.overlaps(i)) {
                order[count++] = i;
            }
        }
        for (int i = count - 1; i > 0; i--) {
            int j = random.below(i + 1);
            int swap = order[i];
            order[i] = order[j];
            order[j] = swap;
        }
        for (int i = 0; i < count; i++) {
            if (scorer.overlaps(order[i])) {
                searches[worker].improve(order[i]);
            }
        }
    }
}
