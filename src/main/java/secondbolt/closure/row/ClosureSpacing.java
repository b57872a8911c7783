package secondbolt.closure.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.PlacketPlan;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.spacing.Spacing;
import secondbolt.closure.spacing.SpacingProblem;
import secondbolt.closure.spacing.SpacingSolver;
import secondbolt.closure.spacing.Zone;
import secondbolt.measure.Length;
import secondbolt.worksheet.Convention;

/**
 * Places so many fasteners on a placket: on a grid of half a millimetre, or 1/64 in, and where
 * nothing but rounding keeps the gaps between two fixed places from being equal, equal exactly.
 *
 * <p>Source: The New Dressmaker, Butterick, 1921, chapter 24: fix the top and bottom positions
 * first, then divide the distance between them into equal spaces. Each distance is counted from the
 * top anew, so that roundings never add up.
 */
final class ClosureSpacing {
    private static final int NO_LIMIT = 1_000_000;

    /** The steps that places are counted in. */
    private static final Convention GRID =
            new Convention(
                    Length.ofInches(1, 64),
                    Length.ofMillimetres(1).dividedBy(2),
                    "our own choice, no coarser than the marks of a tape");

    private final Fastening fastening;
    private final FastenerSpread spread;
    private final PlacketPlan plan;
    private final HoleRoom room;
    private final Length step;

    ClosureSpacing(ClosureInput input) {
        this.fastening = input.closure().fastening();
        this.spread = input.closure().spread();
        this.plan = input.plan();
        this.room = new HoleRoom(fastening, input.machine().footRoom(input.tape()), input.tape());
        this.step = GRID.on(input.tape());
    }

    /** Whether so many leave no hole by hand, every place met and no gap wider than the largest. */
    boolean isClear(int count, Length largestGap) {
        SpacingProblem problem = problem(count, plan.meets(), last(), steps(largestGap));
        return SpacingSolver.isClear(problem, 1);
    }

    /** Whether so many can be placed {@linkplain FastenerRow#isClean cleanly}. */
    boolean isClean(int count, Zone first, Zone last) {
        return SpacingSolver.isClear(
                problem(count, plan.meets(), first, last, NO_LIMIT), FastenerRow.SEEN_PART);
    }

    /** Whether so many can be placed at all with no gap wider. */
    boolean isPossible(int count, Length largestGap) {
        return SpacingSolver.isPossible(problem(count, plan.meets(), last(), steps(largestGap)));
    }

    /** So many as well as they can be placed; a place that cannot be met is left out. */
    Optional<FastenerRow> solve(int count) {
        return solve(count, last());
    }

    /** The same with the last one elsewhere. */
    Optional<FastenerRow> solve(int count, Zone last) {
        for (List<PlacketSpot> meets : fewestLeftOut(plan.meets())) {
            Optional<FastenerRow> solved = solve(count, meets, last, NO_LIMIT);
            if (solved.isPresent()) {
                return solved;
            }
        }
        return Optional.empty();
    }

    /** Where the last one may be, from the top. */
    Zone last() {
        FastenerSpread.EndRange reach = spread.last().orElse(spread.first());
        int from = steps(plan.length().minus(reach.to()));
        return new Zone(from, Math.max(from, steps(plan.length().minus(reach.from()))));
    }

    /** Whether the last hole, with room for the foot, ends above the placket's foot. */
    boolean keepsOnThePlacket(int count, Zone last) {
        return length(last.to()).plus(room.below(count)).compareTo(plan.length()) <= 0;
    }

    /** The same with the last one moved down by so many steps, up if negative. */
    Zone lastMoved(int steps) {
        return last().moved(steps);
    }

    Length length(int steps) {
        return step.times(steps);
    }

    private int steps(Length length) {
        return (int) Math.round(length.millimetres() / step.millimetres());
    }

    /** All subsets, the whole first, then those with one left out, and so on. */
    private static List<List<PlacketSpot>> fewestLeftOut(List<PlacketSpot> meets) {
        return IntStream.range(0, 1 << meets.size())
                .boxed()
                .sorted(Comparator.comparingInt(Integer::bitCount))
                .map(
                        left ->
                                IntStream.range(0, meets.size())
                                        .filter(i -> (left >> i & 1) == 0)
                                        .mapToObj(meets::get)
                                        .toList())
                .toList();
    }

