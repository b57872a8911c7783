package secondbolt.notebook.paper;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Drawing;
import secondbolt.draw.SheetCode;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.sheet.SheetText;
import secondbolt.worksheet.Sheet;

/**
 * All that is printed on a sheet beside its drawing, word by word, so that its code covers it. How
 * many there are stands before what belongs together, so that nothing can pass from one part of a
 * sheet to the next unseen.
 */
final class PrintedWords {
    private final List<String> words = new ArrayList<>();

    PrintedWords line(String line) {
        words.add(line);
        return this;
    }

    private PrintedWords count(List<?> parts) {
        return line(Integer.toString(parts.size()));
    }

    PrintedWords lines(List<String> lines) {
        count(lines);
        words.addAll(lines);
        return this;
    }

    PrintedWords rows(List<List<String>> rows) {
        count(rows);
        rows.forEach(this::lines);
        return this;
    }

    PrintedWords items(List<SheetText.Item> items) {
        count(items);
        items.forEach(item -> line(item.title()).lines(item.notes()).rows(item.rows()));
        return this;
    }

    /** All parts, each kind by its name; sheets with a drawing have none and say nothing of it. */
    PrintedWords parts(List<SheetText.Part> parts) {
        parts.forEach(part -> part.accept(new PartWords(this)));
        return this;
    }

    private record PartWords(PrintedWords words) implements SheetText.Part.Visitor<PrintedWords> {
        @Override
        public PrintedWords heading(SheetText.Part.Heading heading) {
            return words.line("heading").line(heading.text());
        }

        @Override
        public PrintedWords paragraph(SheetText.Part.Paragraph paragraph) {
            return words.line(paragraph.isStrong() ? "lead" : "paragraph").line(paragraph.text());
        }

        @Override
        public PrintedWords boxed(SheetText.Part.Boxed boxed) {
            return words.line("box").line(boxed.text());
        }

        @Override
        public PrintedWords listed(SheetText.Part.Listed listed) {
            return words.line(listed.isNumbered() ? "numbers" : "points").lines(listed.texts());
        }

        @Override
        public PrintedWords rows(SheetText.Part.Rows rows) {
            return words.line(rows.hasHead() ? "table" : "facts").rows(rows.rows());
        }

        @Override
        public PrintedWords ticks(SheetText.Part.Ticks ticks) {
            return words.line("ticks").items(ticks.items());
        }
    }

    /**
     * What it is laid out for. A correction for one printer is no part of it: the paper shows the
     * same, and its code must be found on the page.
     */
    PrintedWords on(Paper paper, Sheet.Size size) {
        return line(paper.name())
                .line(paper.across().toString())
                .line(paper.along().toString())
                .line(size.name());
    }

    /** The code of a sheet that says all this beside its drawing. */
    SheetCode code(Drawing drawing) {
        return SheetCode.of(drawing, words.toArray(String[]::new));
    }
}
