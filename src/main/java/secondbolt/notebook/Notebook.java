package secondbolt.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import secondbolt.draw.pdf.Faces;
import secondbolt.fault.Fault;
import secondbolt.file.Form;
import secondbolt.file.ProjectFileReader;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.notebook.site.Contents;
import secondbolt.notebook.site.SiteFile;
import secondbolt.parallel.Workers;
import secondbolt.project.Workings;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;

/**
 * Makes the whole site of some projects, in memory. Made again, it lays out and renders only what
 * is not as it was the last time.
 *
 * <p>Not safe to share between threads.
 */
public final class Notebook {
    /** The language of the pages' own words, as a BCP 47 tag. */
    static final String LANGUAGE = "en";

    /** Where the reference of the project file lies. */
    public static final String REFERENCE = "project-file.html";

    /** Where the JSON Schema of the project file lies. */
    public static final String SCHEMA = "project-file.schema.json";

    /** Beside each project's page: what its sheets show, for other programs. */
    public static final String WORKINGS = "workings.json";

    static final String INDEX = "index.html";
    private static final String INDEX_TEMPLATE = "index";
    private static final String PROJECT_TEMPLATE = "project";
    private static final String REFERENCE_TEMPLATE = "reference";

    /** Read once, however many notebooks are made. */
    private static final Templates TEMPLATES = new Templates();

    private final String version;
    private final Form<?> root;
    private final Map<String, Form<?>> beside;
    private final Memory memory = new Memory();

    /**
     * A notebook of which nothing was made yet.
     *
     * @param version of the program, printed on every page
     * @param root how a project file is written, for the reference
     * @param beside how files beside it are written, by their names
     */
    public Notebook(String version, Form<?> root, Map<String, Form<?>> beside) {
        this.version = version;
        this.root = root;
        this.beside = Collections.unmodifiableMap(new LinkedHashMap<>(beside));
    }

    /** Reads what every notebook needs, which otherwise the first page and sheet do. */
    public static void readAhead() {
        TEMPLATES.read(List.of(INDEX_TEMPLATE, PROJECT_TEMPLATE, REFERENCE_TEMPLATE));
        Faces.read();
    }

    /**
     * All files of the site, in the order in which they may be put in place: what is linked to
     * before what links to it, the front page and the list of contents last. The same input gives
     * the same bytes, whatever was made before.
     *
     * @param projects in the order in which the front page lists them
     * @param kept projects of earlier runs, whose files stay as they are, in the folder the site
     *     will be written to
     * @param desk the maker's paper; what is off with her printer is corrected on no sheet of a
     *     site
     * @throws IllegalArgumentException if a folder cannot be that of pages, or two are taken for
     *     one by some machines; {@link FolderName} tells a maker
     * @throws IllegalStateException if a template is missing or wrong
     */
    public List<SiteFile> make(List<Workings> projects, List<Kept> kept, Desk desk) {
        checkFolders(projects);
        memory.begin();
        try (Workers workers = new Workers()) {
            List<SiteFile> files = new Making(desk, workers).site(projects, kept);
            memory.end();
            return files;
        }
    }