    private Optional<FastenerRow> solve(int count, List<PlacketSpot> meets, Zone last, int widest) {
        if (count == 1) {
            return one(meets);
        }
        SpacingProblem problem = problem(count, meets, last, widest);
        return SpacingSolver.solve(problem).map(found -> solved(found, problem, meets));
    }

    private SpacingProblem problem(int count, List<PlacketSpot> meets, Zone last, int widest) {
        return problem(count, meets, first(), last, widest);
    }

    private SpacingProblem problem(
            int count, List<PlacketSpot> meets, Zone first, Zone last, int widest) {
        // A step less than needed, so that the rounding of the ends never forbids what fits.
        int least = (int) (fastening.apart().millimetres() / step.millimetres()) - 1;
        return new SpacingProblem(
                count,
                first,
                last,
                Math.max(1, least),
                widest,
                meets.stream().map(m -> steps(m.at())).toList(),
                IntStream.rangeClosed(1, count).mapToObj(this::blocked).toList());
    }

    /** Where the first may be, from the top. */
    Zone first() {
        return new Zone(steps(spread.first().from()), steps(spread.first().to()));
    }

    /** One alone goes where it must, else as near the middle of its range as a hole can be. */
    private Optional<FastenerRow> one(List<PlacketSpot> meets) {
        Zone range = first();
        List<Zone> blocked = blocked(1);
        List<Integer> places =
                meets.isEmpty()
                        ? IntStream.rangeClosed(range.from(), range.to()).boxed().toList()
                        : meets.stream().map(m -> steps(m.at())).filter(range::holds).toList();
        return places.stream()
                .min(
                        Comparator.comparing((Integer p) -> isIn(blocked, p))
                                .thenComparingInt(p -> Math.abs(2 * p - range.from() - range.to())))
                .map(
                        place ->
                                new FastenerRow(
                                        List.of(exact(place)),
                                        isIn(blocked, place) ? List.of(0) : List.of(),
                                        Optional.empty(),
                                        Length.ZERO,
                                        unmet(meets)));
    }

    private static boolean isIn(List<Zone> zones, int place) {
        return zones.stream().anyMatch(zone -> zone.holds(place));
    }

    private List<PlacketSpot> unmet(List<PlacketSpot> met) {
        return plan.meets().stream().filter(m -> !met.contains(m)).toList();
    }

    /** Where the hole of a fastener, by its number, cannot be stitched. */
    private List<Zone> blocked(int number) {
        List<Zone> zones = new ArrayList<>();
        for (PlacketSpot bulk : plan.bulks()) {
            Length above = bulk.at().minus(bulk.clearAbove()).minus(room.below(number));
            Length under = bulk.at().plus(bulk.clearBelow()).plus(room.above(number));
            int from = (int) Math.floor(above.millimetres() / step.millimetres()) + 1;
            int to = (int) Math.ceil(under.millimetres() / step.millimetres()) - 1;
            if (from <= to) {
                zones.add(new Zone(from, to));
            }
        }
        return zones;
    }

    /** A place that was told, exactly; else the grid's. */
    private Length exact(int place) {
        List<Length> told = new ArrayList<>();
        plan.meets().forEach(meet -> told.add(meet.at()));
        told.add(spread.first().from());
        told.add(spread.first().to());
        spread.last()
                .ifPresent(
                        last -> {
                            told.add(plan.length().minus(last.from()));
                            told.add(plan.length().minus(last.to()));
                        });
        return told.stream().filter(t -> steps(t) == place).findFirst().orElse(length(place));
    }

    private FastenerRow solved(Spacing spacing, SpacingProblem problem, List<PlacketSpot> met) {
        List<Length> places = new EvenRuns(problem, spacing).lengths(this::exact);
        int gaps = places.size() - 1;
        Length gap = places.get(gaps).minus(places.get(0)).dividedBy(gaps);
        Length uneven = Length.ZERO;
        for (int i = 1; i <= gaps; i++) {
            Length off = places.get(i).minus(places.get(i - 1)).minus(gap).size();
            uneven = uneven.orLonger(off);
        }
        List<Integer> byHand = problem.blockedAt(places.stream().map(this::steps).toList());
        return new FastenerRow(places, byHand, Optional.of(gap), uneven, unmet(met));
    }
}
