package secondbolt.closure.spacing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks at every row that a problem allows, one by one, and keeps the best. */
final class EveryRow {
    private final SpacingProblem problem;
    private Optional<Spacing> best = Optional.empty();

    EveryRow(SpacingProblem problem) {
        this.problem = problem;
    }

    Optional<Spacing> best() {
        for (int first = problem.first().from(); first <= problem.first().to(); first++) {
            extend(new ArrayList<>(List.of(first)));
        }
        return best;
    }

    private void extend(List<Integer> places) {
        if (places.size() == problem.count()) {
            compare(places);
            return;
        }
        int last = places.get(places.size() - 1);
        int to = Math.min(problem.last().to(), last + problem.widest());
        for (int next = last + problem.least(); next <= to; next++) {
            places.add(next);
            extend(places);
            places.remove(places.size() - 1);
        }
    }

    private void compare(List<Integer> places) {
        int last = places.get(places.size() - 1);
        if (!problem.last().holds(last) || !places.containsAll(problem.meets())) {
            return;
        }
        double mean = (double) (last - places.get(0)) / (places.size() - 1);
        double largest = 0;
        double squares = 0;
        for (int i = 1; i < places.size(); i++) {
            double off = Math.abs(places.get(i) - places.get(i - 1) - mean);
            largest = Math.max(largest, off);
            squares += off * off;
        }
        Spacing row = new Spacing(places, problem.blockedAt(places), largest, squares);
        if (best.isEmpty() || isBetter(row, best.get())) {
            best = Optional.of(row);
        }
    }

    private static boolean isBetter(Spacing row, Spacing than) {
        if (row.byHand().size() != than.byHand().size()) {
            return row.byHand().size() < than.byHand().size();
        }
        if (Math.abs(row.deviation() - than.deviation()) > 1e-9) {
            return row.deviation() < than.deviation();
        }
        return row.squares() < than.squares() - 1e-9;
    }
}
