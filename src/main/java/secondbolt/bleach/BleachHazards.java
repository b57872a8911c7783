package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.recipe.RemoverBath;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.measure.Volume;
import secondbolt.task.Hazard;

/** Where bleaching and taking colour out can hurt. */
final class BleachHazards {
    private static final Volume HEAVY = Volume.ofMillilitres("10000");

    private BleachHazards() {}

    /** Of one treatment, in the order in which they are met. */
    static List<Hazard> of(Treatment treatment, boolean takesAcid) {
        List<Hazard> hazards = new ArrayList<>(List.of(Hazard.LEAFLET_FIRST));
        hazards.addAll(own(treatment, takesAcid));
        if (isHeavy(treatment)) {
            hazards.add(Hazard.HEAVY_BATH);
        }
        hazards.addAll(
                List.of(
                        Hazard.CHILDREN_AND_PETS,
                        Hazard.ASTHMA_OR_PREGNANCY,
                        Hazard.WASTE,
                        Hazard.POISON_HELP));
        return hazards;
    }

    private static List<Hazard> own(Treatment treatment, boolean takesAcid) {
        return switch (treatment.agent().orElseThrow()) {
            case CHLORINE -> List.of(Hazard.BLEACH);
            case OXYGEN, PEROXIDE -> List.of(Hazard.OXYGEN_BLEACH);
            case REMOVER -> remover(treatment, takesAcid);
        };
    }

    private static List<Hazard> remover(Treatment treatment, boolean takesAcid) {
        List<Hazard> hazards =
                new ArrayList<>(List.of(Hazard.COLOUR_REMOVER, Hazard.COOKER, Hazard.HOT_BATH));
        if (treatment.bath().isPresent()) {
            hazards.add(Hazard.SODA_ASH);
        }
        if (takesAcid && treatment.bath().isPresent()) {
            hazards.add(Hazard.ACID);
        }
        return hazards;
    }

    /** By what its bath holds, or what she says her vessel does. */
    private static boolean isHeavy(Treatment treatment) {
        return treatment
                .bath()
                .map(RemoverBath::waterOfALoad)
                .or(() -> treatment.plan().bath().vessel())
                .filter(water -> water.compareTo(HEAVY) >= 0)
                .isPresent();
    }

    /** Whether chlorine bleach is used on any of them. */
    static boolean isAnyChlorine(List<Treatment> treatments) {
        return treatments.stream().anyMatch(t -> t.isWith(Agent.CHLORINE));
    }
}
