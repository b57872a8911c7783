package secondbolt.project;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.topic.Engine;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;

/**
 * Where one project is read and worked out, as often as it is saved: what did not change since the
 * last time is not worked out again.
 *
 * <p>Not safe to share between threads.
 */
public final class Workshop {
    private final Form<Project> form;
    private final List<Topic<?>> topics;
    private final Engine engine;

    /**
     * A workshop in which nothing was worked out yet.
     *
     * @param topics in the order of working
     */
    public Workshop(List<Topic<?>> topics) {
        this.form = ProjectSection.form(topics);
        this.topics = List.copyOf(topics);
        this.engine = new Engine(topics);
    }

    /**
     * Reads a project and works it out.
     *
     * @param file where it lies
     * @param name the file as mistakes shall name it
     * @param folder the name of its folder, which names its pages
     * @param mistakes told all that is wrong
     * @return the project worked out, if nothing was wrong
     */
    public Optional<Workings> work(Path file, String name, String folder, Mistakes mistakes) {
        return ProjectReader.read(file, name, form, mistakes)
                .flatMap(project -> work(project, folder));
    }

    /** The same from its text. */
    public Optional<Workings> work(SourceFile source, String folder, Mistakes mistakes) {
        return work(source, Optional.empty(), folder, mistakes);
    }

    /** The same from its text and that of the plan of cutting beside it, if there is one. */
    public Optional<Workings> work(
            SourceFile source, Optional<SourceFile> plan, String folder, Mistakes mistakes) {
        return ProjectReader.read(source, plan, form, mistakes)
                .flatMap(project -> work(project, folder));
    }

    private Optional<Workings> work(Project project, String folder) {
        List<Outcome<?>> outcomes = engine.run(project.sections());
        project.sections()
                .tellAll(
                        outcomes.stream().flatMap(outcome -> outcome.troubles().stream()).toList());
        return outcomes.stream().allMatch(outcome -> outcome.troubles().isEmpty())
                ? Optional.of(
                        new Workings(
                                folder,
                                project.heading(),
                                named(
                                        new OpenKeys(topics, project.sections().leftOpen())
                                                .with(outcomes))))
                : Optional.empty();
    }

    private Map<String, Outcome<?>> named(List<Outcome<?>> outcomes) {
        Map<String, Outcome<?>> named = new LinkedHashMap<>();
        for (int i = 0; i < topics.size(); i++) {
            named.put(topics.get(i).name().word(), outcomes.get(i));
        }
        return named;
    }

    /** How often the last working out took a topic's step, as written or as supposed. */
    public int timesWorked(String topic) {
        return engine.timesWorked(topic);
    }
}
