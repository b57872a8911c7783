package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.recipe.Substance;
import secondbolt.measure.Mass;
import secondbolt.measure.Volume;
import secondbolt.task.Amount;
import secondbolt.task.Need;

/**
 * What is needed for one colour.
 *
 * @param batch the colour
 * @param print puts amounts into words
 */
record DyeNeeds(DyeBatch batch, DyePrint print) {
    /** Source: a dyer's reference site, washing out: half a teaspoon to a pound. */
    private static final Volume HALF_TEASPOON = Volume.parse("1/2 tsp").orThrow();

    private static final Mass POUND = Mass.parse("1 lb").orThrow();

    /** All of them; gloves and the like are the same for every colour. */
    static List<Need> of(List<DyeBatch> batches, DyePrint print) {
        List<Need> needs = new ArrayList<>();
        batches.forEach(batch -> needs.addAll(new DyeNeeds(batch, print).all()));
        if (batches.isEmpty()) {
            return needs;
        }
        String why = "for dyeing; never for food again";
        needs.add(once("rubber gloves", "pair", "for dyeing"));
        needs.add(once("dust mask", "", "for dyeing, while powder is open"));
        needs.add(once("vessel of stainless steel, enamel or glass, with a spoon", "", why));
        if (batches.stream().anyMatch(DyeNeeds::hasSoda)) {
            needs.add(once("safety goggles", "pair", "for soda ash"));
        }
        if (batches.stream()
                .anyMatch(b -> b.recipe().filter(r -> !r.heats().isEmpty()).isPresent())) {
            needs.add(once("thermometer for liquids", "", why));
        }
        return needs;
    }

    private static boolean hasSoda(DyeBatch batch) {
        return batch.recipe().filter(recipe -> recipe.has(Substance.SODA)).isPresent();
    }

    private static Need once(String item, String each, String why) {
        return Need.of(item, new Amount.Pieces(1, each), why);
    }

    private List<Need> all() {
        List<Need> needs = new ArrayList<>();
        dye().ifPresent(needs::add);
        add(needs, Substance.SALT, "salt", "fine, without anything added");
        add(needs, Substance.SODA, "soda ash", "weighed, never by cups");
        add(needs, Substance.VINEGAR, "white vinegar, 5 %", "");
        add(needs, Substance.ACID, "acid by the dye's leaflet", "");
        add(needs, Substance.FIXATIVE, "fixative for direct dye", "its own label comes first");
        if (batch.isOf(DyeClass.REACTIVE) && batch.isReckoned()) {
            needs.add(
                    Need.of(
                            "neutral detergent",
                            new Amount.Liquid(
                                    HALF_TEASPOON.times(
                                            batch.bathing().dry().orElse(POUND).of(POUND))),
                            why("for each hot soak", "half a teaspoon to a pound")));
        }
        return needs;
    }

    private Optional<Need> dye() {
        String item =
                batch.plan().dye().kind().map(DyeClass::word).orElse("")
                        + " dye, "
                        + batch.plan().name();
        if (batch.packets().isPresent()) {
            String each =
                    batch.plan()
                            .packet()
                            .map(packet -> "packet for " + print.tape().print(packet.dyes()))
                            .orElse("packet");
            return Optional.of(
                    Need.of(
                            item,
                            new Amount.Pieces(batch.packets().get().most(), each),
                            why(batch.packets().get().words(), batch.packets().get().source())));
        }
        return batch.most(Substance.DYE)
                .map(most -> Need.of(item, most, why("at most", "by the dye sheet")));
    }

    private void add(List<Need> needs, Substance what, String item, String note) {
        batch.most(what)
                .ifPresent(
                        most ->
                                needs.add(
                                        Need.of(
                                                item,
                                                most,
                                                why(
                                                        batch.recipe()
                                                                        .orElseThrow()
                                                                        .isDisputed(what)
                                                                ? "by the source that asks for most"
                                                                : "by the dye sheet",
                                                        note))));
    }

    private String why(String first, String second) {
        return batch.plan().name() + ", " + first + (second.isEmpty() ? "" : "; " + second);
    }
}
