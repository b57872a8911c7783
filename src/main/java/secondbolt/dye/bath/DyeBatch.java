package secondbolt.dye.bath;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.plan.Rate;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.Substance;
import secondbolt.dye.take.ClothUptake;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;
import secondbolt.task.Amount;

/**
 * One colour worked out.
 *
 * @param plan as the maker wrote it
 * @param cloths that get it
 * @param refusals why it is not done; none if it is
 * @param recipe what goes in; nothing if it is refused, or the class or a fibre is not known
 * @param bathing how it is shared out
 * @param packets how many packets, if that can be told
 * @param splitSeams pieces that meet in a seam that is seen, and lie on cloths of several baths
 */
public record DyeBatch(
        DyePlan plan,
        List<DyedCloth> cloths,
        Set<Refusal> refusals,
        Optional<Recipe> recipe,
        Bathing bathing,
        Optional<Packets> packets,
        List<PieceParts.Pair> splitSeams) {
    /** Copies the collections. */
    public DyeBatch {
        cloths = List.copyOf(cloths);
        refusals = Set.copyOf(refusals);
        splitSeams = List.copyOf(splitSeams);
    }

    /** Why a colour is not dyed as it is written. */
    public enum Refusal {
        /** The dye harms a fibre. */
        HARMS,
        /** It takes on none of the fibres of a cloth. */
        TAKES_NOWHERE,
        /** Too little of a cloth takes for a dark colour. */
        NEVER_DARK,
        /** Polyester on the stove without a packet for it. */
        NO_POLYESTER_PACKET,
        /** A vat, or a dye without a recipe for homes, and no leaflet. */
        BY_LEAFLET_ONLY,
        /** A front loader without a packet for one. */
        FRONT_LOADER,
        /** The vessel does not hold a part. */
        VESSEL;

        /** Whether nothing may be done before it is mended. */
        public boolean isStop() {
            return this != BY_LEAFLET_ONLY;
        }
    }

    /** Whether it may be begun as written. */
    public boolean mayBegin() {
        return refusals.stream().noneMatch(Refusal::isStop);
    }

    /** Whether amounts can be told. */
    public boolean isReckoned() {
        return recipe.isPresent() && !bathing.loads().isEmpty();
    }

    /** What the class does on each cloth whose fibre is known. */
    public List<ClothUptake> uptakes() {
        return cloths.stream().flatMap(cloth -> cloth.uptake().stream()).toList();
    }

    /** Whether it is this class. */
    public boolean isOf(DyeClass kind) {
        return plan.dye().kind().equals(Optional.of(kind));
    }

    /** How much of something goes into one of the baths. */
    public Optional<Amount> amount(Rate rate, Load load) {
        return rate.amount(load.takes(), load.bath(), packetsOf(load.takes()));
    }

    /** The line by which most of a thing goes in, if any does and that can be told. */
    public Optional<Amount> most(Substance what) {
        return recipe.stream()
                .flatMap(r -> r.of(what).stream())
                .filter(line -> !line.isNothing())
                .flatMap(line -> amount(line.most()).stream())
                .max(Comparator.comparingDouble(DyeBatch::gramsOrMillilitres));
    }

    /** A millilitre of vinegar weighs a gram, near enough to tell which of two is more. */
    private static double gramsOrMillilitres(Amount amount) {
        return amount.accept(
                new Amount.Visitor<>() {
                    @Override
                    public Double pieces(Amount.Pieces pieces) {
                        return (double) pieces.count();
                    }

                    @Override
                    public Double run(Amount.Run run) {
                        return run.length().millimetres();
                    }

                    @Override
                    public Double weighed(Amount.Weighed weighed) {
                        return weighed.mass().grams();
                    }

                    @Override
                    public Double liquid(Amount.Liquid liquid) {
                        return liquid.volume().millilitres();
                    }
                });
    }

    /** How much of something all baths take. */
    public Optional<Amount> amount(Rate rate) {
        Mass takes = bathing.takes().orElse(Mass.ZERO);
        Optional<Volume> bath = bathing.bath();
        return bath.flatMap(b -> rate.amount(takes, b, packetsOf(takes)));
    }

    private Optional<Share> packetsOf(Mass takes) {
        Mass all = bathing.takes().orElse(Mass.ZERO);
        return packets.filter(p -> all.isPositive())
                .map(p -> Share.ofRatio(p.most(), 1).times(takes.of(all)));
    }
}
