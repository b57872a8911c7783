package secondbolt.closure.placket;

import java.util.List;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.file.source.Place;
import secondbolt.file.value.LeftOpen;
import secondbolt.hem.plan.TurnedUp;
import secondbolt.measure.Length;

/**
 * A closure, as the maker wrote it.
 *
 * @param placket where it lies, from its finished top edge to its finished bottom edge
 * @param fastening what it closes with
 * @param spread how many, and how they are spread
 * @param overlap how its sides lie over each other
 * @param places where it is written, for checks that look further
 * @param open what she wrote {@code unknown} for
 */
public record Closure(
        Placket placket,
        Fastening fastening,
        FastenerSpread spread,
        Overlap overlap,
        Places places,
        List<LeftOpen> open) {
    /** Copies what is open. */
    public Closure {
        open = List.copyOf(open);
    }

    /**
     * Where a closure is written.
     *
     * @param count the count, or what stands for it
     * @param first the first one's distance
     * @param last the last one's distance
     */
    public record Places(Place count, Place first, Place last) {
        /** A line put in above moves them all, and changes nothing. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Places;
        }

        @Override
        public int hashCode() {
            return 0;
        }
    }

    /** The same closure on a pattern on which this is turned up. */
    public Closure with(List<TurnedUp> turned) {
        return new Closure(placket.with(turned), fastening, spread, overlap, places, open);
    }

    /** The same closure with its fasteners spread otherwise. */
    public Closure with(FastenerSpread other) {
        return new Closure(placket, fastening, other, overlap, places, open);
    }

    /** From the centre line to the finished edge. */
    public Length extension() {
        return overlap.extension();
    }

    /** Whether one side lies over the other; hooks and ties may meet edge to edge. */
    public boolean isLapped() {
        return fastening.kind() == Fastening.Kind.BUTTONS
                || fastening.kind() == Fastening.Kind.SNAPS
                || overlap.extension().isPositive();
    }

    /** Whether most holes run along the centre line. */
    public boolean isUpright() {
        return fastening.holes() == Fastening.Holes.UPRIGHT;
    }
}
