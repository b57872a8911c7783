package secondbolt.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.notebook.paper.Desk;
import secondbolt.project.PaperForm;

/** How {@code local.yaml} is written: the paper and the printer of the maker's own desk. */
final class DeskSection {
    private static final Key<Paper> PAPER =
            Key.optional(
                    "paper", PaperForm.FORM, "The paper in the printer, for all projects.", "a4");

    private static final Key<AcrossAlong<Length>> SQUARE =
            Key.required(
                    "square measured",
                    ListForm.acrossAlong(Forms.length(LengthRange.of("80 mm", "125 mm"))),
                    "What the 100 mm test square really measured on paper printed at 100 %, across"
                            + " and along; sheets are then drawn so that they come out true.",
                    "[99.4 mm, 100 mm]");

    private static final Key<PrintCorrection> PRINTER =
            Key.optional(
                    "printer",
                    MapForm.of("a printer", List.of(SQUARE), DeskSection::correction),
                    "What the printer makes of a sheet.",
                    "{square measured: [99.4 mm, 100 mm]}");

    /** The whole file. */
    static final Form<Desk> ROOT =
            MapForm.of("local.yaml", List.of(PAPER, PRINTER), DeskSection::desk);

    private DeskSection() {}

    static Optional<Desk> read(Path file, String name, Mistakes mistakes) {
        return SourceFile.read(file, name, mistakes)
                .flatMap(source -> ProjectFileReader.read(source, ROOT, Tape.CENTIMETRE, mistakes));
    }

    private static Optional<PrintCorrection> correction(Fields fields) {
        AcrossAlong<Length> square = fields.require(SQUARE);
        return Optional.of(new PrintCorrection(square.across(), square.along()));
    }

    private static Optional<Desk> desk(Fields fields) {
        return Optional.of(
                new Desk(fields.get(PAPER), fields.get(PRINTER).orElse(PrintCorrection.NONE)));
    }
}
