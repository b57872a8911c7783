package secondbolt.notebook;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.List;
import secondbolt.block.Block;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.draw.Decimals;
import secondbolt.draw.Drawing;
import secondbolt.draw.svg.SvgRenderer;
import secondbolt.shape.Box;

/**
 * A block as a template lays it out.
 *
 * @param kind names the macro that lays it out
 * @param text of a heading, a verdict, prose, and the caption of a picture
 * @param isGood of a verdict
 * @param facts of facts
 * @param items of steps, points and warnings
 * @param table of a table
 * @param picture an {@code svg} element in a {@code div} that says its shape
 */
public record BlockView(
        String kind,
        String text,
        boolean isGood,
        List<Fact> facts,
        List<String> items,
        Table table,
        TemplateHTMLOutputModel picture) {
    private static final TemplateHTMLOutputModel NO_PICTURE = Templates.markup("");

    static BlockView of(Block block) {
        return block.accept(new Views());
    }

    private static BlockView text(String kind, String text, boolean isGood) {
        return new BlockView(kind, text, isGood, List.of(), List.of(), Table.NONE, NO_PICTURE);
    }

    private static BlockView list(String kind, List<Fact> facts, List<String> items) {
        return new BlockView(kind, "", true, facts, items, Table.NONE, NO_PICTURE);
    }

    /** The stylesheet needs the shape, since a browser does not tell it what an SVG's is. */
    private static TemplateHTMLOutputModel markup(Drawing drawing) {
        Box frame = drawing.frame();
        String shape = Decimals.text(frame.widthMm() / frame.heightMm());
        return Templates.markup(
                "<div class=\"drawing\" style=\"--shape: "
                        + shape
                        + "\">\n"
                        + SvgRenderer.render(drawing)
                        + "</div>\n");
    }

    /** The view of each kind of block. */
    private static final class Views implements Block.Visitor<BlockView> {
        @Override
        public BlockView heading(Block.Heading heading) {
            return text("heading", heading.text(), true);
        }

        @Override
        public BlockView verdict(Block.Verdict verdict) {
            return text("verdict", verdict.text(), verdict.isGood());
        }

        @Override
        public BlockView prose(Block.Prose prose) {
            return text("prose", prose.text(), true);
        }

        @Override
        public BlockView facts(Block.Facts facts) {
            return list("facts", facts.facts(), List.of());
        }

        @Override
        public BlockView rows(Block.Rows rows) {
            return new BlockView("rows", "", true, List.of(), List.of(), rows.table(), NO_PICTURE);
        }

        @Override
        public BlockView picture(Block.Picture picture) {
            return new BlockView(
                    "picture",
                    picture.caption(),
                    true,
                    List.of(),
                    List.of(),
                    Table.NONE,
                    markup(picture.drawing()));
        }

        @Override
        public BlockView steps(Block.Steps steps) {
            return list("steps", List.of(), steps.steps());
        }

        @Override
        public BlockView points(Block.Points points) {
            return list("points", List.of(), points.points());
        }

        @Override
        public BlockView warnings(Block.Warnings warnings) {
            return list("points", List.of(), warnings.warnings());
        }

        @Override
        public BlockView ticks(Block.Ticks ticks) {
            return list(
                    "points",
                    List.of(),
                    ticks.items().stream().map(Block.Ticks.Item::title).toList());
        }
    }
}
