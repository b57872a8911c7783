package secondbolt.dye.bath;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.plan.DyePlan.Machine;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.Tender;
import secondbolt.dye.take.ClothUptake;
import secondbolt.file.value.Placed;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/** Works one colour out. */
public final class DyeCalculation {
    /**
     * How many times the dry cloth's mass a bath has, if it is not told. Source: dyer's instruction
     * sheet, cool-water reactive dye (2 to 3 l to 100 g); laboratory note on direct dye (20 : 1).
     */
    public static final Share USUAL_RATIO = Share.ofRatio(20, 1);

    /** What a top loader takes, dry. Source: a dyer's reference site, answers: 8 lb. */
    public static final Mass TOP_LOADER = Mass.parse("8 lb").orThrow();

    /** How much water a top loader has at least to the dry cloth; derived from 45 l to 3 kg. */
    private static final Share TOP_LOADER_RATIO = Share.ofRatio(15, 1);

    private final DyePlan plan;
    private final DyeInput input;
    private final List<DyedCloth> cloths;

    private DyeCalculation(DyePlan plan, DyeInput input) {
        this.plan = plan;
        this.input = input;
        this.cloths = input.named(plan.names()).stream().map(this::dyed).toList();
    }

    private DyedCloth dyed(ClothResult cloth) {
        DyedCloth plain = new DyedCloth(cloth, Optional.empty());
        Optional<ClothUptake> uptake =
                plan.dye()
                        .kind()
                        .flatMap(kind -> plain.fibre().map(fibre -> ClothUptake.of(kind, fibre)));
        return new DyedCloth(cloth, uptake);
    }

    /** Works out a colour. */
    public static DyeBatch work(DyePlan plan, DyeInput input) {
        return new DyeCalculation(plan, input).batch();
    }

    private DyeBatch batch() {
        Bathing bathing = bathing();
        Set<DyeBatch.Refusal> refusals = DyeRefusals.of(plan, cloths);
        bathing.tooLarge().ifPresent(part -> refusals.add(DyeBatch.Refusal.VESSEL));
        boolean isKnown =
                !cloths.isEmpty() && cloths.stream().allMatch(c -> c.uptake().isPresent());
        Optional<Recipe> recipe =
                plan.dye()
                        .kind()
                        .filter(kind -> isKnown && refusals.isEmpty())
                        .map(kind -> Recipe.of(plan, kind, tender()));
        Optional<Packets> packets =
                plan.dye()
                        .kind()
                        .filter(kind -> isKnown)
                        .flatMap(
                                kind ->
                                        bathing.takes()
                                                .filter(Mass::isPositive)
                                                .flatMap(takes -> Packets.of(plan, kind, takes)));
        return new DyeBatch(
                plan, cloths, refusals, recipe, bathing, packets, splitSeams(bathing.loads()));
    }

    private Tender tender() {
        return Tender.of(cloths.stream().flatMap(cloth -> cloth.fibre().stream()).toList());
    }

    private Share ratio() {
        return plan.leaflet().ratio().or(() -> plan.bath().ratio()).orElse(USUAL_RATIO);
    }

    private Bathing bathing() {
        List<Part> parts = new DyeParts(plan, cloths, input.pieces()).parts();
        boolean isFront = plan.bath().machine().equals(Optional.of(Machine.FRONT_LOADER));
        boolean isTop = plan.bath().machine().equals(Optional.of(Machine.TOP_LOADER));
        Optional<Volume> vessel = plan.bath().vessel().map(Placed::value);
        if (parts.isEmpty() || isFront || (isTop && vessel.isEmpty())) {
            return new Bathing(ratio(), parts, List.of(), Optional.empty());
        }
        Mass most = vessel.map(v -> holds(v, isTop)).orElse(Load.sum(parts, Part::dry));
        Part largest = parts.stream().max(Comparator.comparing(Part::dry)).orElseThrow();
        if (largest.dry().compareTo(most) > 0) {
            Bathing.TooLarge tooLarge =
                    new Bathing.TooLarge(
                            largest, bath(largest.dry(), isTop ? TOP_LOADER_RATIO : ratio()));
            return new Bathing(ratio(), parts, List.of(), Optional.of(tooLarge));
        }
        List<Load> loads =
                Loads.of(parts, most).stream()
                        .map(load -> load(load, isTop ? vessel : Optional.empty()))
                        .toList();
        return new Bathing(ratio(), parts, loads, Optional.empty());
    }

    private Mass holds(Volume vessel, boolean isTop) {
        Mass held = Loads.holds(vessel.of(Volume.LITRE), isTop ? TOP_LOADER_RATIO : ratio());
        return isTop && held.compareTo(TOP_LOADER) > 0 ? TOP_LOADER : held;
    }

    private Load load(List<Part> parts, Optional<Volume> filled) {
        return new Load(parts, filled.orElseGet(() -> bath(Load.sum(parts, Part::dry), ratio())));
    }

    private static Volume bath(Mass dry, Share ratio) {
        return Volume.LITRE.times(dry.of(Mass.KILOGRAM)).times(ratio);
    }

    /** Cloths of one bath each go into pieces that may meet in a seam. */
    private List<PieceParts.Pair> splitSeams(List<Load> loads) {
        if (loads.size() < 2 || plan.whenOrBefore() != DyePlan.When.BEFORE_CUTTING) {
            return List.of();
        }
        return input.pieces().seen().stream()
                .filter(pair -> baths(pair, loads).size() > 1)
                .toList();
    }

    private Set<Integer> baths(PieceParts.Pair pair, List<Load> loads) {
        return Stream.of(pair.first(), pair.second())
                .flatMap(piece -> input.laidOn().getOrDefault(piece, Set.of()).stream())
                .flatMap(cloth -> bath(cloth, loads).stream())
                .collect(Collectors.toSet());
    }

    private static Optional<Integer> bath(String cloth, List<Load> loads) {
        for (int i = 0; i < loads.size(); i++) {
            if (loads.get(i).parts().stream().anyMatch(part -> part.name().equals(cloth))) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }
}
