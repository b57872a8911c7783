package secondbolt.hem.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.LeftOpen;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/**
 * A hem, as the maker wrote it.
 *
 * @param on the edges it is turned up along
 * @param placedDepth finished, from the fold to where it is sewn; not told for a faced hem
 * @param turned how it is turned
 * @param garment what it is the hem of, if told
 * @param fromFloor how high above the floor its fold stands when worn, if told
 * @param hang whether it hangs out before it is levelled, if told
 * @param placedJump how far the fold of a lining stands above the garment's, if it is sewn to it
 * @param open what she wrote {@code unknown} for
 */
public record Hem(
        List<Placed<PieceEdge>> on,
        Optional<Placed<Length>> placedDepth,
        Turned turned,
        Optional<Garment> garment,
        Optional<Length> fromFloor,
        Optional<Hang> hang,
        Optional<Placed<Length>> placedJump,
        List<LeftOpen> open) {
    /** What is turned under at the raw edge of a hem turned twice. */
    public static final Convention RAW_EDGE =
            new Convention(
                    Length.ofInches(1, 4),
                    Length.ofMillimetres(6),
                    "It's Fun to Sew a Cotton School Dress, 4-H bulletin L-87");

    /** Copies the edges and checks the depth. */
    public Hem {
        on = List.copyOf(on);
        open = List.copyOf(open);
        if (placedDepth.isEmpty() && turned != Turned.FACED) {
            throw new IllegalArgumentException("depth must be told of a hem turned " + turned);
        }
    }

    /** How a hem is turned. */
    public enum Turned {
        /** Once; its raw edge is finished flat. */
        ONCE("once"),
        /** Once, its raw edge finished flat and stitched so that nothing shows outside. */
        BLIND("blind"),
        /** Once, and its raw edge turned under. */
        TWICE("twice"),
        /** Twice by the same narrow depth. */
        NARROW("narrow"),
        /** Not turned: a facing is sewn on. */
        FACED("faced");

        private final String word;

        Turned(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /**
     * Whether a garment hangs before its hem is levelled.
     *
     * <p>Two rules are published, and neither is averaged: 24 hours at least (a machine maker's
     * how-to on marking and preparing hems, for bias and circular skirts), and two or three days
     * (The New Dressmaker, 1921, for a circular skirt). That firm cloth has dropped after the one,
     * and soft or heavy cloth only after the other, is common practice, no source.
     *
     * @param first whether it does
     * @param hours how long at least; zero if it does not
     * @param mostHours how long if its cloth is soft or heavy; never less
     */
    public record Hang(boolean first, int hours, int mostHours) {
        /** As long as its cloth asks for, firm or soft. */
        public static final Hang BY_CLOTH = new Hang(true, 24, 72);

        /** That of heavy cloth. */
        public static final Hang HEAVY = new Hang(true, 48, 72);

        /** Levelled at once. */
        public static final Hang NOT = new Hang(false, 0, 0);

        /** For so many hours, as the maker says. */
        public static Hang told(int hours) {
            return new Hang(true, hours, hours);
        }

        /** How long, in words. */
        public String words() {
            if (mostHours == hours) {
                return hours + " h";
            }
            return this.equals(HEAVY)
                    ? "2 to 3 days, as its cloth is heavy"
                    : "24 h if its cloth is firm, 2 to 3 days if it is soft or heavy";
        }
    }

    /** Finished, from the fold to where it is sewn; for a faced hem how deep the facing is. */
    public Optional<Length> depth() {
        return placedDepth.map(Placed::value);
    }

    /** How far the fold of a lining stands above the garment's, if it is sewn to it. */
    public Optional<Length> jump() {
        return placedJump.map(Placed::value);
    }

    /**
     * How much cloth it needs below its fold, or below the sewing line of a faced one.
     *
     * <p>Derived: once takes its depth, stitched blind or not; twice its depth and the turn of the
     * raw edge; narrow its depth two times; a faced one is sewn in a seam.
     *
     * @param seamAllowance of that edge if it were a seam
     */
    public Length addsBelowTheFold(Length seamAllowance, Tape tape) {
        return turned == Turned.FACED ? seamAllowance : turnedUp(tape);
    }

    /** How much cloth is turned up; nothing of a faced hem. */
    public Length turnedUp(Tape tape) {
        return switch (turned) {
            case ONCE, BLIND -> depth().orElseThrow();
            case TWICE -> depth().orElseThrow().plus(RAW_EDGE.on(tape));
            case NARROW -> depth().orElseThrow().times(2);
            case FACED -> Length.ZERO;
        };
    }

    /**
     * Where the edge that is turned up lies each time it is pressed, from the fold inward: at the
     * turn of the raw edge first, if it has one, and at the depth.
     */
    public List<Length> pressingDepths(Tape tape) {
        List<Length> deep = depth().map(List::of).orElse(List.of());
        return turned == Turned.TWICE ? List.of(RAW_EDGE.on(tape), deep.get(0)) : deep;
    }

    /**
     * What it is to a closure that ends in it: bulk as deep as the finished hem. Its turned-in raw
     * edge lies inside that depth; a facing whose depth is not told is left out.
     *
     * @param name the maker's name for it
     */
    public List<TurnedUp> turnedUp(String name) {
        return depth().stream()
                .flatMap(
                        deep ->
                                edges().stream()
                                        .map(edge -> new TurnedUp("turned-up " + name, edge, deep)))
                .toList();
    }

    /** What is only taken of it until she knows, in one line; nothing if all is told. */
    public Optional<String> takenMeanwhile() {
        return LeftOpen.taken(open);
    }

    /** The edges without their places. */
    public List<PieceEdge> edges() {
        return on.stream().map(Placed::value).toList();
    }

    /** Whether it lies along this edge. */
    public boolean isOn(PieceEdge edge) {
        return edges().contains(edge);
    }
}
