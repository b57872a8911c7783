package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.placement.Container;
import secondbolt.lay.plan.Lies;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Region;

/**
 * A cloth as it is spread for cutting, trimmed and washed, without what is cut from it already. In
 * millimetres from its left edge, or from its fold, and from its top.
 *
 * @param cloth which cloth; nothing if it is one from the bolt
 * @param isOneWay whether all pieces must lie the same way up
 * @param repeat how its pattern repeats
 * @param fold how far from its left edge it is folded, if it is; its right side is up then
 * @param whole all of it; folded, where both layers are
 * @param sound where any piece may lie
 * @param soundForHidden where pieces may lie that are hidden in wear
 * @param kept features that the edge of a piece is made of
 * @param cuts what is cut already
 */
public record SpreadCloth(
        Optional<ClothResult> cloth,
        boolean isOneWay,
        ClothYield.Repeat repeat,
        Optional<Length> fold,
        Region whole,
        Region sound,
        Region soundForHidden,
        List<ClothYield.Kept> kept,
        Cuts cuts) {
    /** How far beyond the fold the search lets a piece on it reach, since it takes it for wider. */
    private static final double OVER_FOLD_MM = 5;

    /** How far beyond the edge of the cloth it lets a piece reach whose edge lies on that. */
    private static final double OVER_EDGE_MM = 1;

    /** Copies the features. */
    public SpreadCloth {
        kept = List.copyOf(kept);
    }

    /**
     * What is cut already.
     *
     * @param holes where copies were cut out
     * @param spoilt where a spoilt piece lies, from which others may be cut
     */
    public record Cuts(List<Hole> holes, List<Region> spoilt) {
        /** Nothing. */
        public static final Cuts NONE = new Cuts(List.of(), List.of());

        /** Copies the lists. */
        public Cuts {
            holes = List.copyOf(holes);
            spoilt = List.copyOf(spoilt);
        }
    }

    /**
     * Where one copy was cut out, or two at once.
     *
     * @param words the copy as a plan names it
     * @param lies how it lay
     * @param region where
     */
    public record Hole(String words, Lies lies, Region region) {}

    /** A cloth in a single layer; its size and shrinkage must be known. */
    static SpreadCloth single(ClothResult cloth, CuttingProgress progress) {
        return single(cloth, progress.cuts(cloth.name())).without(progress.gone(cloth.name()));
    }

    private static SpreadCloth single(ClothResult cloth, Cuts cuts) {
        ClothYield yielded = cloth.finished().orElseThrow();
        return new SpreadCloth(
                Optional.of(cloth),
                cloth.cloth().textile().isLaidOneWay(),
                yielded.repeat(),
                Optional.empty(),
                yielded.whole(),
                yielded.sound(),
                yielded.soundForHidden(),
                yielded.kept(),
                cuts);
    }

    /** This, where no piece may lie in a part of it. */
    SpreadCloth without(Region part) {
        return part.isEmpty()
                ? this
                : new SpreadCloth(
                        cloth,
                        isOneWay,
                        repeat,
                        fold,
                        whole,
                        sound.minus(part),
                        soundForHidden.minus(part),
                        kept.stream()
                                .map(
                                        k ->
                                                new ClothYield.Kept(
                                                        k.what(),
                                                        k.edge(),
                                                        k.strip(),
                                                        k.sound().minus(part)))
                                .toList(),
                        cuts);
    }

    /** This as it would be if nothing were cut from it; of a cloth that is there. */
    SpreadCloth uncut() {
        SpreadCloth single = single(cloth.orElseThrow(), Cuts.NONE);
        return fold.isPresent() ? single.folded() : single;
    }

    /** A part of the cloth laid out single as it lies when it is spread: in either layer. */
    Region asSpread(Region part) {
        return fold.map(at -> asSpread(part, at)).orElse(part);
    }

    private static Region asSpread(Region part, Length fold) {
        if (part.isEmpty()) {
            return part;
        }
        Region moved = part.moved(-fold.millimetres(), 0);
        Region both = moved.with(moved.scaled(-1, 1));
        return both.intersection(rightOf(both, 0));
    }

    /** A sound cloth from the bolt, so wide and so long, with the pattern and nap of another. */
    public static SpreadCloth fromBolt(Length width, double lengthMm, Optional<SpreadCloth> like) {
        Region whole = Region.of(new Box(0, 0, width.millimetres(), lengthMm));
        return new SpreadCloth(
                Optional.empty(),
                like.map(SpreadCloth::isOneWay).orElse(false),
                like.map(SpreadCloth::repeat).orElse(ClothYield.Repeat.NONE),
                Optional.empty(),
                whole,
                whole,
                whole,
                List.of(),
                Cuts.NONE);
    }

    /** How far from its left edge a cloth is folded, if it is: in the middle. */
    static Length foldOf(Region whole) {
        return Length.ofComputedMillimetres(whole.box().middle().xMm());
    }

    /** This folded in the middle of its width: a flaw of either layer is one of both. */
    public SpreadCloth folded() {
        Length at = foldOf(whole);
        double foldMm = at.millimetres();
        return new SpreadCloth(
                cloth,
                isOneWay,
                repeat,
                Optional.of(at),
                bothLayers(whole, foldMm),
                bothLayers(sound, foldMm),
                bothLayers(soundForHidden, foldMm),
                List.of(),
                new Cuts(
                        cuts.holes().stream()
                                .map(h -> new Hole(h.words(), h.lies(), asSpread(h.region(), at)))
                                .toList(),
                        cuts.spoilt().stream().map(piece -> asSpread(piece, at)).toList()));
    }

    /** This with so much more sound cloth of its full width below. */
    SpreadCloth longer(double byMm) {
        return new SpreadCloth(
                cloth,
                isOneWay,
                repeat,
                fold,
                longer(whole, byMm),
                longer(sound, byMm),
                longer(soundForHidden, byMm),
                kept,
                cuts);
    }

    private Region longer(Region region, double byMm) {
        Box box = soundForHidden.box();
        return region.with(Region.of(new Box(box.leftMm(), box.bottomMm(), box.widthMm(), byMm)));
    }

    private static Region bothLayers(Region region, double foldMm) {
        Region above = region.moved(-foldMm, 0);
        Region both = above.intersection(above.scaled(-1, 1));
        return both.isEmpty() ? both : both.intersection(rightOf(both, 0));
    }

    private static Region rightOf(Region region, double leftMm) {
        Box box = region.box();
        return Region.of(new Box(leftMm, box.topMm(), box.rightMm() - leftMm, box.heightMm()));
    }

    /** Its name; empty if it is from the bolt. */
    public String name() {
        return cloth.map(ClothResult::name).orElse("");
    }

    /** Whether any piece could lie on it. */
    boolean isUsable() {
        return !soundForHidden.isEmpty();
    }

    /** How much of it is sound, all layers together. */
    double soundAreaMm2() {
        return sound.areaMm2() * (fold.isPresent() ? 2 : 1);
    }

    /**
     * This cloth as a container of the search. Its grades are: where any piece may lie, where
     * hidden pieces may lie, and for each kept edge, where the pieces with that edge may lie.
     *
     * @param edges the kept edges of all cloths of its stock
     */
    Container container(List<PieceEdge> edges) {
        List<Region> grades = new ArrayList<>(List.of(overFold(sound), overFold(soundForHidden)));
        for (PieceEdge edge : edges) {
            Region grade = sound;
            for (ClothYield.Kept feature : kept) {
                if (feature.edge().equals(edge)) {
                    grade = grade.with(feature.sound()).with(overEdge(feature.strip()));
                }
            }
            grades.add(grade);
        }
        return new Container(grades);
    }

    private Region overFold(Region region) {
        if (fold.isEmpty() || region.isEmpty()) {
            return region;
        }
        Region both = region.with(region.scaled(-1, 1));
        return both.intersection(rightOf(both, -OVER_FOLD_MM));
    }

    private static Region overEdge(Box strip) {
        boolean level = strip.widthMm() >= strip.heightMm();
        double across = level ? 0 : OVER_EDGE_MM;
        double along = level ? OVER_EDGE_MM : 0;
        return Region.of(
                new Box(
                        strip.leftMm() - across,
                        strip.topMm() - along,
                        strip.widthMm() + 2 * across,
                        strip.heightMm() + 2 * along));
    }
}
