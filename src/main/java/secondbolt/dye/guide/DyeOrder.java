package secondbolt.dye.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.Load;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.Tender;
import secondbolt.dye.take.ClothUptake;
import secondbolt.measure.Mass;
import secondbolt.task.Hazard;

/** The acts of dyeing one colour, in order. */
public final class DyeOrder {
    /** From here on a bath is told to be heavy; our own choice, no source. */
    public static final Mass HEAVY = Mass.ofGrams("5000");

    /** Source: Children's of Alabama, scald prevention, its lowest figure, 120 °F. */
    private static final int SCALDS_C = 48;

    private final DyeBatch batch;
    private final Recipe recipe;
    private final DyePrint print;

    private DyeOrder(DyeBatch batch, Recipe recipe, DyePrint print) {
        this.batch = batch;
        this.recipe = recipe;
        this.print = print;
    }

    /** All acts; none of a colour that is refused, or whose class is not known. */
    public static List<Act> of(DyeBatch batch, DyePrint print) {
        return batch.recipe()
                .map(recipe -> new DyeOrder(batch, recipe, print).acts())
                .orElse(List.of());
    }

    private List<Act> acts() {
        List<Act> acts = new ArrayList<>();
        acts.add(weigh());
        acts.add(stock());
        acts.add(strip());
        acts.add(
                Act.of(
                        "Wet the cloth through",
                        "Washed before, without softener, which keeps dye off; then soaked until no"
                                + " dry place is left (leaflet of a hand-dye packet; a theatre"
                                + " costume dyer's answer; softener common practice, no source)."));
        acts.add(fill());
        acts.addAll(bath());
        acts.add(empty());
        acts.addAll(WashOff.of(recipe, tender(), HotSoak.of(batch)));
        acts.add(
                Act.of(
                                "Run the machine once empty",
                                "If it rinsed or dyed: what is left in it colours the next wash.")
                        .minding(Hazard.ELECTRIC));
        return acts;
    }

    private DyeClass kind() {
        return recipe.kind();
    }

    private Tender tender() {
        return Tender.of(batch.uptakes().stream().map(ClothUptake::fibre).toList());
    }

    private boolean isInMachine() {
        return batch.plan().bath().machine().isPresent();
    }

    private List<Act> bath() {
        if (isInMachine() && batch.bathing().loads().isEmpty()) {
            return List.of(
                    Act.of(
                                    "Let the machine run as its packet says",
                                    "A front loader takes too little water for a recipe by the"
                                            + " litre, so the packet alone decides.")
                            .timed()
                            .minding(Hazard.ELECTRIC));
        }
        return switch (kind()) {
            case REACTIVE ->
                    tender().isProtein()
                            ? BathActs.byLeaflet(recipe, print, heatHazards())
                            : BathActs.reactive(recipe, print, leafletHazards());
            case DIRECT -> BathActs.direct(recipe, print, heatHazards());
            case ACID -> BathActs.acid(recipe, print, batch.plan().dye().depth(), heatHazards());
            case BLEND, DISPERSE, BASIC, VAT -> BathActs.byLeaflet(recipe, print, heatHazards());
        };
    }

    private Hazard[] heatHazards() {
        return isInMachine()
                ? new Hazard[] {Hazard.HOT_BATH, Hazard.ELECTRIC}
                : new Hazard[] {Hazard.HOT_BATH, Hazard.COOKER};
    }

    /** A bath that is cool as a rule scalds all the same if her leaflet has it hot. */
    private Hazard[] leafletHazards() {
        boolean isHot = recipe.heats().stream().anyMatch(heat -> heat.most().celsius() >= SCALDS_C);
        return isHot
                ? heatHazards()
                : isInMachine() ? new Hazard[] {Hazard.ELECTRIC} : new Hazard[0];
    }

    private Act weigh() {
        String known =
                batch.bathing()
                        .dry()
                        .map(dry -> "Reckoned here with " + print.both(dry) + ". ")
                        .orElse("");
        return Act.of(
                "Weigh it dry",
                known
                        + "On the scale, washed and dry: ……………… If it differs, write it as `mass`"
                        + " under `dye` and print this again.");
    }

    private Act stock() {
        List<String> notes = new ArrayList<>();
        List<Load> loads = batch.bathing().loads();
        notes.add(
                "All of one colour from one stock: stir the powder to a paste with a little water,"
                        + " thin it, strain it through a fine cloth, so that no grain makes a"
                        + " spot.");
        if (loads.size() > 1) {
            notes.add(
                    "Share it out by what each load weighs: "
                            + IntStream.range(0, loads.size())
                                    .mapToObj(i -> part(i, loads.get(i)))
                                    .collect(Collectors.joining("; "))
                            + ".");
        }
        return new Act(
                "Weigh all the dye at once",
                notes,
                false,
                List.of(Hazard.DYE_POWDER, Hazard.ASTHMA_OR_PREGNANCY, Hazard.CHILDREN_AND_PETS));
    }

    private String part(int number, Load load) {
        Mass all = batch.bathing().takes().orElse(Mass.ZERO);
        return "bath "
                + (number + 1)
                + " "
                + (all.isPositive() ? load.takes().of(all).percent(1) : "all")
                + " ("
                + load.words()
                + ")";
    }

    private static Act strip() {
        return Act.of(
                        "Dye a test strip first",
                        "A hem or seam offcut of each cloth through the whole recipe, rinsed, dried"
                                + " and ironed, then judged by daylight: wet cloth looks deeper"
                                + " (a theatre costume dyer's answer; the rest common practice, no"
                                + " source).")
                .timed();
    }

    private Act fill() {
        List<Load> loads = batch.bathing().loads();
        String water =
                loads.isEmpty()
                        ? "As the packet says."
                        : IntStream.range(0, loads.size())
                                        .mapToObj(
                                                i ->
                                                        (loads.size() > 1
                                                                        ? "bath " + (i + 1) + ": "
                                                                        : "")
                                                                + print.both(loads.get(i).bath()))
                                        .collect(Collectors.joining("; "))
                                + ", measured in, not guessed.";
        return Act.of(
                "Fill the bath and stir the dye in",
                water,
                "Vessel of stainless steel, enamel or glass, or plastic for a cool bath; never one"
                        + " that serves food again (makers' data sheets; National Society for"
                        + " Education in Art and Design).");
    }

    private Act empty() {
        boolean isHeavy =
                batch.bathing().loads().stream()
                        .anyMatch(load -> load.weighs().compareTo(HEAVY) > 0);
        Act act =
                Act.of(
                        "Empty the bath",
                        "Let it cool, ladle it out, lift the cloth in parts and let it drip.");
        return isHeavy ? act.minding(Hazard.HEAVY_BATH, Hazard.WASTE) : act.minding(Hazard.WASTE);
    }

    /** When it is done, as a sentence. */
    public static String when(DyePlan plan) {
        return switch (plan.whenOrBefore()) {
            case BEFORE_CUTTING -> "Whole cloths, before anything is cut.";
            case AFTER_CUTTING -> "Pieces that are cut and not sewn yet.";
            case AFTER_SEWING -> "The whole garment, after sewing.";
        };
    }
}
