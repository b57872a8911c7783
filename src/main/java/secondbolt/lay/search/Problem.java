package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * What is to be laid, with all that is worked out once for the search: the fields of every two
 * orientations, made when they are first asked for.
 */
final class Problem {
    final List<Orientation> orientations;
    final List<int[]> choices;
    final int[] quality;
    final List<Ground> grounds;
    final double reachMm;
    private final Shelf shelf;
    private final AtomicReferenceArray<Field> between;
    private final AtomicReferenceArray<Optional<Field>> rooms;

    private Problem(
            List<Orientation> orientations,
            List<int[]> choices,
            int[] quality,
            List<Ground> grounds,
            Shelf shelf,
            AtomicReferenceArray<Field> between,
            AtomicReferenceArray<Optional<Field>> rooms) {
        this.orientations = orientations;
        this.choices = choices;
        this.quality = quality;
        this.grounds = grounds;
        this.shelf = shelf;
        this.reachMm = shelf.reachMm();
        this.between = between;
        this.rooms = rooms;
    }

    /**
     * A problem.
     *
     * @param figures what is laid; the numbers of the items are theirs
     * @param grounds one or more
     * @param shelf what is worked out for the figures already
     */
    static Problem of(List<Figure> figures, List<Ground> grounds, Shelf shelf) {
        IdentityHashMap<Orientation, Integer> known = new IdentityHashMap<>();
        List<Orientation> orientations = new ArrayList<>();
        List<int[]> choices = new ArrayList<>();
        for (Figure figure : figures) {
            int[] choice = new int[figure.turns().size()];
            for (int i = 0; i < choice.length; i++) {
                Orientation lies = shelf.orientation(figure.outline(), figure.turns().get(i));
                if (!known.containsKey(lies)) {
                    known.put(lies, orientations.size());
                    orientations.add(lies);
                }
                choice[i] = known.get(lies);
            }
            choices.add(choice);
        }
        int n = orientations.size();
        int qualities = grounds.get(0).outside().size();
        return new Problem(
                List.copyOf(orientations),
                List.copyOf(choices),
                figures.stream().mapToInt(f -> f.mayLieOnHidden() ? 1 : 0).toArray(),
                List.copyOf(grounds),
                shelf,
                new AtomicReferenceArray<>(n * n),
                new AtomicReferenceArray<>(n * grounds.size() * qualities));
    }

    /** The same with some of the items, in this order, which are numbered anew. */
    Problem only(List<Integer> items) {
        return new Problem(
                orientations,
                items.stream().map(choices::get).toList(),
                items.stream().mapToInt(i -> quality[i]).toArray(),
                grounds,
                shelf,
                between,
                rooms);
    }

    int items() {
        return choices.size();
    }

    double areaMm2(int item) {
        return orientations.get(choices.get(item)[0]).areaMm2();
    }

    /** Where the second must not be put, beside the first at the origin. */
    Field between(int first, int second) {
        int at = first * orientations.size() + second;
        Field field = between.get(at);
        if (field == null) {
            field = shelf.between(orientations.get(first), orientations.get(second));
            between.set(at, field);
        }
        return field;
    }

    /** Where an orientation must not be put on a ground; nothing if its whole box is sound. */
    Optional<Field> room(int ground, int orientation, int ofQuality) {
        int qualities = grounds.get(0).outside().size();
        int at = (ground * qualities + ofQuality) * orientations.size() + orientation;
        Optional<Field> room = rooms.get(at);
        if (room == null) {
            room = make(grounds.get(ground), orientations.get(orientation), ofQuality);
            rooms.set(at, room);
        }
        return room;
    }

    private static Optional<Field> make(Ground ground, Orientation shape, int ofQuality) {
        List<Convex> outside = ground.outside().get(ofQuality);
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

    /** Whether an item can lie anywhere at all, were it alone. */
    boolean hasRoom(int item) {
        for (int ground = 0; ground < grounds.size(); ground++) {
            Ground bed = grounds.get(ground);
            for (int orientation : choices.get(item)) {
                Orientation shape = orientations.get(orientation);
                boolean fits =
                        shape.widthMm() <= bed.right() - bed.left()
                                && shape.heightMm() <= bed.high() - bed.low();
                if (fits
                        && room(ground, orientation, quality[item])
                                .map(Field::hasFree)
                                .orElse(true)) {
                    return true;
                }
            }
        }
        return false;
    }
}
