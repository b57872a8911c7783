package secondbolt.cloth.yields;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.AcrossAlong;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * What a cloth yields once it is trimmed, and washed if its shrinkage is known.
 *
 * <p>Regions and boxes are in millimetres from its left top corner, across and along.
 *
 * @param placing where its places lay on the cloth as measured
 * @param size across and along; along is the shorter side of a slanted cloth
 * @param soundness how much of it is sound
 * @param kept the features that the edge of a piece is made of
 * @param repeat how its pattern repeats
 * @param rectangles the largest clear rectangle, then the largest beside it, and so on
 * @param lengths what it comes to as cloth from a bolt, for each common width
 */
public record ClothYield(
        Placing placing,
        AcrossAlong<Length> size,
        Soundness soundness,
        List<Kept> kept,
        Repeat repeat,
        List<Box> rectangles,
        List<EquivalentLength> lengths) {
    /** Copies the lists. */
    public ClothYield {
        kept = List.copyOf(kept);
        rectangles = List.copyOf(rectangles);
        lengths = List.copyOf(lengths);
    }

    /**
     * How much of it is sound.
     *
     * @param whole all of it
     * @param keptClear what no piece may lie on: flaws and features with what is kept clear round
     *     them
     * @param sound the rest
     * @param soundForHidden the rest for pieces that are hidden in the finished garment
     */
    public record Soundness(
            Surface whole, Region keptClear, Surface sound, Surface soundForHidden) {}

    /**
     * A feature that the edge of a piece is made of.
     *
     * @param what in the maker's words
     * @param edge of a piece
     * @param strip where it lies
     * @param sound where that piece may lie: the sound cloth and the feature
     */
    public record Kept(String what, PieceEdge edge, Box strip, Region sound) {}

    /**
     * How a pattern repeats, in millimetres.
     *
     * @param acrossMm from one to the next; zero if it does not repeat across
     * @param alongMm likewise along
     * @param begins where one begins, if told
     */
    public record Repeat(double acrossMm, double alongMm, Optional<Point> begins) {
        /** A plain cloth. */
        public static final Repeat NONE = new Repeat(0, 0, Optional.empty());

        /** Whether it repeats at all. */
        public boolean isAny() {
            return acrossMm > 0 || alongMm > 0;
        }
    }

    /**
     * What it comes to as cloth of one width from a bolt.
     *
     * <p>The length by area says how much cloth there is, not what can be cut from it; the clear
     * run is a piece really there.
     *
     * @param bolt the width
     * @param byArea the sound area divided by what of the width is between the selvages
     * @param clearRun the longest clear rectangle along that is as wide; none if there is none so
     *     wide
     */
    public record EquivalentLength(BoltWidth bolt, Length byArea, Optional<Box> clearRun) {
        /** How long the clear run is; nothing if there is none so wide. */
        public Length clearRunOrZero() {
            return clearRun.map(box -> Length.ofComputedMillimetres(box.heightMm()))
                    .orElse(Length.ZERO);
        }
    }

    /** All of it. */
    public Region whole() {
        return soundness.whole().region();
    }

    /** What no piece may lie on. */
    public Region keptClear() {
        return soundness.keptClear();
    }

    /** What is sound. */
    public Region sound() {
        return soundness.sound().region();
    }

    /** What is sound, or good enough for hidden pieces. */
    public Region soundForHidden() {
        return soundness.soundForHidden().region();
    }

    /** How much there is of it in all. */
    public Area wholeArea() {
        return soundness.whole().area();
    }

    /** How much is sound. */
    public Area soundArea() {
        return soundness.sound().area();
    }

    /** How much is sound, or good enough for hidden pieces. */
    public Area soundForHiddenArea() {
        return soundness.soundForHidden().area();
    }

    /** How much is not sound, with what is kept clear round it. */
    public Area flawedArea() {
        return wholeArea().minus(soundArea());
    }
}
