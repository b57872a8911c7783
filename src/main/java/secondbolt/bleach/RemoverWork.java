package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.bleach.recipe.RemoverBath;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.block.Block.Ticks.Item;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.prepare.heat.Temperature;
import secondbolt.textile.fibre.FibreKind;

/**
 * How the colour of a cloth is taken out, one thing after the other.
 *
 * @param treatment of the cloth, with a remover, not refused
 * @param takesAcid whether a last rinse with citric acid is told: never where a bleach is used in
 *     the same project
 * @param tape to print with
 */
record RemoverWork(Treatment treatment, boolean takesAcid, Tape tape) {
    List<Item> items() {
        Optional<RemoverBath> bath = treatment.bath();
        List<Item> items = new ArrayList<>();
        items.add(
                BleachWork.open(
                        "Try an offcut",
                        "Through the whole of it, dried, and pulled: some dyes hardly come out, and"
                                + " the cloth loses strength."));
        items.add(
                BleachWork.open(
                        "Vessel",
                        "Stainless steel, enamel or glass, never iron, aluminium or copper, never one"
                                + " that held bleach, and never for food again."));
        items.add(
                BleachWork.open(
                        "Bath",
                        bath.map(this::amounts)
                                .orElse(
                                        "Water, remover, heat and time by the remover's leaflet.")));
        items.add(cloth(bath));
        items.add(
                BleachWork.open(
                        "Rinse",
                        (isWoolly()
                                        ? "Left to cool in the bath first, for a shock felts wool; then in"
                                        : "In")
                                + " fresh water until the water stays clear."));
        bath.filter(b -> takesAcid).map(this::acid).ifPresent(items::add);
        items.add(
                BleachWork.open(
                        "Wash it once by itself",
                        "As its most tender fibre bears, and rinse; then dry it and look, or dye it"
                                + " wet."));
        return items;
    }

    private boolean isWoolly() {
        return treatment
                .fibre()
                .filter(f -> f.hasAny(kind -> kind.family() == FibreKind.Family.HAIR))
                .isPresent();
    }

    private String amounts(RemoverBath bath) {
        String each = bath.loads() == 1 ? "" : "For each of " + bath.loads() + " loads: ";
        return each
                + both(bath.waterOfALoad())
                + " of water, a little neutral detergent, "
                + weighed(bath.aLoad(bath.soda()))
                + " of soda ash, and when that is dissolved "
                + weighed(bath.aLoad(bath.remover()))
                + " of thiourea dioxide, stirred in slowly. Weigh all of it.";
    }

    private Item cloth(Optional<RemoverBath> bath) {
        String heat =
                bath.flatMap(RemoverBath::celsius)
                        .map(c -> "Warm it slowly to " + new Temperature(c).words() + ", no hotter")
                        .orElse("No hotter than the leaflet says for its most tender fibre");
        String time =
                bath.map(b -> b.leastMinutes() + " to " + b.mostMinutes() + " minutes")
                        .orElse("as long as the leaflet says");
        return Item.open(
                "Cloth in",
                List.of(
                        "Wetted through first, open, under water and moved gently. "
                                + heat
                                + "; "
                                + time
                                + "."),
                BleachWork.TIMES);
    }

    private Item acid(RemoverBath bath) {
        return BleachWork.open(
                "Last rinse",
                weighed(bath.aLoad(bath.citric()))
                        + " of citric acid in "
                        + both(bath.waterOfALoad())
                        + " of fresh water, which ends what soda ash is left. Not in a vessel, sink or"
                        + " drain with bleach in it.");
    }

    /** On both tapes: kitchen scales have grams, jugs litres, wherever she lives. */
    private String weighed(Mass mass) {
        return tape.printFine(mass) + " (" + tape.other().printFine(mass) + ")";
    }

    private String both(Volume water) {
        return tape.print(water) + " (" + tape.other().print(water) + ")";
    }
}
