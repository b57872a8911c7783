package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import secondbolt.lay.nofit.InnerFit;
import secondbolt.lay.nofit.NoFitCache;
import secondbolt.lay.nofit.NoFitRegion;
import secondbolt.lay.nofit.PairNoFitRegion;
import secondbolt.lay.nofit.PlaneContainer;
import secondbolt.lay.nofit.ShapeImage;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.PlacementRule;

/**
 * What is to be laid: containers, and items with their options. No-fit regions are made when they
 * are first asked for, and then shared by all problems made from this one.
 */
final class Problem {
    final List<PlacementOption> options;
    final List<int[]> choices;
    final int[] grade;
    final List<PlaneContainer> containers;
    final double reachMm;
    private final List<ShapeImage> shapes;
    private final NoFitCache noFits;
    private final AtomicReferenceArray<PairNoFitRegion> pairs;
    private final AtomicReferenceArray<Optional<NoFitRegion>> outside;

    private Problem(Problem all, List<int[]> choices, int[] grade) {
        this.options = all.options;
        this.shapes = all.shapes;
        this.containers = all.containers;
        this.reachMm = all.reachMm;
        this.noFits = all.noFits;
        this.pairs = all.pairs;
        this.outside = all.outside;
        this.choices = choices;
        this.grade = grade;
    }

    private Problem(List<PackingItem> items, List<PlaneContainer> containers, NoFitCache noFits) {
        Options all = new Options(noFits);
        this.choices = items.stream().map(all::choices).toList();
        this.options = List.copyOf(all.options);
        this.shapes = List.copyOf(all.shapes);
        this.grade = items.stream().mapToInt(PackingItem::grade).toArray();
        this.containers = List.copyOf(containers);
        this.noFits = noFits;
        this.reachMm = noFits.reachMm();
        int n = shapes.size();
        this.pairs = new AtomicReferenceArray<>(n * n);
        this.outside = new AtomicReferenceArray<>(n * containers.size() * grades());
    }

    /** The options of all items, those that are the same once. */
    private static final class Options {
        private final NoFitCache noFits;
        private final IdentityHashMap<ShapeImage, Integer> shapeNumbers = new IdentityHashMap<>();
        private final Map<Map.Entry<Integer, PlacementRule>, Integer> numbers = new HashMap<>();
        private final List<ShapeImage> shapes = new ArrayList<>();
        private final List<PlacementOption> options = new ArrayList<>();

        Options(NoFitCache noFits) {
            this.noFits = noFits;
        }

        int[] choices(PackingItem item) {
            return item.rules().stream().mapToInt(rule -> number(item, rule)).toArray();
        }

        private int number(PackingItem item, PlacementRule rule) {
            ShapeImage image = noFits.image(item.outline(), rule.orientation());
            int shape = number(image);
            Integer number = numbers.get(Map.entry(shape, rule));
            if (number == null) {
                number = options.size();
                numbers.put(Map.entry(shape, rule), number);
                options.add(new PlacementOption(shape, image.shape(), rule));
            }
            return number;
        }

        private int number(ShapeImage image) {
            Integer number = shapeNumbers.get(image);
            if (number == null) {
                number = shapes.size();
                shapeNumbers.put(image, number);
                shapes.add(image);
            }
            return number;
        }
    }

    /**
     * A problem.
     *
     * @param items what is laid; items keep their numbers
     * @param containers one or more
     * @param noFits what is made for the items already; it knows the gap between them
     */
    static Problem of(List<PackingItem> items, List<PlaneContainer> containers, NoFitCache noFits) {
        return new Problem(items, containers, noFits);
    }

    /** The same with some of the items, in this order, which are numbered anew. */
    Problem only(List<Integer> items) {
        return new Problem(
                this,
                items.stream().map(choices::get).toList(),
                items.stream().mapToInt(i -> grade[i]).toArray());
    }

    int shapes() {
        return shapes.size();
    }

    int grades() {
        return containers.get(0).grades();
    }

    int items() {
        return choices.size();
    }

    double gapMm() {
        return noFits.gapMm();
    }

    double areaMm2(int item) {
        return options.get(choices.get(item)[0]).shape().areaMm2();
    }

    /** Where the second shape must not be, the first at the origin. */
    PairNoFitRegion between(int first, int second) {
        int at = first * shapes.size() + second;
        PairNoFitRegion pair = pairs.get(at);
        if (pair == null) {
            pair = noFits.between(shapes.get(first), shapes.get(second));
            pairs.set(at, pair);
        }
        return pair;
    }

    /** Where a shape must not be on a container; nothing if the whole box of that is sound. */
    Optional<NoFitRegion> outside(int container, int shape, int ofGrade) {
        int at = (container * grades() + ofGrade) * shapes.size() + shape;
        Optional<NoFitRegion> region = outside.get(at);
        if (region == null) {
            region = containers.get(container).noFit(shapes.get(shape).shape(), ofGrade);
            outside.set(at, region);
        }
        return region;
    }

    /** How far items reach along on a container; its low end if none lies there. */
    double reachMm(Arrangement arrangement, int container) {
        double reach = containers.get(container).low();
        for (int i = 0; i < items(); i++) {
            if (arrangement.container[i] == container) {
                double height = options.get(arrangement.option[i]).heightMm();
                reach = Math.max(reach, arrangement.y[i] + height);
            }
        }
        return reach;
    }

    /** The inner fit of an option in a container. */
    InnerFit innerFit(int container, PlacementOption option) {
        return InnerFit.of(containers.get(container), container, option.shape(), option.rule());
    }

    /** Whether an item can lie anywhere on the first containers at all, were it alone. */
    boolean hasRoom(int item, int firstContainers) {
        for (int container = 0; container < firstContainers; container++) {
            for (int option : choices.get(item)) {
                if (hasRoom(item, container, options.get(option))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean hasRoom(int item, int container, PlacementOption option) {
        return innerFit(container, option).hasPosition(containers.get(container).high())
                && outside(container, option.shapeNumber(), grade[item])
                        .map(NoFitRegion::hasFree)
                        .orElse(true);
    }
}
