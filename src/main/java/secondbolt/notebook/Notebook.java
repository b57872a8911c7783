package secondbolt.notebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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

    /** Read once, however many notebooks are made. */
    private static final Templates TEMPLATES = new Templates();

    private final String version;
    private final Desk desk;
    private final List<SiteFile> files = new ArrayList<>();

    private Notebook(String version, Desk desk) {
        this.version = version;
        this.desk = desk;
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
        checkFolders(projects);
        Notebook notebook = new Notebook(version, desk);
        notebook.files.addAll(Look.files());
        List<ProjectPage> pages = projects.stream().map(notebook::project).toList();
        notebook.reference(root);
        notebook.page(INDEX, "index", IndexPage.of(version, projects, pages));
        notebook.files.add(Contents.of(version, notebook.files));
        return List.copyOf(notebook.files);
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

    private ProjectPage project(Workings project) {
        PaperChoice paper = PaperChoice.of(desk, project.heading());
        List<List<PrintedSheet>> sheets =
                project.worksheets().stream()
                        .map(worksheet -> PrintedSheet.of(project.heading(), worksheet, paper))
                        .toList();
        List<PrintedSheet> all = sheets.stream().flatMap(List::stream).toList();
        String folder = project.folder() + "/";
        for (PrintedSheet sheet : all) {
            files.add(SiteFile.bytes(folder + sheet.file(), sheet.pdf(project.heading())));
        }
        String workings = WorkingsFile.write(version, project, all, paper);
        files.add(SiteFile.text(folder + WORKINGS, workings));
        ProjectPage page = ProjectPage.of(version, project, sheets, paper, desk.correction());
        page(folder + INDEX, "project", page);
        return page;
    }

    private void reference(Form<?> root) {
        files.add(
                SiteFile.text(
                        SCHEMA, ProjectFileReader.schema(root, "Project file of Secondbolt")));
        page(REFERENCE, "reference", ReferencePage.of(version, root));
    }

    private void page(String path, String template, Object page) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("page", page);
        values.put("language", LANGUAGE);
        files.add(SiteFile.text(path, TEMPLATES.fill(template, values)));
    }
}
