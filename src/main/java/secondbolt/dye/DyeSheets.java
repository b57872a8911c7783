package secondbolt.dye;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import secondbolt.block.Block;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.guide.Act;
import secondbolt.dye.guide.DyeOrder;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.guide.KitchenWords;
import secondbolt.task.Hazard;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/**
 * A sheet for each colour, to be ticked off beside the bath.
 *
 * @param print puts amounts into words
 */
record DyeSheets(DyePrint print) {
    List<Sheet> of(List<DyeBatch> batches) {
        boolean isOne = batches.size() == 1;
        return batches.stream()
                .filter(DyePage::isFollowed)
                .map(batch -> sheet(batch, isOne ? "dye sheet" : "dye sheet " + name(batch)))
                .toList();
    }

    private static String name(DyeBatch batch) {
        return batch.plan().name();
    }

    private Sheet sheet(DyeBatch batch, String name) {
        DyeTables tables = new DyeTables(print);
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Warnings(
                        List.of(Hazard.LEAFLET_FIRST.words(), Hazard.POISON_HELP.words())));
        blocks.add(new Block.Facts(new DyePage(print).facts(batch)));
        if (batch.isReckoned()) {
            if (batch.bathing().loads().size() > 1) {
                blocks.add(tables.baths(batch, true));
            }
            batch.recipe()
                    .filter(recipe -> !recipe.lines().isEmpty())
                    .ifPresent(recipe -> blocks.add(tables.recipe(batch, recipe, true)));
            batch.recipe()
                    .flatMap(recipe -> KitchenWords.of(batch, recipe, print.tape()))
                    .ifPresent(words -> blocks.add(new Block.Prose(words)));
        }
        List<Act> acts = DyeOrder.of(batch, print);
        blocks.add(
                new Block.Ticks(
                        IntStream.range(0, acts.size())
                                .mapToObj(i -> numbered(i + 1, acts.get(i)))
                                .toList()));
        return Sheet.ofWords(
                SheetName.of(name), "Dye sheet: " + name(batch), subjects(batch), blocks);
    }

    private static Block.Ticks.Item numbered(int number, Act act) {
        Block.Ticks.Item item = act.tick();
        return Block.Ticks.Item.open(number + ". " + item.title(), item.notes(), item.rows());
    }

    private static Set<Subject> subjects(DyeBatch batch) {
        Set<Subject> shown = new HashSet<>();
        shown.add(new Subject.Colour(name(batch)));
        batch.cloths().forEach(cloth -> shown.add(cloth.cloth().subject()));
        return shown;
    }
}
