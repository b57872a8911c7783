package secondbolt.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import secondbolt.draw.Mark;
import secondbolt.draw.SheetCode;
import secondbolt.draw.paper.Page;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.draw.paper.SheetPages;
import secondbolt.draw.paper.SheetText;
import secondbolt.draw.pdf.Faces;
import secondbolt.draw.pdf.PdfSheet;
import secondbolt.project.Heading;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Table;
import secondbolt.worksheet.Worksheet;

/**
 * A sheet laid out on paper.
 *
 * @param sheet what is on it
 * @param code what is printed on it to tell it current or stale
 * @param paper what it is laid out for
 * @param pages to print, in order
 * @param isStopped whether nothing may be cut by it
 */
public record PrintedSheet(
        Sheet sheet, SheetCode code, Paper paper, List<Page> pages, boolean isStopped) {
    private static final String DO_NOT_CUT = "DO NOT CUT";

    /** Copies the pages. */
    public PrintedSheet {
        pages = List.copyOf(pages);
    }

    /** All sheets of a worksheet, in order. */
    public static List<PrintedSheet> of(Heading heading, Worksheet worksheet, PaperChoice paper) {
        return worksheet.sheets().stream()
                .map(sheet -> of(heading, worksheet, sheet, paper))
                .toList();
    }

    private static PrintedSheet of(
            Heading heading, Worksheet worksheet, Sheet sheet, PaperChoice choice) {
        SheetCode code = SheetCode.of(sheet.drawing());
        List<String> warnings = warnings(worksheet, sheet);
        SheetText text =
                new SheetText(
                        heading.title(),
                        sheet.title(),
                        code,
                        onPaper(sheet.instructions()),
                        onPaper(warnings),
                        rows(sheet.table()),
                        sheet.checklist().stream()
                                .map(i -> new SheetText.Item(i.title(), i.notes(), i.rows()))
                                .toList(),
                        heading.units());
        Paper paper = choice.of(sheet);
        PrintCorrection correction = choice.correctionOf(paper);
        List<Page> pages =
                sheet.size() == Sheet.Size.PICTURE
                        ? SheetPages.ofPicture(sheet.drawing(), text, paper, correction)
                        : SheetPages.of(sheet.drawing(), text, paper, correction);
        boolean stopped = warnings.stream().anyMatch(warning -> warning.contains(DO_NOT_CUT));
        return new PrintedSheet(sheet, code, paper, pages, stopped);
    }

    /** What a maker types stands between backticks; on paper it has quotation marks. */
    private static List<String> onPaper(List<String> texts) {
        return texts.stream().map(text -> text.replaceAll("`([^`]*)`", "“$1”")).toList();
    }

    /** The sheet's own warnings, and why nothing may be cut if the sheet does not say it itself. */
    private static List<String> warnings(Worksheet worksheet, Sheet sheet) {
        List<String> warnings = new ArrayList<>(sheet.warnings());
        if (warnings.stream().noneMatch(warning -> warning.contains(DO_NOT_CUT))) {
            worksheet.findings().stream()
                    .filter(finding -> finding.level() == Finding.Level.STOP)
                    .filter(stop -> touches(stop, worksheet, sheet))
                    .forEach(
                            stop ->
                                    warnings.add(
                                            DO_NOT_CUT + ". " + stop.about() + ": " + stop.text()));
        }
        return warnings;
    }

    /** A stop about none of the sheets by name is about all of them. */
    private static boolean touches(Finding stop, Worksheet worksheet, Sheet sheet) {
        return isAbout(stop, sheet)
                || worksheet.sheets().stream().noneMatch(other -> isAbout(stop, other));
    }

    private static boolean isAbout(Finding stop, Sheet sheet) {
        String about = stop.about().toLowerCase(Locale.ROOT);
        return sheet.name().equals(about) || sheet.title().toLowerCase(Locale.ROOT).contains(about);
    }

    /**
     * The letters of its pages that no font of the program has, each once; squares stand in their
     * place.
     */
    public List<String> missingLetters() {
        List<String> texts = new ArrayList<>();
        pages.forEach(page -> page.drawing().marks().forEach(mark -> mark.accept(labels(texts))));
        return Faces.missing(String.join(" ", texts));
    }

    private static Mark.Visitor<Boolean> labels(List<String> texts) {
        return new Mark.Visitor<>() {
            @Override
            public Boolean line(Mark.Line line) {
                return false;
            }

            @Override
            public Boolean fill(Mark.Fill fill) {
                return false;
            }

            @Override
            public Boolean label(Mark.Label label) {
                return texts.add(label.text());
            }

            @Override
            public Boolean window(Mark.Window window) {
                window.drawing().marks().forEach(mark -> mark.accept(this));
                return true;
            }
        };
    }

    private static List<List<String>> rows(Table table) {
        List<List<String>> rows = new ArrayList<>();
        if (!table.head().isEmpty()) {
            rows.add(table.head());
            rows.addAll(table.rows());
        }
        return rows;
    }

    /** The name of its file, beside the project's page. */
    public String file() {
        return sheet.name() + ".pdf";
    }

    /** The PDF document. */
    public byte[] pdf(Heading heading) {
        String title = sheet.title() + ", " + heading.title() + " (" + code + ")";
        return PdfSheet.render(title, Notebook.LANGUAGE, pages);
    }
}
