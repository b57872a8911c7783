package secondbolt.closure.row;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.PlacketPlan;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.spacing.SpacingProblem;
import secondbolt.closure.spacing.SpacingSolver;
import secondbolt.closure.spacing.Steps;
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
    /** The steps that places are counted in. */
    private static final Convention GRID =
            new Convention(
                    Length.ofInches(1, 64),
                    Length.ofMillimetres(1).dividedBy(2),
                    "our own choice, no coarser than the marks of a tape");

    private final FastenerSpread spread;
    private final PlacketPlan plan;
    private final HoleRoom room;
    private final Length step;
    private final GapBounds bounds;
    private final Steps steps;

    /** Each that it is asked throws {@code TooFree} if it takes more steps than are left. */
    ClosureSpacing(ClosureInput input, Steps steps) {
        this.steps = steps;
        Fastening fastening = input.closure().fastening();
        this.spread = input.closure().spread();
        this.plan = input.plan();
        this.room = new HoleRoom(fastening, input.machine().footRoom(input.tape()), input.tape());
        this.step = GRID.on(input.tape());
        this.bounds = new GapBounds(fastening.apart(), spread.largestGap(), step);
    }

    /** Whether so many, one at each of these places, can keep the bounds of their gaps. */
    boolean isPossible(int count, List<PlacketSpot> meets) {
        return isAllowed(count)
                && SpacingSolver.isPossible(problem(count, meets, GapBounds.Care.LOOSE), steps)
                && (SpacingSolver.isPossible(problem(count, meets, GapBounds.Care.SAFE), steps)
                        || solve(count, meets).isPresent());
    }

    /** Whether they leave no hole by hand as well. */
    boolean isClear(int count, List<PlacketSpot> meets) {
        return SpacingSolver.isClear(problem(count, meets, GapBounds.Care.SAFE), 1, steps)
                || (SpacingSolver.isClear(problem(count, meets, GapBounds.Care.LOOSE), 1, steps)
                        && solve(count, meets).filter(r -> r.byHand().isEmpty()).isPresent());
    }

    /** Whether so many can be placed {@linkplain FastenerRow#isClean cleanly}. */
    boolean isClean(int count) {
        return count > 1
                && isAllowed(count)
                && SpacingSolver.isClear(
                        problem(count, plan.meets(), GapBounds.Care.LOOSE),
                        FastenerRow.SEEN_PART,
                        steps)
                && solve(count).filter(FastenerRow::isClean).isPresent();
    }

    /**
     * So many as well as they can be placed, every gap within its bounds; a place that cannot be
     * met is left out.
     */
    Optional<FastenerRow> solve(int count) {
        return fewestLeftOut().stream()
                .map(meets -> solve(count, meets))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Whether so many gaps can keep their bounds between the ends, whatever lies there. */
    private boolean isAllowed(int count) {
        FastenerSpread.EndRange last = lastFromTop();
        return bounds.allow(
                count - 1,
                last.to().minus(spread.first().from()),
                last.from().minus(spread.first().to()));
    }

    private FastenerSpread.EndRange lastFromTop() {
        FastenerSpread.EndRange reach = spread.last().orElse(spread.first());
        return new FastenerSpread.EndRange(
                plan.length().minus(reach.to()), plan.length().minus(reach.from()));
    }

    /** Where the last one may be, from the top. */
    private Zone last() {
        FastenerSpread.EndRange last = lastFromTop();
        int from = steps(last.from());
        return new Zone(from, Math.max(from, steps(last.to())));
    }

    /** Where the first may be, from the top. */
    private Zone first() {
        return new Zone(steps(spread.first().from()), steps(spread.first().to()));
    }

    /** Whether the last hole, with room for the foot, ends above the placket's foot. */
    boolean keepsOnThePlacket(int count) {
        return lastFromTop().to().plus(room.below(count)).compareTo(plan.length()) <= 0;
    }

    private Length length(int steps) {
        return step.times(steps);
    }

    private int steps(Length length) {
        return (int) Math.round(length.millimetres() / step.millimetres());
    }

    /** The places to meet: all of them first, then those with one left out, and so on. */
    List<List<PlacketSpot>> fewestLeftOut() {
        List<PlacketSpot> meets = plan.meets();
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

    private Optional<FastenerRow> solve(int count, List<PlacketSpot> meets) {
        if (count == 1) {
            return one(meets);
        }
        if (!isAllowed(count)) {
            return Optional.empty();
        }
        for (GapBounds.Care care : GapBounds.Care.values()) {
            Optional<FastenerRow> row = solved(problem(count, meets, care), meets);
            if (row.isPresent()) {
                return row;
            }
        }
        // To keep off the bulk leaves no gap right: what lies on it is then worked by hand.
        Optional<FastenerRow> row = solved(passing(count, meets), meets);
        return row.isEmpty() && meets.isEmpty() ? Optional.of(evenly(count)) : row;
    }

    private SpacingProblem problem(int count, List<PlacketSpot> meets, GapBounds.Care care) {
        return problem(
                meets, care, IntStream.rangeClosed(1, count).mapToObj(this::blocked).toList());
    }

    /** The same with nothing kept clear. */
    private SpacingProblem passing(int count, List<PlacketSpot> meets) {
        return problem(meets, GapBounds.Care.LOOSE, Collections.nCopies(count, List.of()));
    }

    private SpacingProblem problem(
            List<PlacketSpot> meets, GapBounds.Care care, List<List<Zone>> blocked) {
        return new SpacingProblem(
                blocked.size(),
                first(),
                last(),
                bounds.narrowest(care),
                bounds.widest(care),
                meets.stream().map(m -> steps(m.at())).toList(),
                blocked);
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

    /** The best row there is, if its gaps keep their bounds as lengths, too. */
    private Optional<FastenerRow> solved(SpacingProblem problem, List<PlacketSpot> met) {
        return SpacingSolver.solve(problem, steps)
                .map(found -> new EvenRuns(problem, found).lengths(this::exact))
                .filter(bounds::hold)
                .map(places -> row(places, met));
    }

    private FastenerRow evenly(int count) {
        return row(bounds.evenly(count - 1, spread.first(), lastFromTop()), List.of());
    }

    private FastenerRow row(List<Length> places, List<PlacketSpot> met) {
        int gaps = places.size() - 1;
        Length gap = places.get(gaps).minus(places.get(0)).dividedBy(gaps);
        Length uneven = Length.ZERO;
        for (int i = 1; i <= gaps; i++) {
            Length off = places.get(i).minus(places.get(i - 1)).minus(gap).size();
            uneven = uneven.orLonger(off);
        }
        List<Integer> byHand =
                IntStream.rangeClosed(0, gaps)
                        .filter(i -> isIn(blocked(i + 1), steps(places.get(i))))
                        .boxed()
                        .toList();
        return new FastenerRow(places, byHand, Optional.of(gap), uneven, unmet(met));
    }
}
