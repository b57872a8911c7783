package secondbolt.bleach;

import java.util.List;
import java.util.Optional;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.recipe.RemoverBath;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.figure.Figure;
import secondbolt.figure.Figures;
import secondbolt.measure.Volume;

/** Bleaching for other programs: by cloth. */
final class BleachFigures {
    private BleachFigures() {}

    static Figures of(List<Treatment> treatments) {
        boolean acid = BleachHazards.mayTakeAcid(treatments);
        Figures figures = new Figures();
        treatments.forEach(treatment -> figures.inside(treatment.name(), of(treatment, acid)));
        return figures;
    }

    private static Figures of(Treatment treatment, boolean takesAcid) {
        Figures bears = new Figures();
        treatment.mostTender().forEach((a, b) -> bears.text(a.word(), b.grade().words()));
        Figures figures =
                new Figures()
                        .text("with", treatment.agent().map(Agent::word))
                        .claim("may_be_done", !treatment.isRefused())
                        .inside("most_tender_fibre", bears)
                        .mass("dry_mass", treatment.mass());
        treatment.bath().ifPresent(bath -> put(figures, bath, takesAcid));
        return figures;
    }

    private static void put(Figures figures, RemoverBath bath, boolean takesAcid) {
        figures.put("water", litres(bath.water()))
                .put("water_of_a_load", litres(bath.waterOfALoad()))
                .mass("thiourea_dioxide", Optional.of(bath.remover()))
                .mass("soda_ash", Optional.of(bath.soda()))
                .mass("citric_acid", Optional.of(bath.citric()).filter(c -> takesAcid))
                .put(
                        "no_hotter_than",
                        new Figure.Amount(bath.celsius().map(Integer::doubleValue), "_celsius"))
                .count("least_minutes", bath.leastMinutes())
                .count("most_minutes", bath.mostMinutes())
                .count("loads", bath.loads());
    }

    private static Figure litres(Volume volume) {
        return new Figure.Amount(Optional.of(volume.of(Volume.LITRE).fraction()), "_l");
    }
}
