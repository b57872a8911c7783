package secondbolt.notebook.paper;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Block;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.draw.SheetCode;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.sheet.SheetText;
import secondbolt.project.Heading;
import secondbolt.worksheet.Sheet;

/** Lays the blocks of a sheet out as what stands beside its drawing. */
public final class SheetBlocks implements Block.Visitor<Boolean> {
    private final List<String> instructions = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final List<SheetText.Item> items = new ArrayList<>();

    private SheetBlocks() {}

    /**
     * The text of a sheet, with the code of all that will be printed on it.
     *
     * @param paper what it is laid out for
     * @param reasons why nothing may be cut by it, which come behind its own warnings
     */
    public static SheetText text(Heading heading, Sheet sheet, Paper paper, List<String> reasons) {
        SheetBlocks laid = new SheetBlocks();
        sheet.blocks().forEach(block -> block.accept(laid));
        laid.warnings.addAll(reasons);
        List<String> instructions = onPaper(laid.instructions);
        List<String> warnings = onPaper(laid.warnings);
        SheetCode code =
                new PrintedWords()
                        .line(heading.title())
                        .line(sheet.title())
                        .line(heading.units().symbol())
                        .lines(instructions)
                        .lines(warnings)
                        .rows(laid.rows)
                        .items(laid.items)
                        .on(paper, sheet.size())
                        .code(sheet.drawing());
        return new SheetText(
                heading.title(),
                sheet.title(),
                code,
                instructions,
                warnings,
                laid.rows,
                laid.items,
                heading.units());
    }

    /** What a maker types stands between backticks; on paper it has quotation marks. */
    private static List<String> onPaper(List<String> texts) {
        return texts.stream().map(text -> text.replaceAll("`([^`]*)`", "“$1”")).toList();
    }

    @Override
    public Boolean heading(Block.Heading heading) {
        return instructions.add(heading.text());
    }

    @Override
    public Boolean verdict(Block.Verdict verdict) {
        return instructions.add(verdict.text());
    }

    @Override
    public Boolean prose(Block.Prose prose) {
        return instructions.add(prose.text());
    }

    @Override
    public Boolean facts(Block.Facts facts) {
        for (Fact fact : facts.facts()) {
            rows.add(List.of(fact.label(), fact.value().own(), fact.value().other()));
        }
        return true;
    }

    @Override
    public Boolean rows(Block.Rows block) {
        Table table = block.table();
        if (table.head().isEmpty()) {
            return true;
        }
        rows.add(table.head());
        table.rows().forEach(row -> rows.add(row.stream().map(c -> c.value().own()).toList()));
        return true;
    }

    /** A sheet's picture is its drawing. */
    @Override
    public Boolean picture(Block.Picture picture) {
        throw new IllegalArgumentException("a sheet has its drawing: " + picture.caption());
    }

    @Override
    public Boolean steps(Block.Steps steps) {
        return instructions.addAll(steps.steps());
    }

    @Override
    public Boolean points(Block.Points points) {
        return instructions.addAll(points.points());
    }

    @Override
    public Boolean warnings(Block.Warnings block) {
        return warnings.addAll(block.warnings());
    }

    @Override
    public Boolean ticks(Block.Ticks ticks) {
        ticks.items()
                .forEach(
                        i ->
                                items.add(
                                        new SheetText.Item(
                                                i.title(), i.notes(), i.rows(), i.isDone())));
        return true;
    }
}
