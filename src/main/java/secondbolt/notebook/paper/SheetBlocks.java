package secondbolt.notebook.paper;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Block;
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
        List<SheetText.Part> parts = new ArrayList<>();
        if (sheet.size() == Sheet.Size.WORDS) {
            sheet.blocks().forEach(block -> parts.addAll(block.accept(SheetParts.IN_ORDER)));
        } else {
            sheet.blocks().forEach(block -> block.accept(laid));
        }
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
                        .parts(parts)
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
                parts,
                heading.units());
    }

    /** What a maker types stands between backticks; on paper it has quotation marks. */
    static List<String> onPaper(List<String> texts) {
        return texts.stream().map(SheetBlocks::onPaper).toList();
    }

    static String onPaper(String text) {
        return text.replaceAll("`([^`]*)`", "“$1”");
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
        return rows.addAll(rowsOf(facts));
    }

    @Override
    public Boolean rows(Block.Rows block) {
        return rows.addAll(rowsOf(block.table()));
    }

    static List<List<String>> rowsOf(Block.Facts facts) {
        return facts.facts().stream()
                .map(fact -> List.of(fact.label(), fact.value().own(), fact.value().other()))
                .toList();
    }

    /** Its head and its rows; nothing of a table without a head. */
    static List<List<String>> rowsOf(Table table) {
        List<List<String>> all = new ArrayList<>();
        if (!table.head().isEmpty()) {
            all.add(table.head());
            table.rows().forEach(row -> all.add(row.stream().map(c -> c.value().own()).toList()));
        }
        return all;
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
        return items.addAll(itemsOf(ticks));
    }

    static List<SheetText.Item> itemsOf(Block.Ticks ticks) {
        return ticks.items().stream()
                .map(
                        i ->
                                new SheetText.Item(
                                        onPaper(i.title()),
                                        onPaper(i.notes()),
                                        i.rows(),
                                        i.isDone()))
                .toList();
    }
}
