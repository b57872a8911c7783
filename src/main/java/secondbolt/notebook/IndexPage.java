package secondbolt.notebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import secondbolt.project.Workings;

/**
 * What the front page shows.
 *
 * @param version of the program
 * @param projects each with a link to its page
 * @param isPersonal whether one of them shows what is known of a body
 */
public record IndexPage(String version, List<ProjectView> projects, boolean isPersonal) {
    /**
     * A project.
     *
     * @param folder where its page lies
     * @param title its title
     * @param summary Markdown; empty if there is none
     * @param stops how many findings forbid cutting
     * @param sheets how many sheets it has
     * @param pages how many pages they print on
     * @param isPersonal whether it shows what is known of a body
     */
    public record ProjectView(
            String folder,
            String title,
            String summary,
            int stops,
            int sheets,
            int pages,
            boolean isPersonal) {}

    /** Those made now and those kept, by the name of their folder if any is kept. */
    static IndexPage of(
            String version, List<Workings> projects, List<ProjectPage> pages, List<Kept> kept) {
        List<ProjectView> views = new ArrayList<>();
        for (int i = 0; i < projects.size(); i++) {
            ProjectPage page = pages.get(i);
            views.add(
                    new ProjectView(
                            projects.get(i).folder(),
                            page.title(),
                            page.summary(),
                            page.stops().size(),
                            page.sheets().size(),
                            page.sheets().stream().mapToInt(ProjectPage.SheetView::pages).sum(),
                            page.isPersonal()));
        }
        if (!kept.isEmpty()) {
            kept.stream().filter(Kept::hasPage).forEach(one -> views.add(one.shown()));
            views.sort(Comparator.comparing(ProjectView::folder));
        }
        return new IndexPage(version, views, views.stream().anyMatch(ProjectView::isPersonal));
    }
}
