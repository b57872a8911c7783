package secondbolt.sewing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
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
        List<Block.Ticks.Item> joins =
                result.lines().joins().stream()
                        .filter(join -> join.line().times() > 0)
                        .map(this::join)
                        .toList();
        return List.of(
                new Block.Warnings(List.of(Hazard.NEEDLE.words())),
                new Block.Ticks(
                        List.of(
                                item("A new needle is in."),
                                item(
                                        "A test seam on scraps, in the layers of a real one, lies"
                                                + " flat, and both threads meet between the"
                                                + " layers."),
                                item("A cut edge was rubbed twenty times, the finish tried."))),
                new Block.Ticks(joins));
    }

    private static Block.Ticks.Item item(String title) {
        return Block.Ticks.Item.open(title, List.of(), List.of());
    }

    private Block.Ticks.Item join(JoinLine join) {
        String length = join.line().once().map(tape::print).orElse("length not known");
        String allowance =
                join.isUneven()
                        ? "allowances differ"
                        : "allowance " + join.narrowest().map(tape::print).orElse("none");
        String words =
                String.join(
                        "; ",
                        join.line().times() + " × " + length,
                        result.with().stitch(join.choice()).word(),
                        allowance,
                        finish(join));
        return Block.Ticks.Item.open(join.words(), List.of(words), List.of());
    }

    private String finish(JoinLine join) {
        return join.isEnclosed()
                ? "lies inside"
                : "edges: " + result.with().finish(join.choice()).word();
    }
}
