package secondbolt.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.fastening.Machine;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.ClosureSection;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.Trouble;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.plan.HemSection;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.plan.LayCheck;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.LaySection;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.AlterationSection;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.PatternSection;
import secondbolt.textile.Cloth;
import secondbolt.textile.ClothSection;
import secondbolt.topic.Engine;
import secondbolt.topic.Topic;
import secondbolt.wearer.Wearer;
import secondbolt.wearer.WearerSection;

/**
 * A project as written in a test, read and checked, with what stands in its sections.
 *
 * @param project as read
 * @param source its text
 */
public record WrittenProject(Project project, SourceFile source) {
    /** Reads and checks a project; nothing if anything is wrong. */
    public static Optional<WrittenProject> read(SourceFile source, Mistakes mistakes) {
        List<Topic<?>> topics = Topics.all(LayDesk.inMemory());
        Optional<WrittenProject> read =
                ProjectReader.read(source, ProjectSection.form(topics), mistakes)
                        .map(project -> new WrittenProject(project, source));
        read.ifPresent(WrittenProject::check);
        return read.filter(project -> mistakes.isEmpty());
    }

    /** All that is checked, but for what needs a search. */
    private void check() {
        List<Topic<?>> quick =
                Topics.all(LayDesk.inMemory()).stream().filter(Topic::isSupposed).toList();
        List<Trouble> troubles = new ArrayList<>();
        new Engine(quick)
                .run(project.sections())
                .forEach(outcome -> troubles.addAll(outcome.troubles()));
        pattern().ifPresent(p -> troubles.addAll(LayCheck.of(lay(), p, cloths().orElse(Map.of()))));
        project.sections().tellAll(troubles);
    }

    /** What it says of itself. */
    public Heading heading() {
        return project.heading();
    }

    /** The project worked out. */
    public Workings workings(String folder) {
        return new Workshop(Topics.all(LayDesk.inMemory()))
                .work(source, folder, new Mistakes())
                .orElseThrow();
    }

    /** The pattern, if written. */
    public Optional<Pattern> pattern() {
        return project.get(PatternSection.KEY);
    }

    /** In her order. */
    public List<Alteration> alterations() {
        return project.get(AlterationSection.KEY).orElse(List.of());
    }

    /** Nothing in it if not written. */
    public Machine machine() {
        return project.get(Machine.KEY).orElse(Machine.UNKNOWN);
    }

    /** By name, if written. */
    public Optional<Map<String, Closure>> closures() {
        return project.get(ClosureSection.KEY);
    }

    /** By name. */
    public Map<String, Hem> hems() {
        return project.get(HemSection.KEY).orElse(Map.of());
    }

    /** If written. */
    public Optional<Wearer> wearer() {
        return project.get(WearerSection.KEY);
    }

    /** By name, if written. */
    public Optional<Map<String, Cloth>> cloths() {
        return project.get(ClothSection.KEY);
    }

    /** As written, all five sections. */
    public LayPlan lay() {
        return LaySection.plan(project.sections()::get);
    }

    /** Mistakes as tests hold them: line and column, what was found, what would be right. */
    public static List<String> words(Mistakes mistakes) {
        return mistakes.inOrder().stream()
                .map(
                        m ->
                                m.place().line()
                                        + ":"
                                        + m.place().column()
                                        + " "
                                        + m.found()
                                        + "; "
                                        + m.right())
                .toList();
    }
}
