package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.lay.nofit.InnerFit;
import secondbolt.lay.nofit.PlaneContainer;

/**
 * Lays boxes on whole containers without overlap, so that what fits exactly is found: a search that
 * pushes items apart comes near an exact fit, but hardly ever to it.
 *
 * <p>Derived: the lowest stretch of what is laid so far, the leftmost of several, either holds the
 * left low corner of an item or stays empty up to its lower neighbour. Both are tried, as long as
 * no more stays empty than the containers are larger than all items; the gap between two items is
 * added to the right and to the top of each, and to the containers.
 */
final class BoxPacking {
    private static final double DUST_MM = OverlapScorer.DUST_MM;
    private static final double SAME_MM2 = 1e-3;

    /** A shorter or narrower lay is looked for by so much at the least. */
    private static final double LESS_MM = 0.01;

    private final Problem problem;
    private final int containers;
    private final double gapMm;
    private final List<Kind> kinds = new ArrayList<>();
    private final double[] left;
    private final double[] right;
    private final double[] high;
    private final Arrangement laid;
    private long nodes;

    /** Items that are laid alike, the same number of times. */
    private static final class Kind {
        private final List<Integer> items;
        private final int[] options;
        private final double areaMm2;
        private int used;

        Kind(List<Integer> items, int[] options, double areaMm2) {
            this.items = items;
            this.options = options;
            this.areaMm2 = areaMm2;
        }
    }

    /** A level stretch of the upper edge of what is laid. */
    private record Step(double from, double to, double at) {}

    private BoxPacking(Problem problem, int containers) {
        this.problem = problem;
        this.containers = containers;
        this.gapMm = problem.gapMm();
        left = new double[containers];
        right = new double[containers];
        high = new double[containers];
        laid = new Arrangement(problem.items());
    }

    /**
     * Arrangements of all items on the first containers: any, one on less length of the last
     * container, and one on less of its width; none if there is an item that is no box, a container
     * with flaws, or none was found.
     *
     * @param mostNodes how many decisions are tried at most
     */
    static List<Arrangement> of(Problem problem, int containers, long mostNodes) {
        BoxPacking packing = new BoxPacking(problem, containers);
        return packing.isOfBoxes() ? packing.all(mostNodes) : List.of();
    }

    private boolean isOfBoxes() {
        Map<List<Integer>, List<Integer>> alike = new LinkedHashMap<>();
        for (int i = 0; i < problem.items(); i++) {
            int grade = problem.grade[i];
            boolean isWhole =
                    problem.containers.subList(0, containers).stream()
                            .allMatch(c -> c.outside().get(grade).isEmpty());
            int[] options = Arrays.stream(problem.choices.get(i)).filter(this::isBox).toArray();
            if (!isWhole || options.length == 0) {
                return false;
            }
            alike.computeIfAbsent(Arrays.stream(options).boxed().toList(), any -> new ArrayList<>())
                    .add(i);
        }
        alike.forEach(
                (options, items) ->
                        kinds.add(
                                new Kind(
                                        items,
                                        options.stream().mapToInt(o -> o).toArray(),
                                        areaMm2(options.get(0)))));
        kinds.sort(Comparator.comparingDouble(kind -> -kind.areaMm2));
        for (int c = 0; c < containers; c++) {
            PlaneContainer container = problem.containers.get(c);
            left[c] = leftMm(c);
            right[c] = container.right();
            high[c] = container.high();
        }
        return true;
    }

    private boolean isBox(int option) {
        PlacementOption shape = problem.options.get(option);
        double box = shape.widthMm() * shape.heightMm();
        return Math.abs(box - shape.shape().areaMm2()) < SAME_MM2;
    }

    private double areaMm2(int option) {
        PlacementOption shape = problem.options.get(option);
        return (shape.widthMm() + gapMm) * (shape.heightMm() + gapMm);
    }

    /** Where the leftmost item can begin: on folded cloth at the fold. */
    private double leftMm(int container) {
        return kinds.stream()
                .flatMapToInt(kind -> Arrays.stream(kind.options))
                .mapToObj(option -> problem.innerFit(container, problem.options.get(option)))
                .mapToDouble(fit -> fit.across().leastMm())
                .min()
                .orElse(problem.containers.get(container).left());
    }

    private List<Arrangement> all(long mostNodes) {
        Optional<Arrangement> any = find(mostNodes);
        if (any.isEmpty()) {
            return List.of();
        }
        List<Arrangement> found = new ArrayList<>(List.of(any.get()));
        int last = containers - 1;
        for (boolean isAcross : new boolean[] {false, true}) {
            Optional<Arrangement> less = any;
            while (less.isPresent() && uses(less.get(), last)) {
                (isAcross ? right : high)[last] = reach(less.get(), last, isAcross) - LESS_MM;
                less = find(nodes + mostNodes / 4);
                less.ifPresent(found::add);
            }
            high[last] = problem.containers.get(last).high();
            right[last] = problem.containers.get(last).right();
        }
        return found;
    }

    private static boolean uses(Arrangement arrangement, int container) {
        return Arrays.stream(arrangement.container).anyMatch(c -> c == container);
    }

