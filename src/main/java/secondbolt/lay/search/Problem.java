package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * What is to be laid, with all that is worked out once for the search: the fields of every two
 * shapes, made when they are first asked for.
 */
final class Problem {
    final List<Stance> stances;
    final List<int[]> choices;
    final int[] grade;
    final List<Ground> grounds;
    final double reachMm;
    private final List<Shelf.Lying> shapes;
    private final Shelf shelf;
    private final AtomicReferenceArray<Beside> between;
    private final AtomicReferenceArray<Optional<Field>> rooms;

    private Problem(Problem all, List<int[]> choices, int[] grade) {
        this.stances = all.stances;
        this.shapes = all.shapes;
        this.grounds = all.grounds;
        this.reachMm = all.reachMm;
        this.shelf = all.shelf;
        this.between = all.between;
        this.rooms = all.rooms;
        this.choices = choices;
        this.grade = grade;
    }

    private Problem(List<Figure> figures, List<Ground> grounds, Shelf shelf) {
        IdentityHashMap<Shelf.Lying, Integer> knownShapes = new IdentityHashMap<>();
        Map<Map.Entry<Integer, Way>, Integer> known = new HashMap<>();
        List<Shelf.Lying> allShapes = new ArrayList<>();
        List<Stance> allStances = new ArrayList<>();
        List<int[]> all = new ArrayList<>();
        for (Figure figure : figures) {
            int[] choice = new int[figure.ways().size()];
            for (int i = 0; i < choice.length; i++) {
                Way way = figure.ways().get(i);
                Shelf.Lying lies = shelf.lying(figure.outline(), way);
                int shape = number(knownShapes, lies, allShapes);
                choice[i] =
                        known.computeIfAbsent(
                                Map.entry(shape, way),
                                key -> {
                                    allStances.add(new Stance(shape, lies.lies(), way));
                                    return allStances.size() - 1;
                                });
            }
            all.add(choice);
        }
        this.stances = List.copyOf(allStances);
        this.shapes = List.copyOf(allShapes);
        this.choices = List.copyOf(all);
        this.grade = figures.stream().mapToInt(Figure::grade).toArray();
        this.grounds = List.copyOf(grounds);
        this.shelf = shelf;
        this.reachMm = shelf.reachMm();
        int n = shapes.size();
        int grades = grounds.get(0).outside().size();
        this.between = new AtomicReferenceArray<>(n * n);
        this.rooms = new AtomicReferenceArray<>(n * grounds.size() * grades);
    }

    private static int number(
            IdentityHashMap<Shelf.Lying, Integer> known, Shelf.Lying lies, List<Shelf.Lying> all) {
        Integer number = known.get(lies);
        if (number == null) {
            number = all.size();
            known.put(lies, number);
            all.add(lies);
        }
        return number;
    }

    /**
     * A problem.
     *
     * @param figures what is laid; the numbers of the items are theirs
     * @param grounds one or more
     * @param shelf what is worked out for the figures already
     */
    static Problem of(List<Figure> figures, List<Ground> grounds, Shelf shelf) {
        return new Problem(figures, grounds, shelf);
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
        return grounds.get(0).outside().size();
    }

    int items() {
        return choices.size();
    }

    double areaMm2(int item) {
        return stances.get(choices.get(item)[0]).lies().areaMm2();
    }

    /** Where the second shape must not be put, beside the first at the origin. */
    Beside between(int first, int second) {
        int at = first * shapes.size() + second;
        Beside beside = between.get(at);
        if (beside == null) {
            beside = shelf.between(shapes.get(first), shapes.get(second));
            between.set(at, beside);
        }
        return beside;
    }

    /** Where a shape must not be put on a ground; nothing if its whole box is sound. */
    Optional<Field> room(int ground, int shape, int ofGrade) {
        int at = (ground * grades() + ofGrade) * shapes.size() + shape;
        Optional<Field> room = rooms.get(at);
        if (room == null) {
            room = make(grounds.get(ground), shapes.get(shape).lies(), ofGrade);
            rooms.set(at, room);
        }
        return room;
    }

    private static Optional<Field> make(Ground ground, Orientation shape, int ofGrade) {
        List<Convex> outside = ground.outside().get(ofGrade);
        if (outside.isEmpty()) {
            return Optional.empty();
        }
        double[] box = {
            ground.left() - 1,
            ground.low() - 1,
            ground.right() - shape.widthMm() + 1,
            ground.high() - shape.heightMm() + 1
        };
        return Optional.of(Field.within(outside, shape.bare(), box));
    }

    /** Whether an item can lie anywhere on the first grounds at all, were it alone. */
    boolean hasRoom(int item, int firstGrounds) {
        for (int ground = 0; ground < firstGrounds; ground++) {
            for (int stance : choices.get(item)) {
                if (hasRoom(item, ground, stances.get(stance))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean hasRoom(int item, int ground, Stance stance) {
        Bounds bounds = Bounds.of(grounds.get(ground), ground, stance);
        return bounds.hasPlace(grounds.get(ground).high())
                && room(ground, stance.shape(), grade[item]).map(Field::hasFree).orElse(true);
    }
}
