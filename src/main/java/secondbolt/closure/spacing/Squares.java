package secondbolt.closure.spacing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The smallest sums of squared gaps of the rows of a band with the same first place, by dynamic
 * programming over the places that such a row can have, and by how many are worked by hand.
 */
final class Squares {
    private final Ground ground;
    private final GapBand band;
    private final int byHand;
    private final int first;
    private final int lastFrom;
    private final int lastTo;
    private final Steps steps;

    /** From one place to the last ones from one place to another. */
    Squares(
            Ground ground,
            GapBand band,
            int byHand,
            int first,
            int lastFrom,
            int lastTo,
            Steps steps) {
        this.ground = ground;
        this.band = band;
        this.byHand = byHand;
        this.first = first;
        this.lastFrom = lastFrom;
        this.lastTo = lastTo;
        this.steps = steps;
    }

    /** The sums up to one fastener, by its place, and the places of the one before it. */
    static final class Level {
        private final int from;
        private long[] sums;
        private final int[] before;

        Level(int from, int to) {
            this.from = from;
            this.sums = new long[Math.max(0, to - from + 1)];
            this.before = new int[sums.length];
            Arrays.fill(sums, Nearest.NEVER);
        }

        int from() {
            return from;
        }

        int to() {
            return from + before.length - 1;
        }

        int width() {
            return before.length;
        }

        /** Keeps the places alone, which take less room. */
        void forgetSums() {
            sums = new long[0];
        }

        long sum(int place) {
            return place < from || place > to() ? Nearest.NEVER : sums[place - from];
        }

        void put(int place, long sum, int previous) {
            sums[place - from] = sum;
            before[place - from] = previous;
        }
    }

    /** The sums of whole rows, by the last place. */
    Level sums() {
        Level[] now = start();
        for (int number = 1; number <= ground.gaps(); number++) {
            now = next(now, number);
        }
        return now[byHand];
    }

    /** The row with the smallest sum that ends at the last place. */
    List<Integer> row() {
        List<Level[]> all = new ArrayList<>();
        all.add(start());
        for (int number = 1; number <= ground.gaps(); number++) {
            Level[] before = all.get(number - 1);
            all.add(next(before, number));
            Arrays.stream(before).forEach(Level::forgetSums);
        }
        List<Integer> places = new ArrayList<>();
        int place = lastTo;
        int used = byHand;
        for (int number = ground.gaps(); number > 0; number--) {
            places.add(place);
            int previous = all.get(number)[used].before[place - all.get(number)[used].from];
            used -= ground.blocked().get(number).holds(place) ? 1 : 0;
            place = previous;
        }
        places.add(place);
        Collections.reverse(places);
        return places;
    }

    private Level empty(int number) {
        int left = ground.gaps() - number;
        long from =
                Math.max(
                        first + (long) number * band.narrow(),
                        lastFrom - (long) left * band.wide());
        long to =
                Math.min(first + (long) number * band.wide(), lastTo - (long) left * band.narrow());
        return from > to ? new Level(0, -1) : new Level((int) from, (int) to);
    }

    private Level[] levels(int number) {
        Level[] levels = new Level[byHand + 1];
        Level none = new Level(0, -1);
        for (int used = 0; used <= byHand; used++) {
            boolean isUse = used <= number + 1 && used >= byHand - (ground.gaps() - number);
            levels[used] = isUse ? empty(number) : none;
        }
        return levels;
    }

    private Level[] start() {
        Level[] start = levels(0);
        int hand = ground.blocked().get(0).holds(first) ? 1 : 0;
        if (hand <= byHand && start[hand].width() > 0) {
            start[hand].put(first, 0, first);
        }
        return start;
    }

    private Level[] next(Level[] before, int number) {
        Level[] after = levels(number);
        for (int used = 0; used <= byHand; used++) {
            if (before[used].width() > 0) {
                follow(before[used], after, used, number);
            }
        }
        return after;
    }

    private void follow(Level before, Level[] after, int used, int number) {
        Level reached = empty(number);
        steps.take(16L + 4L * before.width() + 4L * reached.width());
        Nearest nearest = new Nearest(before, reached, band);
        int from = before.from();
        for (int meet : ground.meets()) {
            if (meet > from) {
                nearest.between(from, Math.min(before.to(), meet - 1), meet);
                from = Math.max(from, meet);
            }
        }
        nearest.between(from, before.to(), Integer.MAX_VALUE);
        Places blocked = ground.blocked().get(number);
        for (int place = reached.from(); place <= reached.to(); place++) {
            if (reached.sum(place) < Nearest.NEVER) {
                int hand = used + (blocked.holds(place) ? 1 : 0);
                if (hand <= byHand && after[hand].width() > 0) {
                    after[hand].put(
                            place, reached.sum(place), reached.before[place - reached.from]);
                }
            }
        }
    }
}