    private static void checkFolders(List<Workings> projects) {
        List<String> folders = projects.stream().map(Workings::folder).toList();
        List<FolderName.Refusal> faults =
                new ArrayList<>(
                        folders.stream().flatMap(f -> FolderName.refusal(f).stream()).toList());
        faults.addAll(FolderName.clashes(folders).values());
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(faults.get(0).found());
        }
    }

    /**
     * A project with its sheets laid out on paper.
     *
     * @param sheets of all worksheets
     */
    private record Laid(Workings project, PaperChoice paper, List<PrintedSheet> sheets) {
        String folder() {
            return project.folder() + "/";
        }
    }

    /** All that a project's page and figures depend on. */
    private record PageAsked(Workings project, PaperChoice paper, List<PrintedSheet> sheets) {}

    /** One making of the site. */
    private final class Making {
        private final Desk desk;
        private final Workers workers;
        private final List<Supplier<SiteFile>> files = new ArrayList<>();

        Making(Desk desk, Workers workers) {
            // Whoever the site is passed on to has a printer of his own.
            this.desk = desk.printingTrue();
            this.workers = workers;
        }

        List<SiteFile> site(List<Workings> projects, List<Kept> kept) {
            List<Supplier<Laid>> laid =
                    projects.stream()
                            .map(p -> workers.begin(() -> Fault.during(p.folder(), () -> laid(p))))
                            .toList();
            Look.files().forEach(file -> files.add(() -> file));
            List<Supplier<ProjectPage>> pages =
                    laid.stream().map(project -> begin(project.get())).toList();
            reference();
            List<SiteFile> made = new ArrayList<>(files.stream().map(Supplier::get).toList());
            IndexPage index =
                    IndexPage.of(
                            version, projects, pages.stream().map(Supplier::get).toList(), kept);
            made.add(page(INDEX, INDEX_TEMPLATE, index));
            made.add(
                    Contents.of(
                            version,
                            made,
                            kept.stream().flatMap(one -> one.paths().stream()).toList()));
            return List.copyOf(made);
        }

        private Laid laid(Workings project) {
            PaperChoice paper = PaperChoice.of(desk, project.heading());
            List<Finding> stops = project.stops();
            List<PrintedSheet> sheets =
                    project.sheets().stream()
                            .map(sheet -> laid(project, stops, sheet, paper))
                            .toList();
            return new Laid(project, paper, sheets);
        }

        private PrintedSheet laid(
                Workings project, List<Finding> stops, Sheet sheet, PaperChoice paper) {
            PrintedSheet.Asked asked =
                    PrintedSheet.Asked.of(project.heading(), stops, sheet, paper);
            String place = "laid " + project.folder() + "/" + sheet.name();
            return memory.recall(
                    place, asked, () -> Fault.during(atSheet(sheet), () -> PrintedSheet.of(asked)));
        }

        private static String atSheet(Sheet sheet) {
            return "the sheet " + sheet.name();
        }

        /** Begins all files of a project. */
        private Supplier<ProjectPage> begin(Laid laid) {
            Workings project = laid.project();
            for (PrintedSheet sheet : laid.sheets()) {
                String path = laid.folder() + sheet.file();
                Object asked = List.of(project.heading().title(), sheet);
                begin(
                        path,
                        asked,
                        () ->
                                Fault.during(
                                        project.folder(),
                                        () ->
                                                Fault.during(
                                                        atSheet(sheet.sheet()),
                                                        () ->
                                                                SiteFile.bytes(
                                                                        path,
                                                                        sheet.pdf(
                                                                                project
                                                                                        .heading())))));
            }
            PageAsked asked = new PageAsked(project, laid.paper(), laid.sheets());
            String workings = laid.folder() + WORKINGS;
            begin(workings, asked, () -> SiteFile.text(workings, workings(laid)));
            Supplier<ProjectPage> page =
                    workers.begin(
                            () ->
                                    memory.recall(
                                            "page " + laid.folder(),
                                            asked,
                                            () ->
                                                    Fault.during(
                                                            project.folder(), () -> shown(laid))));
            String index = laid.folder() + INDEX;
            begin(index, asked, () -> page(index, PROJECT_TEMPLATE, page.get()));
            return page;
        }

        private void begin(String path, Object asked, Supplier<SiteFile> make) {
            files.add(workers.begin(() -> memory.recall(path, asked, make)));
        }

        private String workings(Laid laid) {
            return WorkingsFile.write(version, laid.project(), laid.sheets(), laid.paper());
        }

        private ProjectPage shown(Laid laid) {
            return ProjectPage.of(version, laid.project(), laid.sheets(), laid.paper());
        }

        private void reference() {
            begin(
                    SCHEMA,
                    root,
                    () ->
                            SiteFile.text(
                                    SCHEMA,
                                    ProjectFileReader.schema(root, "Project file of Secondbolt")));
            begin(
                    REFERENCE,
                    root,
                    () ->
                            page(
                                    REFERENCE,
                                    REFERENCE_TEMPLATE,
                                    ReferencePage.of(version, root, beside)));
        }
    }

    private static SiteFile page(String path, String template, Object page) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("page", page);
        values.put("language", LANGUAGE);
        return SiteFile.text(path, TEMPLATES.fill(template, values));
    }
}