    private double reach(Arrangement arrangement, int container, boolean isAcross) {
        return IntStream.range(0, problem.items())
                .filter(i -> arrangement.container[i] == container)
                .mapToDouble(
                        i -> {
                            PlacementOption shape = problem.options.get(arrangement.option[i]);
                            return isAcross
                                    ? arrangement.x[i] + shape.widthMm()
                                    : arrangement.y[i] + shape.heightMm();
                        })
                .max()
                .orElse(0);
    }

    private Optional<Arrangement> find(long until) {
        double room = 0;
        for (int c = 0; c < containers; c++) {
            double low = problem.containers.get(c).low();
            room += (right[c] + gapMm - left[c]) * (high[c] + gapMm - low);
        }
        double wanted = kinds.stream().mapToDouble(kind -> kind.areaMm2 * kind.items.size()).sum();
        double spare = room - wanted;
        kinds.forEach(kind -> kind.used = 0);
        return spare > -SAME_MM2 * problem.items() && fill(0, floor(0), spare, until)
                ? Optional.of(laid.copy())
                : Optional.empty();
    }

    private List<Step> floor(int container) {
        return List.of(
                new Step(
                        left[container],
                        right[container] + gapMm,
                        problem.containers.get(container).low()));
    }

    private boolean fill(int container, List<Step> edge, double spareMm2, long until) {
        if (kinds.stream().allMatch(kind -> kind.used == kind.items.size())) {
            return true;
        }
        if (nodes++ > until) {
            return false;
        }
        int lowest = lowest(edge);
        Step step = edge.get(lowest);
        double top = high[container] + gapMm;
        if (step.at() >= top - DUST_MM) {
            return container + 1 < containers
                    && fill(container + 1, floor(container + 1), spareMm2, until);
        }
        for (boolean isExact : List.of(true, false)) {
            for (Kind kind : kinds) {
                for (int option : kind.options) {
                    boolean fills = Math.abs(wide(option) - step.to() + step.from()) <= DUST_MM;
                    if (kind.used < kind.items.size()
                            && fills == isExact
                            && mayLie(container, option, step)
                            && lay(kind, option, container, edge, lowest, spareMm2, until)) {
                        return true;
                    }
                }
            }
        }
        double to = Math.min(top, Math.min(beside(edge, lowest - 1), beside(edge, lowest + 1)));
        double lost = (step.to() - step.from()) * (to - step.at());
        return lost <= spareMm2 + SAME_MM2 * problem.items()
                && fill(
                        container,
                        raised(edge, lowest, step.to() - step.from(), to),
                        spareMm2 - lost,
                        until);
    }

    private boolean lay(
            Kind kind,
            int option,
            int container,
            List<Step> edge,
            int lowest,
            double spareMm2,
            long until) {
        Step step = edge.get(lowest);
        int item = kind.items.get(kind.used++);
        InnerFit fit = problem.innerFit(container, problem.options.get(option));
        laid.container[item] = container;
        laid.option[item] = option;
        laid.x[item] = fit.nearestX(step.from());
        laid.y[item] = fit.nearestY(step.at(), problem.containers.get(container).high());
        double top = step.at() + problem.options.get(option).heightMm() + gapMm;
        if (fill(container, raised(edge, lowest, wide(option), top), spareMm2, until)) {
            return true;
        }
        kind.used--;
        return false;
    }

    private double wide(int option) {
        return problem.options.get(option).widthMm() + gapMm;
    }

    /** Whether an item may lie with its left low corner at that of a stretch. */
    private boolean mayLie(int container, int option, Step step) {
        double highMm = high[container];
        InnerFit fit = problem.innerFit(container, problem.options.get(option));
        double y = step.at();
        return wide(option) <= step.to() - step.from() + DUST_MM
                && y + problem.options.get(option).heightMm() <= highMm + DUST_MM
                && fit.hasPosition(problem.containers.get(container).high())
                && Math.abs(fit.nearestX(step.from()) - step.from()) <= DUST_MM
                && Math.abs(fit.nearestY(y, problem.containers.get(container).high()) - y)
                        <= DUST_MM;
    }

    private static int lowest(List<Step> edge) {
        int lowest = 0;
        for (int i = 1; i < edge.size(); i++) {
            lowest = edge.get(i).at() < edge.get(lowest).at() - DUST_MM ? i : lowest;
        }
        return lowest;
    }

    private static double beside(List<Step> edge, int number) {
        return number < 0 || number >= edge.size()
                ? Double.POSITIVE_INFINITY
                : edge.get(number).at();
    }

    /** The edge with a stretch raised from its left end on, joined with its equals. */
    private static List<Step> raised(List<Step> edge, int number, double wide, double to) {
        Step step = edge.get(number);
        double end = step.from() + wide;
        List<Step> raised = new ArrayList<>(edge.subList(0, number));
        boolean isWhole = end >= step.to() - DUST_MM;
        add(raised, new Step(step.from(), isWhole ? step.to() : end, to));
        if (!isWhole) {
            add(raised, new Step(end, step.to(), step.at()));
        }
        for (Step next : edge.subList(number + 1, edge.size())) {
            add(raised, next);
        }
        return raised;
    }

    private static void add(List<Step> edge, Step step) {
        Step last = edge.isEmpty() ? null : edge.get(edge.size() - 1);
        if (last != null && Math.abs(last.at() - step.at()) <= DUST_MM) {
            double at = Math.max(last.at(), step.at());
            edge.set(edge.size() - 1, new Step(last.from(), step.to(), at));
        } else {
            edge.add(step);
        }
    }
}
