package secondbolt.pattern.piece;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.garment.Role;
import secondbolt.measure.Length;
import secondbolt.shape.Point;

/**
 * A piece of the pattern, as the maker wrote it, on its sewing line.
 *
 * @param name hers
 * @param cuts how many of it, by the role of the cloth they are cut from
 * @param fold the edge that lies on the fold, if it is drawn half
 * @param grain how it lies to the grain
 * @param seen whether it is seen in wear
 * @param lines her lengthen and shorten lines: how far from the piece's top each lies
 * @param shape drawn or taped
 * @param allowances seam allowances that differ from the pattern's, by edge
 * @param features notches, marks and darts
 */
public record Piece(
        String name,
        Map<Role, Cut> cuts,
        Optional<String> fold,
        Grain grain,
        Seen seen,
        Map<String, Length> lines,
        PieceShape shape,
        Map<String, Length> allowances,
        Features features) {
    /** Copies the maps in order. */
    public Piece {
        cuts = Collections.unmodifiableMap(new LinkedHashMap<>(cuts));
        lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
        allowances = Collections.unmodifiableMap(new LinkedHashMap<>(allowances));
    }

    /** How a piece lies to the grain. */
    public enum Grain {
        /** Its length with the grain. */
        ALONG("along"),
        /** Its length across the grain. */
        ACROSS("across"),
        /** At 45 degrees. */
        BIAS("bias"),
        /** Any way. */
        ANY("any");

        private final String word;

        Grain(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Whether a piece is seen in wear. */
    public enum Seen {
        /** It is seen. */
        OUTSIDE("outside"),
        /** It may lie on flaws for hidden use. */
        HIDDEN("hidden");

        private final String word;

        Seen(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Which hands the copies of a piece are for. */
    public enum Hands {
        /** Not told: all are cut as drawn. */
        NOT_TOLD,
        /** All as drawn, on purpose. */
        ALIKE,
        /** Every other one is the mirror image. */
        MIRRORED
    }

    /**
     * How many are cut.
     *
     * @param count in all
     * @param hands whether every other one is the mirror image
     */
    public record Cut(int count, Hands hands) {
        /** So many pairs, one of each being the mirror image. */
        public static Cut pairs(int pairs) {
            return new Cut(2 * pairs, Hands.MIRRORED);
        }

        /** Whether every other one is the mirror image. */
        public boolean mirrored() {
            return hands == Hands.MIRRORED;
        }

        /** How many, in words: {@code 3}, {@code a pair}, {@code 2 pairs}. */
        public String amount() {
            if (!mirrored()) {
                return Integer.toString(count);
            }
            return count == 2 ? "a pair" : count / 2 + " pairs";
        }

        /** As a sheet says it. */
        public String words() {
            return "cut " + amount();
        }
    }

    /**
     * What is marked on a piece.
     *
     * @param notches on its edges
     * @param marks inside
     * @param darts taken up at its edges
     * @param pleats laid at its edges
     */
    public record Features(
            List<Notch> notches, List<MarkPoint> marks, List<Dart> darts, List<Dart> pleats) {
        /** Nothing marked. */
        public static final Features NONE =
                new Features(List.of(), List.of(), List.of(), List.of());

        /** Copies the lists. */
        public Features {
            notches = List.copyOf(notches);
            marks = List.copyOf(marks);
            darts = List.copyOf(darts);
            pleats = List.copyOf(pleats);
        }
    }

    /**
     * A notch.
     *
     * @param edge on this edge
     * @param at so far along it
     * @param from from the end where it meets this edge; from its start if not told
     */
    public record Notch(String edge, Length at, Optional<String> from) {}

    /**
     * A mark inside the piece.
     *
     * @param what it marks
     * @param at where it lies, in the piece's millimetres
     */
    public record MarkPoint(String what, Point at) {}

    /**
     * A dart or a pleat.
     *
     * @param edge at this edge
     * @param at its middle, so far along the edge from its start
     * @param takes how much of the edge it takes up
     * @param deep how far a dart reaches into the piece; nothing for a pleat
     */
    public record Dart(String edge, Length at, Length takes, Length deep) {}

    /** The seam allowance of an edge: none on the fold, its own, or the pattern's. */
    public Length allowance(String edge, Length ofThePattern) {
        return fold.filter(edge::equals).isPresent()
                ? Length.ZERO
                : allowances.getOrDefault(edge, ofThePattern);
    }

    /** Whether it has an edge of this name. */
    public boolean hasEdge(String edge) {
        return shape.edgeNames().contains(edge);
    }

    /** How many are cut of a role of cloth. */
    public int copies(Role role) {
        return Optional.ofNullable(cuts.get(role)).map(Cut::count).orElse(0);
    }

    /** How many times an edge as drawn goes round the body: twice a copy if it is on a fold. */
    public int timesRoundTheBody() {
        int copies = cuts.values().stream().findFirst().map(Cut::count).orElse(0);
        return fold.isPresent() ? 2 * copies : copies;
    }

    /** How much of an edge its darts and pleats take up. */
    public Length takenFrom(String edge) {
        Length taken = Length.ZERO;
        for (List<Dart> darts : List.of(features.darts(), features.pleats())) {
            for (Dart dart : darts) {
                taken = dart.edge().equals(edge) ? taken.plus(dart.takes()) : taken;
            }
        }
        return taken;
    }

    /** The same piece under a name. */
    public Piece named(String newName) {
        return new Piece(newName, cuts, fold, grain, seen, lines, shape, allowances, features);
    }

    /** The same piece with other allowances. */
    public Piece withAllowances(Map<String, Length> newAllowances) {
        return new Piece(name, cuts, fold, grain, seen, lines, shape, newAllowances, features);
    }

    /** The same piece with another shape and other marks. */
    public Piece with(PieceShape newShape, Map<String, Length> newLines, Features newFeatures) {
        return new Piece(
                name, cuts, fold, grain, seen, newLines, newShape, allowances, newFeatures);
    }
}
