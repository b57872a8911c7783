package secondbolt.notebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import secondbolt.draw.pdf.Faces;
import secondbolt.file.Form;
import secondbolt.file.ProjectFileReader;
import secondbolt.notebook.site.Contents;
import secondbolt.notebook.site.SiteFile;
import secondbolt.project.Workings;

/** Makes the whole site of some projects, in memory. */
public final class Notebook {
    /** The language of the pages' own words, as a BCP 47 tag. */
    static final String LANGUAGE = "en";

    /** Where the reference of the project file lies. */
    public static final String REFERENCE = "project-file.html";

    /** Where the JSON Schema of the project file lies. */
    public static final String SCHEMA = "project-file.schema.json";

    /** Beside each project's page: what its sheets show, for other programs. */
    public static final String WORKINGS = "workings.json";

    private static final String INDEX = "index.html";
    private static final String INDEX_TEMPLATE = "index";
    private static final String PROJECT_TEMPLATE = "project";
    private static final String REFERENCE_TEMPLATE = "reference";

    /** Read once, however many notebooks are made. */
    private static final Templates TEMPLATES = new Templates();

    private final String version;
    private final Desk desk;
    private final Workers workers;
    private final List<Supplier<SiteFile>> files = new ArrayList<>();

    private Notebook(String version, Desk desk, Workers workers) {
        this.version = version;
        this.desk = desk;
        this.workers = workers;
    }

    /** Reads what every notebook needs, which otherwise the first page and sheet do. */
    public static void readAhead() {
        TEMPLATES.read(List.of(INDEX_TEMPLATE, PROJECT_TEMPLATE, REFERENCE_TEMPLATE));
        Faces.read();
    }

    /**
     * All files of the site, in the order in which they may be put in place: what is linked to
     * before what links to it, the front page and the list of contents last. The same input gives
     * the same bytes.
     *
     * @param version of the program, printed on every page
     * @param projects in the order in which the front page lists them
     * @param desk the maker's paper and printer
     * @param root how a project file is written, for the reference
     * @throws IllegalArgumentException if two projects' folders differ in capitals at most, or a
     *     name cannot be that of a file
     * @throws IllegalStateException if a template is missing or wrong
     */
    public static List<SiteFile> of(
            String version, List<Workings> projects, Desk desk, Form<?> root) {
        return of(version, projects, List.of(), desk, root);
    }

    /**
     * The same beside projects of earlier runs, whose files stay as they are.
     *
     * @param kept those, in the folder the site will be written to
     */
    public static List<SiteFile> of(
            String version, List<Workings> projects, List<Kept> kept, Desk desk, Form<?> root) {
        checkFolders(projects);
        try (Workers workers = new Workers()) {
            return new Notebook(version, desk, workers).site(projects, kept, root);
        }
    }

    private List<SiteFile> site(List<Workings> projects, List<Kept> kept, Form<?> root) {
        List<Supplier<Laid>> laid =
                projects.stream().map(p -> workers.begin(() -> laid(p))).toList();
        Look.files().forEach(file -> files.add(() -> file));
        List<Supplier<ProjectPage>> pages =
                laid.stream().map(project -> begin(project.get())).toList();
        reference(root);
        List<SiteFile> made = new ArrayList<>(files.stream().map(Supplier::get).toList());
        made.add(
                page(
                        INDEX,
                        INDEX_TEMPLATE,
                        IndexPage.of(
                                version,
                                projects,
                                pages.stream().map(Supplier::get).toList(),
                                kept)));
        made.add(
                Contents.of(
                        version,
                        made,
                        kept.stream().flatMap(one -> one.paths().stream()).toList()));
        return List.copyOf(made);
    }

    /** Some file systems keep two names that differ in capitals apart, others do not. */
    private static void checkFolders(List<Workings> projects) {
        Set<String> seen = new HashSet<>();
        seen.addAll(List.of(Look.FOLDER, INDEX, REFERENCE, SCHEMA, Contents.PATH));
        for (Workings project : projects) {
            String folder = project.folder();
            if (folder.contains("/") || !seen.add(folder.toLowerCase(Locale.ROOT))) {
                throw new IllegalArgumentException("not a folder of its own: " + folder);
            }
        }
    }

    /**
     * A project with its sheets laid out on paper.
     *
     * @param sheets of each worksheet
     */
    private record Laid(Workings project, PaperChoice paper, List<List<PrintedSheet>> sheets) {
        String folder() {
            return project.folder() + "/";
        }

        List<PrintedSheet> all() {
            return sheets.stream().flatMap(List::stream).toList();
        }
    }

    private Laid laid(Workings project) {
        PaperChoice paper = PaperChoice.of(desk, project.heading());
        List<List<PrintedSheet>> sheets =
                project.worksheets().stream()
                        .map(worksheet -> PrintedSheet.of(project.heading(), worksheet, paper))
                        .toList();
        return new Laid(project, paper, sheets);
    }

    /** Begins all files of a project. */
    private Supplier<ProjectPage> begin(Laid laid) {
        Workings project = laid.project();
        for (PrintedSheet sheet : laid.all()) {
            files.add(
                    workers.begin(
                            () ->
                                    SiteFile.bytes(
                                            laid.folder() + sheet.file(),
                                            sheet.pdf(project.heading()))));
        }
        files.add(
                workers.begin(
                        () ->
                                SiteFile.text(
                                        laid.folder() + WORKINGS,
                                        WorkingsFile.write(
                                                version, project, laid.all(), laid.paper()))));
        Supplier<ProjectPage> page =
                workers.begin(
                        () ->
                                ProjectPage.of(
                                        version,
                                        project,
                                        laid.sheets(),
                                        laid.paper(),
                                        desk.correction()));
        files.add(workers.begin(() -> page(laid.folder() + INDEX, PROJECT_TEMPLATE, page.get())));
        return page;
    }

    private void reference(Form<?> root) {
        files.add(
                workers.begin(
                        () ->
                                SiteFile.text(
                                        SCHEMA,
                                        ProjectFileReader.schema(
                                                root, "Project file of Secondbolt"))));
        files.add(
                workers.begin(
                        () ->
                                page(
                                        REFERENCE,
                                        REFERENCE_TEMPLATE,
                                        ReferencePage.of(version, root))));
    }

    private static SiteFile page(String path, String template, Object page) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("page", page);
        values.put("language", LANGUAGE);
        return SiteFile.text(path, TEMPLATES.fill(template, values));
    }
}
