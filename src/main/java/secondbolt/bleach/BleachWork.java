package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.plan.Colour;
import secondbolt.bleach.plan.LabelDose;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.block.Block.Ticks.Item;
import secondbolt.measure.Tape;
import secondbolt.measure.kitchen.Kitchen;

/**
 * How a cloth is bleached, one thing after the other.
 *
 * @param treatment of the cloth, with one of the bleaches, not refused
 * @param tape to print with
 */
record BleachWork(Treatment treatment, Tape tape) {
    /** Where her times are written down. */
    static final List<List<String>> TIMES = List.of(List.of("In at", ""), List.of("Out at", ""));

    private static final String NOTHING_ELSE =
            "Nothing else goes in, now or later: no vinegar, no ammonia, no colour remover, no other"
                    + " cleaner.";

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        colourTest().ifPresent(items::add);
        items.add(look());
        items.add(bath());
        items.add(cloth());
        items.add(
                open(
                        "Rinse, and only rinse",
                        "In fresh cold water, several times, until no smell is left. Never stop it"
                                + " with vinegar or ammonia, as old books have it: both give off"
                                + " poisonous gas."));
        items.add(
                open(
                        "Wash it once by itself",
                        "As its most tender fibre bears; what is left of the bleach would spoil the"
                                + " dye in patches."));
        items.add(
                open(
                        "Dry it and look",
                        "Pull a thin place again. Not white enough: once more as weak, never"
                                + " stronger."));
        return items;
    }

    /** The drop test, unless there is no colour to lose or it is done. */
    private Optional<Item> colourTest() {
        boolean isNeeded =
                treatment.colour().filter(c -> !c.isDyed()).isEmpty()
                        && treatment.plan().evidence().colourStays().isEmpty();
        return isNeeded ? Optional.of(open("Colour test", dropTest(treatment))) : Optional.empty();
    }

    /** Both published ways of chlorine bleach; of the others the label's. */
    static String dropTest(Treatment treatment) {
        return treatment.isWith(Agent.CHLORINE)
                ? "One drop on a hidden seam: 1 part of bleach to 4 of water, looked at after 1"
                        + " minute (a bleach supplier), or 1 to 2, looked at when dry (laundry pages)."
                        + " If the colour moves, do not bleach."
                : "One drop of the solution, as its label has it, on a hidden seam, looked at when"
                        + " dry. If the colour moves, do not bleach.";
    }

    private Item look() {
        return open(
                "Before it gets wet",
                "Label read, windows open, gloves on; no acid, no ammonia and no remover in the room."
                        + " Metal hooks and buttons off, thin places pulled between both thumbs.");
    }

    private Item bath() {
        String water =
                treatment.isWith(Agent.CHLORINE)
                        ? "Cold or room-temperature water, in plastic, enamel or glass, never metal that"
                                + " rusts. "
                        : "Water as warm as its label says and the fibre bears. ";
        return open("Bath", water + dose() + " Weak and twice beats strong once. " + NOTHING_ELSE);
    }

    private String dose() {
        Optional<LabelDose> label = treatment.plan().bath().label();
        return label.map(this::dose).orElse("Dose and time as the label of your bottle says.");
    }

    private String dose(LabelDose label) {
        String ratio =
                "By your label "
                        + tape.print(label.dose())
                        + " in "
                        + tape.print(label.in())
                        + " of water";
        return treatment
                .plan()
                .bath()
                .vessel()
                .map(
                        vessel ->
                                ratio
                                        + ", so "
                                        + tape.print(label.forBath(vessel))
                                        + " ("
                                        + Kitchen.of(tape).print(label.forBath(vessel))
                                        + "; "
                                        + Kitchen.of(tape).said()
                                        + ") in "
                                        + tape.print(vessel)
                                        + ".")
                .orElse(ratio + ".");
    }

    private Item cloth() {
        String time =
                treatment
                        .plan()
                        .bath()
                        .label()
                        .map(label -> label.minutes() + " minutes at most, by your label.")
                        .orElse("Out when the label says, or sooner when it is white enough.");
        return Item.open(
                "Cloth in",
                List.of(
                        "Wet it through first, put it in all at once, open, and keep it moving and"
                                + " under water: it must never dry in. "
                                + time),
                TIMES);
    }

    /** Whether its colour is told to be one that nothing can take. */
    static boolean hasNoColour(Treatment treatment) {
        return treatment.colour().filter(c -> c == Colour.WHITE || c == Colour.NATURAL).isPresent();
    }

    static Item open(String title, String note) {
        return Item.open(title, List.of(note), List.of());
    }
}
