package secondbolt.cloth.yields;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.fault.Fault;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Area;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.shape.Box;
import secondbolt.shape.ClearRectangles;
import secondbolt.shape.Point;
import secondbolt.shape.Region;
import secondbolt.textile.Cloth;
import secondbolt.textile.Prewash;
import secondbolt.textile.Textile;
import secondbolt.textile.extent.Extent;
import secondbolt.textile.extent.Flaw;

/**
 * Works out what a cloth yields: trimmed, then drawn in by the wash, then without its flaws.
 *
 * <p>Places on the cloth follow its threads: they draw in with it, each way by its own share. What
 * is kept clear round a flaw is added on the finished cloth.
 */
public final class ClothCalculation {
    private static final int MOST_RECTANGLES = 5;

    /** A smaller piece is listed no more (our own choice, no source). */
    private static final double LEAST_SIDE_MM = 100;

    private ClothCalculation() {}

    /** Works out each cloth, in the maker's order. */
    public static List<ClothResult> work(Map<String, Cloth> cloths) {
        return cloths.entrySet().stream()
                .map(e -> Fault.during(e.getKey(), () -> work(e.getKey(), e.getValue())))
                .toList();
    }

    /** Works out one cloth. */
    public static ClothResult work(String name, Cloth cloth) {
        AcrossAlong<Optional<Share>> left = cloth.prewash().orElseGet(Prewash.Done::new).left();
        Optional<Extent> extent = cloth.extent().toOptional();
        AcrossAlong<Share> unchanged = new AcrossAlong<>(Share.WHOLE, Share.WHOLE);
        Optional<ClothYield> measured = extent.map(e -> worked(cloth, e, unchanged));
        Optional<ClothYield> finished =
                both(left).equals(Optional.of(unchanged))
                        ? measured
                        : extent.flatMap(e -> both(left).map(share -> worked(cloth, e, share)));
        return new ClothResult(
                name, cloth, left, measured, finished, heaviness(cloth, measured, both(left)));
    }

    /** What to cut so that a length is left after the wash. */
    public static Length cutFor(Length finished, Share left) {
        return finished.dividedBy(left);
    }

    private static Optional<AcrossAlong<Share>> both(AcrossAlong<Optional<Share>> left) {
        return left.across().flatMap(a -> left.along().map(b -> new AcrossAlong<>(a, b)));
    }

    private static ClothYield worked(Cloth cloth, Extent extent, AcrossAlong<Share> left) {
        Placing placing = Placing.of(cloth, extent, left);
        ClothYield.Soundness soundness = soundness(cloth, extent, placing);
        Region sound = soundness.sound().region();
        AcrossAlong<Length> size = extent.trimmedSize(cloth.edging().trim());
        return new ClothYield(
                placing,
                new AcrossAlong<>(
                        size.across().times(left.across()), size.along().times(left.along())),
                soundness,
                kept(cloth, placing, soundness.whole().region(), sound),
                repeat(cloth.textile().repeat(), placing),
                ClearRectangles.greedy(sound, MOST_RECTANGLES, LEAST_SIDE_MM),
                lengths(soundness.sound()));
    }

    private static ClothYield.Soundness soundness(Cloth cloth, Extent extent, Placing placing) {
        Region whole = placing.finished(extent.trimmed(cloth.edging().trim()));
        List<Region> all = new ArrayList<>();
        List<Region> unsound = new ArrayList<>();
        for (Flaw flaw : cloth.condition().flaws()) {
            Region grown = placing.finished(flaw.patch(), cloth.condition().clearOrZero());
            all.add(grown);
            if (flaw.kind() != Flaw.Kind.HIDDEN_USE) {
                unsound.add(grown);
            }
        }
        Region keptClear = Region.union(all);
        Surface sound = Surface.of(whole.minus(keptClear));
        boolean noneHidden = unsound.size() == all.size();
        return new ClothYield.Soundness(
                Surface.of(whole),
                keptClear.intersection(whole),
                sound,
                noneHidden ? sound : Surface.of(whole.minus(Region.union(unsound))));
    }

    /** What is kept clear round a feature is sound for the piece that is made of it. */
    private static List<ClothYield.Kept> kept(
            Cloth cloth, Placing placing, Region whole, Region sound) {
        Length clear = cloth.condition().clearOrZero();
        List<ClothYield.Kept> kept = new ArrayList<>();
        for (Flaw feature : cloth.condition().flaws()) {
            if (feature.keptFor().isEmpty()) {
                continue;
            }
            List<Region> others = new ArrayList<>();
            for (Flaw other : cloth.condition().flaws()) {
                if (!edge(other).equals(edge(feature))) {
                    others.add(placing.finished(other.patch(), clear));
                }
            }
            kept.add(
                    new ClothYield.Kept(
                            feature.what(),
                            edge(feature).orElseThrow(),
                            placing.drawnIn(feature.patch()).box(),
                            sound.with(whole.minus(Region.union(others)))));
        }
        return kept;
    }

    private static Optional<PieceEdge> edge(Flaw feature) {
        return feature.keptFor().map(Placed::value);
    }

    private static ClothYield.Repeat repeat(Textile.Repeat repeat, Placing placing) {
        return new ClothYield.Repeat(
                repeat.across()
                        .map(l -> l.times(placing.share().across()).millimetres())
                        .orElse(0.0),
                repeat.along().map(l -> l.times(placing.share().along()).millimetres()).orElse(0.0),
                repeat.begins()
                        .map(
                                at ->
                                        placing.finished(
                                                new Point(
                                                        at.across().millimetres(),
                                                        at.along().millimetres()))));
    }

    private static List<ClothYield.EquivalentLength> lengths(Surface sound) {
        List<Double> widths =
                BoltWidth.COMMON.stream().map(bolt -> bolt.cuttable().millimetres()).toList();
        List<Optional<Box>> runs = ClearRectangles.longestRuns(sound.region(), widths);
        List<ClothYield.EquivalentLength> lengths = new ArrayList<>();
        for (int i = 0; i < widths.size(); i++) {
            BoltWidth bolt = BoltWidth.COMMON.get(i);
            lengths.add(
                    new ClothYield.EquivalentLength(
                            bolt, sound.area().dividedBy(bolt.cuttable()), runs.get(i)));
        }
        return lengths;
    }

    private static ClothResult.Heaviness heaviness(
            Cloth cloth, Optional<ClothYield> measured, Optional<AcrossAlong<Share>> left) {
        Optional<Area> area = cloth.extent().toOptional().map(Extent::area);
        Optional<ClothWeight> told = cloth.textile().weight().flatMap(Answer::toOptional);
        Optional<Mass> weighed = cloth.textile().mass().flatMap(Answer::toOptional);
        Optional<ClothWeight> weight = told.or(() -> weighed.flatMap(mass -> area.map(mass::over)));
        Optional<Mass> mass = weighed.or(() -> weight.flatMap(w -> area.map(w::times)));
        return new ClothResult.Heaviness(
                mass,
                weight.flatMap(w -> measured.map(m -> w.times(m.wholeArea()))),
                weight,
                weight.flatMap(w -> left.map(l -> w.dividedBy(l.across().times(l.along())))));
    }
}
