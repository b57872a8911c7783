package secondbolt.closure.spacing;

import java.util.Arrays;
import java.util.List;

/** A set of places, kept as runs of neighbours in order, so that it is small however long it is. */
final class Places {
    static final Places NONE = new Places(new int[0]);

    /** The first and the last of each run, one after the other; no two runs touch. */
    private final int[] ends;

    private Places(int[] ends) {
        this.ends = ends;
    }

    /** All from one to another; none if they are the wrong way round. */
    static Places of(int from, int to) {
        return from > to ? NONE : new Places(new int[] {from, to});
    }

    /** All that lie in any of these, between two places. */
    static Places of(List<Zone> zones, int from, int to) {
        Gathered all = new Gathered(zones.size());
        zones.stream()
                .sorted((a, b) -> Integer.compare(a.from(), b.from()))
                .forEach(zone -> all.add(Math.max(from, zone.from()), Math.min(to, zone.to())));
        return all.places();
    }

    boolean isEmpty() {
        return ends.length == 0;
    }

    /** How many runs there are. */
    int runs() {
        return ends.length / 2;
    }

    int from(int run) {
        return ends[2 * run];
    }

    int to(int run) {
        return ends[2 * run + 1];
    }

    boolean holds(int place) {
        int at = Arrays.binarySearch(ends, place);
        return at >= 0 || (-at - 1) % 2 == 1;
    }

    /**
     * Where the next fastener can be if one is here.
     *
     * @param narrow the narrowest gap
     * @param wide the widest gap
     * @param meets places that may not be passed, rising
     */
    Places next(int narrow, int wide, List<Integer> meets) {
        Gathered next = new Gathered(runs() + meets.size());
        int ahead = 0;
        for (int run = 0; run < runs(); run++) {
            int from = from(run);
            while (from <= to(run)) {
                while (ahead < meets.size() && meets.get(ahead) <= from) {
                    ahead++;
                }
                int meet = ahead < meets.size() ? meets.get(ahead) : Integer.MAX_VALUE;
                int to = Math.min(to(run), meet - 1);
                next.add(from + narrow, Math.min(to + wide, meet));
                from = to + 1;
            }
        }
        return next.places();
    }

    /** Those of these that lie between two places. */
    Places within(int from, int to) {
        if (isEmpty() || (ends[0] >= from && ends[ends.length - 1] <= to)) {
            return this;
        }
        Gathered within = new Gathered(runs());
        for (int run = 0; run < runs(); run++) {
            within.add(Math.max(from, from(run)), Math.min(to, to(run)));
        }
        return within.places();
    }

    /** These without others. */
    Places without(Places others) {
        if (isEmpty() || others.isEmpty()) {
            return this;
        }
        Gathered left = new Gathered(runs() + others.runs());
        int other = 0;
        for (int run = 0; run < runs(); run++) {
            int from = from(run);
            while (other < others.runs() && others.to(other) < from) {
                other++;
            }
            for (int in = other; in < others.runs() && others.from(in) <= to(run); in++) {
                left.add(from, others.from(in) - 1);
                from = others.to(in) + 1;
            }
            left.add(from, to(run));
        }
        return left.places();
    }

    /** These and others. */
    Places and(Places others) {
        if (isEmpty() || others.isEmpty()) {
            return isEmpty() ? others : this;
        }
        Gathered all = new Gathered(runs() + others.runs());
        int here = 0;
        int there = 0;
        while (here < runs() || there < others.runs()) {
            boolean isHere =
                    there == others.runs() || (here < runs() && from(here) <= others.from(there));
            if (isHere) {
                all.add(from(here), to(here));
                here++;
            } else {
                all.add(others.from(there), others.to(there));
                there++;
            }
        }
        return all.places();
    }

    /** The same seen from the other end: each place with the opposite sign. */
    Places mirrored() {
        int[] other = new int[ends.length];
        for (int i = 0; i < ends.length; i++) {
            other[ends.length - 1 - i] = -ends[i];
        }
        return new Places(other);
    }

    /** Gathers runs whose beginnings rise. */
    private static final class Gathered {
        private final int[] ends;
        private int size;

        Gathered(int runs) {
            ends = new int[2 * runs];
        }

        void add(int from, int to) {
            if (from > to) {
                return;
            }
            if (size > 0 && from - 1 <= ends[size - 1]) {
                ends[size - 1] = Math.max(ends[size - 1], to);
            } else {
                ends[size++] = from;
                ends[size++] = to;
            }
        }

        Places places() {
            return size == 0 ? NONE : new Places(Arrays.copyOf(ends, size));
        }
    }
}
