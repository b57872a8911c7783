package secondbolt.bleach;

import java.util.List;
import java.util.Optional;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.recipe.Sources;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.textile.state.Finish;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a treatment does to the finish of a cloth that it may be done to. */
record FinishFindings(Treatment treatment) {
    List<Finding> all() {
        return treatment.finishes().stream().flatMap(finish -> of(finish).stream()).toList();
    }

    private Optional<Finding> of(Finish finish) {
        return switch (finish) {
            case EASY_CARE -> Optional.of(easyCare());
            case FLAME_RETARDANT ->
                    Optional.of(
                            finding(
                                            "bleach-flame-retardant",
                                            " is finished not to catch fire, and nobody can see how much"
                                                    + " of that ",
                                            " leaves.",
                                            "Only if its label allows it; then take it for cloth that"
                                                    + " burns.")
                                    .citing(List.of(Sources.MEMORY)));
            case WATER_REPELLENT ->
                    Optional.of(
                            finding(
                                            "bleach-water-repellent",
                                            " is finished to repel water, so that ",
                                            " gets in unevenly.",
                                            "Put a scrap through the whole of it first.")
                                    .citing(List.of(Sources.MEMORY)));
            case STARCH -> Optional.empty();
        };
    }

    private Finding easyCare() {
        boolean isChlorine = treatment.isWith(Agent.CHLORINE);
        return finding(
                        "bleach-easy-care",
                        " is finished to shed creases, and ",
                        isChlorine
                                ? " may damage that finish, and the cloth with it."
                                : " may work unevenly on it.",
                        "Put a scrap through the whole of it first, and pull it when it is dry.")
                .citing(List.of(isChlorine ? Sources.HOUSEHOLD : Sources.MEMORY));
    }

    private Finding finding(String code, String before, String after, String remedy) {
        return new Finding(
                code,
                new Subject.Cloth(treatment.name()),
                Level.CAUTION,
                treatment.name() + before + treatment.agent().orElseThrow().word() + after,
                remedy);
    }
}
