package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.recipe.RemoverBath;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.measure.Mass;
import secondbolt.task.Amount;
import secondbolt.task.Need;

/**
 * What bleaching and taking colour out need: products by their labels, or weighed, and gear.
 *
 * @param treatments that are not refused, one or more
 * @param takesAcid whether a remover's last rinse has citric acid in it
 */
record BleachNeeds(List<Treatment> treatments, boolean takesAcid) {
    List<Need> all() {
        List<Need> needs = new ArrayList<>();
        for (Agent agent : Agent.values()) {
            if (treatments.stream().anyMatch(t -> t.isWith(agent))) {
                needs.addAll(product(agent));
            }
        }
        needs.add(one("rubber gloves", "pair", "for bleach and colour remover"));
        needs.add(one("safety goggles", "pair", "for bleach and colour remover"));
        if (!with(Agent.REMOVER).isEmpty()) {
            needs.add(
                    one(
                            "vessel of stainless steel, enamel or glass, with a spoon",
                            "",
                            "for colour remover; never for food again"));
            needs.add(one("thermometer for liquids", "", "for colour remover"));
        }
        return needs;
    }

    private List<Need> product(Agent agent) {
        List<RemoverBath> baths =
                with(Agent.REMOVER).stream().flatMap(t -> t.bath().stream()).toList();
        boolean isWeighed = agent == Agent.REMOVER && baths.size() == with(Agent.REMOVER).size();
        if (!isWeighed) {
            return List.of(
                    one(
                            agent.word(),
                            "pack, as much as its label says",
                            "for " + BleachGiving.names(with(agent))));
        }
        List<Need> needs = new ArrayList<>();
        String why = "to take the colour out of " + BleachGiving.names(with(Agent.REMOVER));
        needs.add(weighed("thiourea dioxide", baths.stream().map(RemoverBath::remover), why));
        needs.add(weighed("soda ash", baths.stream().map(RemoverBath::soda), why));
        if (takesAcid) {
            needs.add(weighed("citric acid", baths.stream().map(RemoverBath::citric), why));
        }
        return needs;
    }

    private List<Treatment> with(Agent agent) {
        return treatments.stream().filter(t -> t.isWith(agent)).toList();
    }

    private static Need one(String item, String each, String why) {
        return Need.of(item, new Amount.Pieces(1, each), why);
    }

    private static Need weighed(String item, Stream<Mass> masses, String why) {
        return Need.of(item, new Amount.Weighed(masses.reduce(Mass.ZERO, Mass::plus)), why);
    }
}
