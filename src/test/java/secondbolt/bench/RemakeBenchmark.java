package secondbolt.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.notebook.Notebook;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.site.SiteFile;
import secondbolt.notebook.site.SiteWriter;
import secondbolt.project.ProjectSection;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.topic.Topic;

/**
 * What a change costs: the notebook made again beside the notebook made anew, every lay kept.
 *
 * <p>Cold, each run a process of its own, the demo projects unchanged; warm, in one process, the
 * shirt after another count of buttons.
 */
public final class RemakeBenchmark {
    private static final int COLD_ROUNDS = 7;
    private static final int WARM_ROUNDS_BEFORE = 10;
    private static final int WARM_ROUNDS = 31;

    private static final Path FOLDER = Path.of("target/bench-remake").toAbsolutePath();
    private static final Path JAR = Path.of("target/secondbolt.jar").toAbsolutePath();
    private static final Path SHIRT = Path.of("projects/porch-shirt/project.yaml");

    private final List<Topic<?>> topics = Topics.all(LayDesk.inMemory());
    private final Workshop workshop = new Workshop(topics);
    private final Notebook notebook = new Notebook("0", ProjectSection.form(topics), Map.of());
    private final String shirt;
    private int buttons = 7;

    private RemakeBenchmark(String shirt) {
        this.shirt = shirt;
    }

    /** Runs both races and tells their medians. */
    public static void main(String[] args) throws Exception {
        if (!Files.exists(JAR)) {
            throw new IllegalStateException(JAR + " is not there: mvn -DskipTests package");
        }
        Folders.removed(FOLDER);
        Folders.copied(Path.of("projects"), FOLDER.resolve("projects"));
        print("cold, a process each", cold());
        print(
                "warm, the shirt in one process",
                new RemakeBenchmark(Files.readString(SHIRT)).warm());
    }

    private static void print(String title, Race race) {
        System.out.println(title);
        race.told().forEach(System.out::println);
    }

    private static Race cold() throws Exception {
        java();
        Race race =
                new Race(() -> {})
                        .with("unchanged", RemakeBenchmark::java)
                        .with(
                                "made anew, lays kept",
                                () -> {
                                    Folders.removed(FOLDER.resolve("site"));
                                    java();
                                });
        race.run(1, COLD_ROUNDS);
        return race;
    }

    private static void java() throws Exception {
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-jar",
                                JAR.toString(),
                                "--quiet")
                        .directory(FOLDER.toFile())
                        .inheritIO()
                        .start();
        if (!process.waitFor(5, TimeUnit.MINUTES) || process.exitValue() != 0) {
            throw new IllegalStateException("the notebook was not made");
        }
    }

    private Race warm() throws Exception {
        Path site = FOLDER.resolve("warm");
        Race race =
                new Race(() -> buttons = buttons == 7 ? 8 : 7)
                        .with(
                                "one count of buttons changed",
                                () -> remake(workshop, notebook, site))
                        .with(
                                "made anew, lays kept",
                                () ->
                                        remake(
                                                new Workshop(topics),
                                                new Notebook(
                                                        "0", ProjectSection.form(topics), Map.of()),
                                                site));
        race.run(WARM_ROUNDS_BEFORE, WARM_ROUNDS);
        return race;
    }

    private void remake(Workshop at, Notebook of, Path site) throws IOException {
        String text = shirt.replace("buttons: 7", "buttons: " + buttons);
        Mistakes mistakes = new Mistakes();
        Path file = FOLDER.resolve("projects/porch-shirt/project.yaml");
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        Workings workings =
                SourceFile.read(file, "project.yaml", mistakes)
                        .flatMap(source -> at.work(source, "porch-shirt", mistakes))
                        .orElseThrow();
        List<SiteFile> files = of.make(List.of(workings), List.of(), Desk.UNKNOWN);
        SiteWriter.write(site, files);
    }
}
