package secondbolt.closure.spacing;

/** Finds where the last fastener can come, with the first given and gaps of a band. */
final class Reach {
    private final Ground ground;
    private final int byHand;
    private final Steps steps;

    /** With so many holes by hand at the most. */
    Reach(Ground ground, int byHand, Steps steps) {
        this.ground = ground;
        this.byHand = byHand;
        this.steps = steps;
    }

    /** Where the last can come between two places, from any of these. */
    Places ends(Places from, GapBand band, int lastFrom, int lastTo) {
        Places[] now = start(from);
        for (int number = 1; number <= ground.gaps(); number++) {
            int left = ground.gaps() - number;
            long low = lastFrom - (long) left * band.wide();
            long high = lastTo - (long) left * band.narrow();
            now = next(now, number, band);
            boolean isAny = false;
            for (int used = 0; used <= byHand; used++) {
                now[used] = now[used].within(clamped(low), clamped(high));
                isAny |= !now[used].isEmpty();
            }
            if (!isAny) {
                return Places.NONE;
            }
        }
        return now[byHand];
    }

    private static int clamped(long place) {
        return (int) Math.max(Integer.MIN_VALUE / 2, Math.min(Integer.MAX_VALUE / 2, place));
    }

    /** The places of the first, by how many are worked by hand at the most. */
    private Places[] start(Places from) {
        Places[] start = new Places[byHand + 1];
        for (int used = 0; used <= byHand; used++) {
            start[used] = used > 0 ? from : from.without(ground.blocked().get(0));
        }
        return start;
    }

    private Places[] next(Places[] before, int number, GapBand band) {
        Places[] after = new Places[byHand + 1];
        Places blocked = ground.blocked().get(number);
        Places fewer = Places.NONE;
        for (int used = 0; used <= byHand; used++) {
            steps.take(8L + 4L * before[used].runs() + blocked.runs());
            Places next = before[used].next(band.narrow(), band.wide(), ground.meets());
            after[used] = next.without(blocked).and(fewer);
            fewer = next;
        }
        return after;
    }
}
