package secondbolt.notebook.paper;

import java.util.List;
import secondbolt.block.Block;
import secondbolt.block.Fact;
import secondbolt.draw.sheet.SheetText;

/** The blocks of a sheet of words as parts of it, in their order. */
enum SheetParts implements Block.Visitor<List<SheetText.Part>> {
    /** There is one way only. */
    IN_ORDER;

    @Override
    public List<SheetText.Part> heading(Block.Heading heading) {
        return List.of(new SheetText.Part.Heading(SheetBlocks.onPaper(heading.text())));
    }

    @Override
    public List<SheetText.Part> verdict(Block.Verdict verdict) {
        return List.of(new SheetText.Part.Paragraph(SheetBlocks.onPaper(verdict.text()), true));
    }

    @Override
    public List<SheetText.Part> prose(Block.Prose prose) {
        return List.of(new SheetText.Part.Paragraph(SheetBlocks.onPaper(prose.text()), false));
    }

    @Override
    public List<SheetText.Part> facts(Block.Facts facts) {
        List<List<String>> rows =
                facts.facts().stream()
                        .map(fact -> List.of(fact.label(), SheetBlocks.onPaper(both(fact))))
                        .toList();
        return rows.isEmpty() ? List.of() : List.of(new SheetText.Part.Rows(rows, false));
    }

    /** On her tape, and on the other in brackets. */
    private static String both(Fact fact) {
        String other = fact.value().other();
        return fact.value().own() + (other.isEmpty() ? "" : " (" + other + ")");
    }

    @Override
    public List<SheetText.Part> rows(Block.Rows rows) {
        List<List<String>> all = SheetBlocks.rowsOf(rows.table());
        return all.isEmpty() ? List.of() : List.of(new SheetText.Part.Rows(all, true));
    }

    /** A sheet of words has none. */
    @Override
    public List<SheetText.Part> picture(Block.Picture picture) {
        throw new IllegalArgumentException("a sheet of words has no picture: " + picture.caption());
    }

    @Override
    public List<SheetText.Part> steps(Block.Steps steps) {
        return listed(steps.steps(), true);
    }

    @Override
    public List<SheetText.Part> points(Block.Points points) {
        return listed(points.points(), false);
    }

    private static List<SheetText.Part> listed(List<String> texts, boolean isNumbered) {
        return texts.isEmpty()
                ? List.of()
                : List.of(new SheetText.Part.Listed(SheetBlocks.onPaper(texts), isNumbered));
    }

    @Override
    public List<SheetText.Part> warnings(Block.Warnings warnings) {
        return SheetBlocks.onPaper(warnings.warnings()).stream()
                .<SheetText.Part>map(SheetText.Part.Boxed::new)
                .toList();
    }

    @Override
    public List<SheetText.Part> ticks(Block.Ticks ticks) {
        return ticks.items().isEmpty()
                ? List.of()
                : List.of(new SheetText.Part.Ticks(SheetBlocks.itemsOf(ticks)));
    }
}
