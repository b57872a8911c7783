package secondbolt.notebook;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Mark;
import secondbolt.draw.SheetCode;
import secondbolt.draw.paper.Page;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.draw.pdf.Faces;
import secondbolt.draw.pdf.PdfSheet;
import secondbolt.draw.sheet.SheetPages;
import secondbolt.draw.sheet.SheetText;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.notebook.paper.SheetBlocks;
import secondbolt.project.Heading;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;

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
    private static final String DO_NOT_CUT = "DO NOT CUT. ";

    /** Copies the pages. */
    public PrintedSheet {
        pages = List.copyOf(pages);
    }

    /**
     * All that a printed sheet depends on.
     *
     * @param heading of its project
     * @param reasons why nothing may be cut by it, as printed
     * @param sheet what is on it
     * @param choice of paper
     */
    public record Asked(Heading heading, List<String> reasons, Sheet sheet, PaperChoice choice) {
        /** Copies the reasons. */
        public Asked {
            reasons = List.copyOf(reasons);
        }

        /**
         * A sheet of a project.
         *
         * @param stops of the whole project; those that touch what the sheet shows are printed on
         *     it
         */
        public static Asked of(
                Heading heading, List<Finding> stops, Sheet sheet, PaperChoice choice) {
            List<String> reasons =
                    stops.stream()
                            .filter(stop -> stop.about().touchesAny(sheet.shows()))
                            .map(stop -> DO_NOT_CUT + stop.about().words() + ": " + stop.text())
                            .toList();
            return new Asked(heading, reasons, sheet, choice);
        }
    }

    /** Lays a sheet out. */
    public static PrintedSheet of(Asked asked) {
        Sheet sheet = asked.sheet();
        Paper paper = asked.choice().of(sheet);
        PrintCorrection correction = asked.choice().correctionOf(paper);
        SheetText text = SheetBlocks.text(asked.heading(), sheet, paper, asked.reasons());
        List<Page> pages =
                switch (sheet.size()) {
                    case PICTURE -> SheetPages.ofPicture(sheet.drawing(), text, paper, correction);
                    case WORDS -> SheetPages.ofWords(text, paper, correction);
                    case HOME, LARGE -> SheetPages.of(sheet.drawing(), text, paper, correction);
                };
        return new PrintedSheet(sheet, text.code(), paper, pages, !asked.reasons().isEmpty());
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
