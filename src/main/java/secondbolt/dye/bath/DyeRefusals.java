package secondbolt.dye.bath;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.dye.bath.DyeBatch.Refusal;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.plan.DyePlan.Machine;
import secondbolt.dye.take.ClothUptake;

/** Why a colour is not dyed as it is written. */
final class DyeRefusals {
    private DyeRefusals() {}

    /** All reasons but the vessel's; none if there is none. */
    static Set<Refusal> of(DyePlan plan, List<DyedCloth> cloths) {
        Set<Refusal> refusals = EnumSet.noneOf(Refusal.class);
        cloths.stream()
                .flatMap(cloth -> cloth.uptake().stream())
                .forEach(uptake -> refusals.addAll(of(plan, uptake)));
        if (plan.dye().kind().filter(kind -> needsLeaflet(plan, kind)).isPresent()) {
            refusals.add(Refusal.BY_LEAFLET_ONLY);
        }
        if (plan.bath().machine().equals(Optional.of(Machine.FRONT_LOADER))
                && plan.packet().filter(DyePlan.Packet::isForMachine).isEmpty()) {
            refusals.add(Refusal.FRONT_LOADER);
        }
        return refusals;
    }

    /** A vat never has a recipe here; the others have one in their packet. */
    private static boolean needsLeaflet(DyePlan plan, DyeClass kind) {
        return kind == DyeClass.VAT
                || (kind == DyeClass.BASIC && plan.packet().isEmpty() && !plan.leaflet().isTold());
    }

    private static Set<Refusal> of(DyePlan plan, ClothUptake uptake) {
        if (uptake.harms()) {
            return EnumSet.of(Refusal.HARMS);
        }
        if (uptake.takesNowhere()) {
            return EnumSet.of(Refusal.TAKES_NOWHERE);
        }
        Set<Refusal> refusals = EnumSet.noneOf(Refusal.class);
        if (plan.dye().depth().filter(Depth::isDeep).isPresent() && uptake.seen().isNeverDark()) {
            refusals.add(Refusal.NEVER_DARK);
        }
        if (uptake.kind() == DyeClass.DISPERSE && plan.packet().isEmpty()) {
            refusals.add(Refusal.NO_POLYESTER_PACKET);
        }
        return refusals;
    }
}
