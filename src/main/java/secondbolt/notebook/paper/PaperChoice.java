package secondbolt.notebook.paper;

import java.util.Optional;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.measure.Tape;
import secondbolt.project.Heading;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Sheet;

/**
 * The paper a project's sheets are laid out for.
 *
 * @param paper the paper of most sheets
 * @param large the paper of sheets for a plotter
 * @param correction for the maker's own printer
 * @param because who chose it, for the page
 * @param assumed told where nobody chose it
 */
public record PaperChoice(
        Paper paper,
        Paper large,
        PrintCorrection correction,
        String because,
        Optional<Assumed> assumed) {
    /**
     * The desk's paper; else the project's; else the usual one of the country whose tape is used.
     */
    public static PaperChoice of(Desk desk, Heading heading) {
        if (desk.paper().isPresent()) {
            return chosen(desk.paper().get(), desk, "as local.yaml says", Optional.empty());
        }
        if (heading.paper().isPresent()) {
            Paper paper = heading.paper().get();
            return chosen(paper, desk, "as the project file says", Optional.empty());
        }
        return usual(heading.units(), desk);
    }

    /** This paper for every sheet, as asked for on the command line. */
    public static PaperChoice asked(Paper paper, Desk desk) {
        return new PaperChoice(paper, paper, desk.correction(), "as asked for", Optional.empty());
    }

    private static PaperChoice chosen(
            Paper paper, Desk desk, String because, Optional<Assumed> assumed) {
        Paper large = paper.isForHome() ? Paper.ROLL_36 : paper;
        return new PaperChoice(paper, large, desk.correction(), because, assumed);
    }

    /** Common practice, no source: Letter where cloth is measured in inches, A4 elsewhere. */
    private static PaperChoice usual(Tape tape, Desk desk) {
        Paper paper = tape == Tape.INCH ? Paper.LETTER : Paper.A4;
        Assumed assumed =
                new Assumed(
                        "paper",
                        paper.name(),
                        "Common where cloth is measured in "
                                + (tape == Tape.INCH ? "inches" : "centimetres")
                                + ", no source. For another write `paper` in `local.yaml` or in"
                                + " the project file.");
        return chosen(paper, desk, "the usual one, as none was named", Optional.of(assumed));
    }

    /** The paper of a sheet. */
    public Paper of(Sheet sheet) {
        return switch (sheet.size()) {
            case HOME, PICTURE, WORDS -> paper;
            case LARGE -> large;
        };
    }

    /** What is done for the printer of that paper: a copy shop's is not the maker's own. */
    public PrintCorrection correctionOf(Paper printed) {
        return printed.isForHome() || printed.equals(paper) ? correction : PrintCorrection.NONE;
    }
}
