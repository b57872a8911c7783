package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;

/**
 * No gap is wider than the largest gap told, in the row and in every remedy, and no hole runs into
 * the next one.
 */
class LargestGapTest {
    private static final Pattern COUNT = Pattern.compile("With (\\d+) instead of .*");
    private static final Pattern LAST =
            Pattern.compile("With the last .* \\(`last` (larger|smaller) by as much\\) too\\.");

    private static Length gap(List<Length> places, int below) {
        return places.get(below).minus(places.get(below - 1));
    }

    private static void keeps(List<Length> places, Length largest) {
        for (int i = 1; i < places.size(); i++) {
            assertFalse(gap(places, i).isLongerThan(largest), places + " above " + largest);
        }
    }

    private static List<Length> places(ClosureResult result) {
        return result.marks().stream().map(FastenerMark::fromTop).toList();
    }

    private static void keepsHolesApart(ClosureResult result) {
        for (int i = 1; i < result.marks().size(); i++) {
            FastenerMark above = result.marks().get(i - 1);
            FastenerMark below = result.marks().get(i);
            Length end = above.isUpright() ? above.end() : above.fromTop();
            Length start = below.isUpright() ? below.start() : below.fromTop();
            assertFalse(start.isShorterThan(end), result::toString);
        }
    }

    /**
     * Hand-worked: 23.5 cm above the bust and 38.5 below it take three gaps of 9 cm and five at the
     * least, so nine buttons. Bulk pushes some aside, but no gap past the bound, and fewer buttons,
     * with gaps of 11.75 cm, are not offered.
     */
    @Test
    void keepsTheLargestGapWhereBulkPushesHolesAside() {
        ClosureResult result =
                Written.mm(650)
                        .from(15, 15)
                        .largestGap(90)
                        .meet(Written.spot(250, "bust"))
                        .bulk(Written.spot(424, "waist"), Written.spot(440, "pocket"))
                        .result();
        assertTrue(result.marks().size() >= 9, result::toString);
        keeps(places(result), Length.ofMillimetres(90));
        result.advice().counts().forEach(c -> keeps(c.row().fromTop(), Length.ofMillimetres(90)));
    }

    /** Hand-worked: 8 gaps of 9 cm are 72 cm; a bound that is met to the dot needs no ninth. */
    @Test
    void takesAGapAsWideAsTheBound() {
        Length first = Length.parse("10.3 mm", Tape.CENTIMETRE).orThrow();
        Length length = first.plus(Length.ofMillimetres(720)).plus(first);
        ClosureResult result = new Written(length).from(first, first).largestGap(90).result();
        assertEquals(9, result.marks().size());
        keeps(places(result), Length.ofMillimetres(90));
    }

