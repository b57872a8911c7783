package secondbolt.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.draw.paper.Paper;
import secondbolt.measure.Tape;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.project.Workings;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/**
 * What a project's page shows.
 *
 * @param version of the program
 * @param title the project's
 * @param summary Markdown; empty if there is none
 * @param stops what forbids cutting
 * @param findings all others, the gravest first, else in the order of working
 * @param paper name, size and who chose it
 * @param isPersonal whether it shows what is known of a body
 * @param sheets to print
 * @param sections one for each worksheet
 * @param open what is not known yet
 * @param assumed what is taken for granted, each told once
 * @param sources that findings cite by number, the first being 1
 */
public record ProjectPage(
        String version,
        String title,
        String summary,
        List<FoundView> stops,
        List<FoundView> findings,
        PaperView paper,
        boolean isPersonal,
        List<SheetView> sheets,
        List<SectionView> sections,
        List<Open> open,
        List<Assumed> assumed,
        List<String> sources) {
    /**
     * A finding.
     *
     * @param section the name of its worksheet
     * @param sectionTitle the heading of its worksheet
     * @param level in lower case
     * @param about what it is about
     * @param text what was found
     * @param remedy what to do; may be empty
     * @param sources further ones, by their number in the list of the page
     */
    public record FoundView(
            String section,
            String sectionTitle,
            String level,
            String about,
            String text,
            String remedy,
            List<Integer> sources) {
        private FoundView doing(String other) {
            return new FoundView(section, sectionTitle, level, about, text, other, sources);
        }
    }

    /**
     * The paper.
     *
     * @param name as a maker writes it
     * @param size across and along
     * @param because who chose it
     */
    public record PaperView(String name, String size, String because) {}

    /**
     * A sheet to print.
     *
     * @param title its heading
     * @param name what it is asked for by
     * @param file its PDF
     * @param code its code
     * @param pages how many
     * @param paper what it is laid out for
     * @param stopped whether nothing may be cut by it
     */
    public record SheetView(
            String title,
            String name,
            String file,
            String code,
            int pages,
            String paper,
            boolean stopped) {}

    /**
     * A worksheet.
     *
     * @param name of its template and anchor
     * @param title its heading
     * @param stops how many findings of the project forbid cutting what it shows
     * @param warnings how many warn
     * @param blocks what it shows, in order
     */
    public record SectionView(
            String name, String title, int stops, int warnings, List<BlockView> blocks) {}

    private static final String AS_ABOVE = "As above.";

    /** What guards a child, or may be swallowed, is never shortened. */
    private static final Set<String> ALWAYS_IN_FULL = Set.of("safety", "closures");

    private static final Subject NAMELESS = new Subject.Whole("");

    static ProjectPage of(
            String version, Workings project, List<PrintedSheet> sheets, PaperChoice paper) {
        List<Worksheet> worksheets = project.worksheets();
        List<FoundView> stops = new ArrayList<>();
        List<FoundView> others = new ArrayList<>();
        List<String> sources = new ArrayList<>();
        gravestFirst(worksheets, sources)
                .forEach(found -> (found.level().equals("stop") ? stops : others).add(found));
        sheets.stream().forEach(s -> squares(s).ifPresent(others::add));
        List<Assumed> assumed = new ArrayList<>();
        paper.assumed().ifPresent(assumed::add);
        worksheets.forEach(worksheet -> assumed.addAll(worksheet.assumed()));
        return new ProjectPage(
                version,
                project.heading().title(),
                project.heading().summary().orElse(""),
                saidOnce(stops),
                saidOnce(others),
                view(paper, project.heading().units()),
                project.isPersonal(),
                sheets.stream().map(ProjectPage::view).toList(),
                worksheets.stream().map(sheet -> section(project, sheet)).toList(),
                worksheets.stream().flatMap(worksheet -> worksheet.open().stream()).toList(),
                assumed.stream().distinct().toList(),
                sources);
    }

    /** What is to be done is said once where several findings in a row ask for the same. */
    private static List<FoundView> saidOnce(List<FoundView> found) {
        List<FoundView> once = new ArrayList<>();
        String above = "";
        for (FoundView view : found) {
            boolean isSaid =
                    !above.isEmpty()
                            && view.remedy().equals(above)
                            && !ALWAYS_IN_FULL.contains(view.section());
            once.add(isSaid ? view.doing(AS_ABOVE) : view);
            above = view.remedy();
        }
        return once;
    }

    private static Optional<FoundView> squares(PrintedSheet sheet) {
        List<String> missing = sheet.missingLetters();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new FoundView(
                                "sheets",
                                "Sheets to print",
                                "note",
                                sheet.sheet().title(),
                                "No font of the sheets has these letters, and squares stand in"
                                        + " their place: "
                                        + String.join(" ", missing),
                                "Lines and figures are right all the same; write names on the"
                                        + " sheet by hand, or give them in another script.",
                                List.of()));
    }

    /** What holds of several cloths or closures alike is told once, with all their names. */
    private static List<FoundView> gravestFirst(List<Worksheet> worksheets, List<String> sources) {
        List<FoundView> views = new ArrayList<>();
        for (Finding.Level level : gravestFirst()) {
            for (Worksheet worksheet : worksheets) {
                Map<Finding, Set<String>> about = new LinkedHashMap<>();
                worksheet.findings().stream()
                        .filter(finding -> finding.level() == level)
                        .forEach(
                                finding ->
                                        about.computeIfAbsent(
                                                        nameless(finding),
                                                        same -> new LinkedHashSet<>())
                                                .add(finding.about().words()));
                about.forEach(
                        (finding, names) ->
                                views.add(
                                        view(
                                                worksheet,
                                                finding,
                                                String.join(", ", names),
                                                sources)));
            }
        }
        return views;
    }

    private static List<Finding.Level> gravestFirst() {
        List<Finding.Level> levels = new ArrayList<>(List.of(Finding.Level.values()));
        Collections.reverse(levels);
        return levels;
    }

    private static Finding nameless(Finding finding) {
        return new Finding(
                        finding.code(), NAMELESS, finding.level(), finding.text(), finding.remedy())
                .citing(finding.sources());
    }

    private static FoundView view(
            Worksheet worksheet, Finding finding, String about, List<String> sources) {
        finding.sources().stream().filter(s -> !sources.contains(s)).forEach(sources::add);
        return new FoundView(
                worksheet.name(),
                worksheet.title(),
                finding.level().name().toLowerCase(Locale.ROOT),
                about,
                finding.text(),
                finding.remedy(),
                finding.sources().stream().map(s -> sources.indexOf(s) + 1).distinct().toList());
    }

    private static PaperView view(PaperChoice choice, Tape tape) {
        Paper paper = choice.paper();
        String size = tape.print(paper.across()) + " × " + tape.print(paper.along());
        return new PaperView(paper.words(), size, choice.because());
    }

    private static SheetView view(PrintedSheet sheet) {
        return new SheetView(
                sheet.sheet().title(),
                sheet.sheet().name(),
                sheet.file(),
                sheet.code().text(),
                sheet.pages().size(),
                sheet.paper().words(),
                sheet.isStopped());
    }

    private static SectionView section(Workings project, Worksheet worksheet) {
        Set<Subject> shown = worksheet.shows();
        return new SectionView(
                worksheet.name(),
                worksheet.title(),
                (int) project.stops().stream().filter(f -> f.about().touchesAny(shown)).count(),
                (int)
                        worksheet.findings().stream()
                                .filter(f -> f.level() == Finding.Level.WARNING)
                                .count(),
                worksheet.blocks().stream().map(BlockView::of).toList());
    }
}
