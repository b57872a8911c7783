package secondbolt.project;

import java.nio.file.Path;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;

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
        return SourceFile.read(file, name, mistakes)
                .flatMap(source -> read(source, form, mistakes));
    }

    /** The same from its text. */
    public static Optional<Project> read(SourceFile source, Form<Project> form, Mistakes mistakes) {
        return ProjectFileReader.read(source, form, ProjectSection.UNITS, mistakes);
    }
}