    /** Hand-worked: holes of 15.875 mm at 15.5 mm would run 0.375 mm into each other. */
    @Test
    void plansNoOverlappingHoles() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 60; i++) {
            int room = random.nextInt(17, 60);
            ClosureResult result =
                    Written.mm(100 + room)
                            .from(20, 20)
                            .largestGap(random.nextInt(20, 25))
                            .bulk(Written.spot(random.nextInt(30, 90), "seam"))
                            .result();
            keepsHolesApart(result);
        }
    }

    /** A single upright hole among level ones must not run into the one below it, either. */
    @Test
    void keepsAnUprightHoleAmongLevelOnesClearOfTheNext() {
        Fastening level =
                Written.buttons(
                        Length.ofMillimetres(20), Length.ofMillimetres(4), Fastening.Holes.LEVEL);
        Fastening mixed =
                new Fastening(
                        level.kind(),
                        level.button(),
                        Optional.empty(),
                        Optional.empty(),
                        level.holes(),
                        Map.of(2, Fastening.Holes.UPRIGHT, 3, Fastening.Holes.UPRIGHT));
        assertEquals(Length.ofMillimetres(20), level.apart());
        assertEquals(Length.ofMillimetres(24), mixed.apart());
    }

    /**
     * Three hundred plackets: the bound holds in the row, in every other count that is shown and in
     * the row of every remedy, written as she is told to write it.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23})
    void holdsOnRandomPlackets(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int remedies = 0;
        for (int i = 0; i < 100; i++) {
            Tape tape = random.nextBoolean() ? Tape.CENTIMETRE : Tape.INCH;
            Random placket = Random.of(random, tape);
            ClosureResult result = placket.written().result(tape);
            keeps(places(result), placket.largest());
            keepsHolesApart(result);
            result.advice().counts().forEach(c -> keeps(c.row().fromTop(), placket.largest()));
            for (String remedy : result.advice().remedies()) {
                remedies += placket.follow(remedy, result, tape) ? 1 : 0;
            }
        }
        assertTrue(remedies > 5, "some must be advised, or nothing was tried: " + remedies);
    }

    /** What a placket is made of, so that a remedy can be followed. */
    private record Random(
            Length length,
            Optional<Integer> count,
            Length largest,
            Length first,
            Length last,
            List<PlacketSpot> meets,
            List<PlacketSpot> bulks,
            Fastening fastening) {
        static Random of(SplittableRandom random, Tape tape) {
            Length unit = tape == Tape.INCH ? Length.ofInches(1, 16) : Length.ofMillimetres(1);
            int scale = tape == Tape.INCH ? 1 : 2;
            int length = random.nextInt(110, 400);
            return new Random(
                    unit.times((long) length * scale),
                    random.nextBoolean() ? Optional.of(random.nextInt(2, 6)) : Optional.empty(),
                    unit.times((long) random.nextInt(30, 70) * scale),
                    unit.times((long) random.nextInt(7, 14) * scale),
                    unit.times((long) random.nextInt(12, 24) * scale),
                    spots(random, unit, length * scale, random.nextInt(0, 2), "meet"),
                    spots(random, unit, length * scale, random.nextInt(0, 4), "seam"),
                    Written.buttons(
                            unit.times((long) random.nextInt(4, 8) * scale),
                            unit.times(scale),
                            random.nextBoolean()
                                    ? Fastening.Holes.UPRIGHT
                                    : Fastening.Holes.LEVEL));
        }

        private static List<PlacketSpot> spots(
                SplittableRandom random, Length unit, int length, int count, String why) {
            return IntStream.range(0, count)
                    .mapToObj(
                            i ->
                                    new PlacketSpot(
                                            unit.times(random.nextInt(40, length - 50)),
                                            why + " " + i,
                                            Length.ofMillimetres(6)))
                    .toList();
        }

        Written written() {
            return written(count, last);
        }

        private Written written(Optional<Integer> told, Length lastAt) {
            Written written =
                    new Written(length)
                            .of(fastening)
                            .largestGap(largest)
                            .from(first, lastAt)
                            .meet(meets.toArray(PlacketSpot[]::new))
                            .bulk(bulks.toArray(PlacketSpot[]::new));
            told.ifPresentOrElse(written::count, written::uncounted);
            return written;
        }

        /** Whether the remedy could be followed; then all must be met. */
        boolean follow(String remedy, ClosureResult before, Tape tape) {
            Matcher counted = COUNT.matcher(remedy);
            if (counted.matches()) {
                int other = Integer.parseInt(counted.group(1));
                solves(remedy, written(Optional.of(other), last).result(tape), other);
                return true;
            }
            Matcher moved = LAST.matcher(remedy);
            if (moved.matches()) {
                String amount = remedy.substring("With the last ".length());
                String by = amount.substring(0, amount.indexOf(" (`last`"));
                by = by.replace(" higher", "").replace(" lower", "");
                Length length = Length.parse(by, tape).orThrow();
                Length at =
                        moved.group(1).equals("larger") ? last.plus(length) : last.minus(length);
                solves(remedy, written(count, at).result(tape), before.marks().size());
                return true;
            }
            return false;
        }

        private void solves(String remedy, ClosureResult after, int marks) {
            assertEquals(marks, after.marks().size(), remedy);
            assertEquals(List.of(), after.row().byHand(), remedy);
            assertEquals(List.of(), after.row().unmet(), remedy);
            assertFalse(after.row().isSeenUneven(), remedy);
            keeps(places(after), largest);
        }
    }

    /** Hand-worked: a hole of 15.875 mm from 3 mm above a button 5 mm up ends 7.875 mm past it. */
    @Test
    void stopsAHoleThatRunsPastTheBottomEdge() {
        List<Finding> stops =
                ClosureFindings.of(Written.mm(400).count(4).from(20, 5).result(), Optional.empty())
                        .stream()
                        .filter(Finding::isStop)
                        .toList();
        assertEquals(List.of("buttonhole-past-edge"), stops.stream().map(Finding::code).toList());
        assertTrue(stops.get(0).text().contains("8 mm past the bottom edge"), stops::toString);
    }
}
