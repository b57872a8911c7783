package secondbolt.sewing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.measure.Tape;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.task.Hazard;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/**
 * The card that lies beside the machine: each join with its stitch, its allowance and its finish.
 *
 * @param result worked out
 * @param tape to print with
 */
record SeamCard(SewingResult result, Tape tape) {
    Sheet sheet() {
        return Sheet.ofWords(SheetName.of("seam card"), "Seam card", shows(), blocks());
    }

    private Set<Subject> shows() {
        Set<Subject> shown = new LinkedHashSet<>();
        result.lines().joins().forEach(join -> shown.add(SewingFindings.subject(join)));
        return shown;
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Warnings(List.of(Hazard.NEEDLE.words())));
        blocks.add(
                new Block.Ticks(
                        List.of(
                                item("A new needle is in."),
                                item(
                                        "A test seam on scraps, in the layers of a real one, lies"
                                                + " flat, and both threads meet between the"
                                                + " layers."),
                                item("A cut edge was rubbed twenty times, the finish tried."))));
        blocks.add(new Block.Rows(joins()));
        return blocks;
    }

    private static Block.Ticks.Item item(String title) {
        return Block.Ticks.Item.open(title, List.of(), List.of());
    }

    private Table joins() {
        List<List<String>> rows = new ArrayList<>();
        for (JoinLine join : result.lines().joins()) {
            rows.add(
                    List.of(
                            join.words(),
                            join.line().times() + " ×",
                            join.line().once().map(tape::print).orElse("not known"),
                            result.with().stitch(join.choice()).word(),
                            join.isUneven()
                                    ? "several"
                                    : join.narrowest().map(tape::print).orElse(""),
                            result.with().finish(join.choice()).word()));
        }
        return Table.of(
                List.of("Join", "Times", "Length of one", "Stitch", "Allowance", "Finish"), rows);
    }
}
