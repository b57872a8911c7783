package secondbolt.notebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Tape;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.site.SiteFile;
import secondbolt.project.Heading;
import secondbolt.project.Workings;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/** Small projects to make sites of. */
final class SampleSite {
    static final String SUMMARY =
            "Two unlined cotton curtains, sun-faded down one side, become a *collared* shirt."
                    + " See [the pattern's page](https://example.org/pattern).";

    private SampleSite() {}

    static Workings project(String folder, String title, int edgeMm, List<Finding> findings) {
        Heading heading =
                new Heading(title, Optional.of(SUMMARY), Tape.CENTIMETRE, Optional.empty());
        return new Workings(
                folder, heading, new SampleWorksheet("Front band", edgeMm, findings).outcomes());
    }

    static List<Finding> findings(Finding.Level... levels) {
        return Stream.of(levels)
                .map(
                        level ->
                                new Finding(
                                        "hole-near-seam",
                                        new Subject.Closure("front band"),
                                        level,
                                        "Hole 5 begins 2 mm above the waist seam, where none can be"
                                                + " stitched: a matter of "
                                                + level
                                                + ".",
                                        level == Finding.Level.NOTE
                                                ? ""
                                                : "Use eight buttons, or move the first one down"
                                                        + " by 8 mm."))
                .toList();
    }

    static Form<?> root() {
        Form<?> length = Forms.length(LengthRange.of("1 cm", "20 m"));
        Form<?> cloth =
                MapForm.of(
                        "a cloth",
                        List.of(
                                Key.required(
                                        "size",
                                        ListForm.acrossAlong(length),
                                        "How large it is, hems let out.",
                                        "[132, 214]"),
                                Key.optional(
                                        "known by",
                                        Forms.text(60),
                                        "How its fibre is known: `label`, `burn test` or `guess`.",
                                        "label")),
                        fields -> Optional.of("cloth"));
        return MapForm.of(
                "a project",
                List.of(
                        Key.required("title", Forms.text(80), "Its name.", "Porch shirt"),
                        Key.optional(
                                "cloth",
                                NamedForm.of("cloth", cloth),
                                "The textiles it is made of.",
                                "{left curtain: {size: [132, 214]}}"),
                        Key.later("lay", "The cutting plan.")),
                fields -> Optional.of("project"));
    }

    static List<SiteFile> site(Workings... projects) {
        return new Notebook("0.1.0", root(), Map.of())
                .make(List.of(projects), List.of(), Desk.UNKNOWN);
    }

    static String text(List<SiteFile> site, String path) {
        return site.stream()
                .filter(file -> file.path().equals(path))
                .map(SiteFile::text)
                .findFirst()
                .orElseThrow();
    }
}
