package secondbolt.task;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.WrittenProject;
import secondbolt.topic.Engine;
import secondbolt.topic.Topic;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;
import secondbolt.worksheet.Worksheet;

/**
 * What the topics of a written project contribute, as a test reads it.
 *
 * @param all of all topics together
 */
public record Given(Gives all) {
    /** Of a project written in a test, which must be without a mistake. */
    public static Given of(String... lines) {
        return read(SourceFile.of("project.yaml", "title: A test\n" + String.join("\n", lines)));
    }

    /** Of one of the demo projects, whose cloth is not laid, for that takes long. */
    public static Given demo(String name) {
        Mistakes mistakes = new Mistakes();
        List<Topic<?>> quick =
                Topics.all(LayDesk.inMemory()).stream().filter(Topic::isSupposed).toList();
        return SourceFile.read(Path.of("projects", name, "project.yaml"), "project.yaml", mistakes)
                .flatMap(file -> WrittenProject.read(file, mistakes))
                .map(written -> new Engine(quick).run(written.project().sections()))
                .map(all -> of(all.stream().flatMap(o -> o.worksheet().stream()).toList()))
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    private static Given read(SourceFile file) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(file, mistakes)
                .map(written -> of(written.workings("test").worksheets()))
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    private static Given of(List<Worksheet> sheets) {
        return new Given(sheets.stream().map(Worksheet::gives).reduce(Gives.NOTHING, Gives::and));
    }

    /** The names of all steps, in the order they are given. */
    public List<String> names() {
        return all.steps().stream().map(WorkStep::name).toList();
    }

    /** The step of a name, which must be there. */
    public WorkStep step(String name) {
        return all.steps().stream()
                .filter(step -> step.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step " + name + " of " + names()));
    }

    /** The names of the steps that one follows. */
    public List<String> before(String name) {
        return step(name).follows().stream().map(WorkStep.Follows::step).toList();
    }

    /** Everything needed, each as a line: how many, what, what for. */
    public List<String> needs() {
        List<String> needs = new ArrayList<>();
        for (Need need : all.needs()) {
            needs.add(
                    (need.amount() instanceof Amount.Pieces pieces ? pieces.count() + " " : "")
                            + need.item()
                            + " | "
                            + need.why());
        }
        return needs;
    }

    /** The words that are explained. */
    public List<String> words() {
        return all.words().stream().map(Term::word).toList();
    }
}
