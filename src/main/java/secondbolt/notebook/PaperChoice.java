package secondbolt.notebook;

import java.util.Optional;
import secondbolt.draw.paper.Paper;
import secondbolt.measure.Tape;
import secondbolt.project.Heading;
import secondbolt.worksheet.Assumed;

/**
 * The paper a project's sheets are laid out for.
 *
 * @param paper the paper
 * @param because who chose it, for the page
 * @param assumed told where nobody chose it
 */
public record PaperChoice(Paper paper, String because, Optional<Assumed> assumed) {
    /**
     * The desk's paper; else the project's; else the usual one of the country whose tape is used.
     */
    public static PaperChoice of(Desk desk, Heading heading) {
        if (desk.paper().isPresent()) {
            return new PaperChoice(desk.paper().get(), "as local.yaml says", Optional.empty());
        }
        if (heading.paper().isPresent()) {
            Paper paper = heading.paper().get();
            return new PaperChoice(paper, "as the project file says", Optional.empty());
        }
        return usual(heading.units());
    }

    /** Common practice, no source: Letter where cloth is measured in inches, A4 elsewhere. */
    private static PaperChoice usual(Tape tape) {
        Paper paper = tape == Tape.INCH ? Paper.LETTER : Paper.A4;
        Assumed assumed =
                new Assumed(
                        "paper",
                        paper.name(),
                        "Common where cloth is measured in "
                                + (tape == Tape.INCH ? "inches" : "centimetres")
                                + ", no source. For another write `paper` in `local.yaml` or in"
                                + " the project file.");
        return new PaperChoice(paper, "the usual one, as none was named", Optional.of(assumed));
    }
}
