package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.dye.bath.Bathing;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.DyedCloth;
import secondbolt.dye.guide.DyeOrder;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.guide.KitchenWords;
import secondbolt.dye.guide.WashOff;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.recipe.Recipe;
import secondbolt.measure.Plural;
import secondbolt.textile.fibre.Fibre;
import secondbolt.worksheet.Sentence;

/**
 * What the page says of dyeing.
 *
 * @param print puts amounts into words
 */
record DyePage(DyePrint print) {
    private static final String LEAFLET_FIRST =
            "The leaflet in your packet comes before any figure here: write what it says under"
                    + " `leaflet`, and it takes their place. Where published figures differ they stand"
                    + " side by side; none is an average.";

    private static final String LOOK =
            "What is seen of a blend is told by a rough word: dyed and undyed fibres lie side by side"
                    + " (common practice, no source).";

    List<Block> blocks(List<DyeBatch> batches) {
        List<Block> blocks = new ArrayList<>();
        batches.forEach(batch -> blocks.addAll(batch(batch)));
        blocks.add(new Block.Heading("For every bath"));
        blocks.add(new Block.Prose(LEAFLET_FIRST));
        if (batches.stream()
                .flatMap(b -> b.uptakes().stream())
                .anyMatch(u -> u.fibre().isBlend())) {
            blocks.add(new Block.Prose(LOOK));
        }
        blocks.add(new Block.Prose(WashOff.SETTING));
        if (batches.stream().anyMatch(batch -> batch.isOf(DyeClass.VAT))) {
            blocks.add(new Block.Prose(RefusalFindings.VAT));
        }
        return blocks;
    }

    private List<Block> batch(DyeBatch batch) {
        DyeTables tables = new DyeTables(print);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(Sentence.capital(batch.plan().name())));
        blocks.add(new Block.Facts(facts(batch)));
        if (!batch.uptakes().isEmpty()) {
            blocks.add(tables.takes(batch));
        }
        if (!batch.mayBegin()) {
            return blocks;
        }
        if (!batch.bathing().loads().isEmpty() && batch.recipe().isPresent()) {
            blocks.add(tables.baths(batch, false));
        }
        batch.recipe()
                .filter(recipe -> batch.isReckoned() && !recipe.lines().isEmpty())
                .ifPresent(recipe -> blocks.add(tables.recipe(batch, recipe, false)));
        batch.recipe()
                .filter(recipe -> batch.isReckoned())
                .flatMap(recipe -> KitchenWords.of(batch, recipe, print.tape()))
                .ifPresent(words -> blocks.add(new Block.Prose(words)));
        List<String> acts =
                DyeOrder.of(batch, print).stream()
                        .map(act -> act.title() + ". " + String.join(" ", act.notes()))
                        .toList();
        if (!acts.isEmpty()) {
            blocks.add(new Block.Steps(acts));
        }
        return blocks;
    }

    List<Fact> facts(DyeBatch batch) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("Cloth", String.join(", ", batch.plan().names())));
        facts.add(
                Fact.of(
                        "Made of",
                        batch.cloths().stream()
                                .map(DyedCloth::fibre)
                                .map(fibre -> fibre.map(Fibre::words).orElse("unknown"))
                                .distinct()
                                .collect(Collectors.joining("; "))));
        facts.add(Fact.of("Dye", batch.plan().dye().kind().map(DyeClass::dye).orElse("open")));
        facts.add(Fact.of("How deep", batch.plan().dye().depth().map(Depth::word).orElse("open")));
        facts.add(Fact.of("When", DyeOrder.when(batch.plan())));
        facts.addAll(measures(batch));
        batch.recipe()
                .filter(recipe -> !recipe.heats().isEmpty())
                .ifPresent(recipe -> facts.add(Fact.of("Heat", print.heats(recipe))));
        batch.recipe()
                .filter(recipe -> !recipe.times().isEmpty())
                .ifPresent(recipe -> facts.add(Fact.of("Time", print.times(recipe))));
        return facts;
    }

    private List<Fact> measures(DyeBatch batch) {
        Bathing bathing = batch.bathing();
        List<Fact> facts = new ArrayList<>();
        facts.add(
                new Fact(
                        "Weighs, dry",
                        bathing.dry()
                                .map(dry -> Both.of(print.tape(), dry))
                                .orElse(Both.words("open"))));
        facts.add(
                new Fact(
                        "Of that takes the dye",
                        bathing.takes()
                                .map(takes -> Both.of(print.tape(), takes))
                                .orElse(Both.words("open"))));
        if (!batch.mayBegin()) {
            return facts;
        }
        batch.packets()
                .ifPresent(
                        packets ->
                                facts.add(
                                        Fact.of(
                                                "Packets",
                                                packets.words() + " (" + packets.source() + ")")));
        bathing.bath()
                .ifPresent(
                        bath ->
                                facts.add(
                                        new Fact(
                                                Plural.of(bathing.loads().size(), "bath")
                                                        + ", in all",
                                                Both.of(print.tape(), t -> t.print(bath)))));
        return facts;
    }

    /** Whether a recipe can be followed from it. */
    static boolean isFollowed(DyeBatch batch) {
        return batch.mayBegin() && batch.recipe().map(Recipe::kind).isPresent();
    }
}
