package secondbolt.project;

import java.nio.file.Path;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.plan.PlanFile;

/** Reads a project from its folder. */
public final class ProjectReader {
    /** The name of the file in a project's folder. */
    public static final String FILE = "project.yaml";

    private ProjectReader() {}

    /**
     * Reads a project file.
     *
     * @param file where it lies
     * @param name the file as mistakes shall name it
     * @param form how it is written
     * @param mistakes told all that is wrong
     * @return the project, if nothing was wrong
     */
    public static Optional<Project> read(
            Path file, String name, Form<Project> form, Mistakes mistakes) {
        int before = mistakes.count();
        return SourceFile.read(file, name, mistakes)
                .flatMap(
                        source ->
                                read(
                                        source,
                                        source.beside(PlanFile.NAME, mistakes),
                                        form,
                                        mistakes))
                .filter(p -> mistakes.count() == before);
    }

    /**
     * The same from its text, and that of the plan that is pinned.
     *
     * @param plan the plan of cutting beside it, if there is one
     */
    public static Optional<Project> read(
            SourceFile source, Optional<SourceFile> plan, Form<Project> form, Mistakes mistakes) {
        int before = mistakes.count();
        Optional<Project> project = read(source, form, mistakes);
        Optional<PlanFile.Plan> pinned = plan.flatMap(file -> pinned(file, mistakes));
        pinned.ifPresent(
                pieces ->
                        project.ifPresent(
                                p -> p.sections().add(PlanFile.PLAN, pieces, plan.orElseThrow())));
        return project.filter(p -> mistakes.count() == before);
    }

    private static Optional<PlanFile.Plan> pinned(SourceFile plan, Mistakes mistakes) {
        return ProjectFileReader.read(plan, PlanFile.ROOT, PlanFile.UNITS, mistakes);
    }

    /** The same from its text. */
    public static Optional<Project> read(SourceFile source, Form<Project> form, Mistakes mistakes) {
        return ProjectFileReader.read(source, form, ProjectSection.UNITS, mistakes);
    }
}
