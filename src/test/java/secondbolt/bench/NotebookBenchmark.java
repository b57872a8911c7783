package secondbolt.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import secondbolt.app.Secondbolt;

/**
 * How long the notebook of the demo projects takes, and how many times as long as the {@link
 * Floor}: cold, each run a process of its own, and warm, many runs in one. Every run writes into a
 * fresh folder.
 *
 * <p>The notebook waits until its files are on the disk, which a bare program does not; since that
 * time belongs to the disk, the floor is run both ways.
 */
public final class NotebookBenchmark {
    private static final int COLD_ROUNDS = 9;
    private static final int WARM_ROUNDS_BEFORE = 60;
    private static final int WARM_ROUNDS = 101;

    private static final Path FOLDER = Path.of("target/bench");
    private static final Path SITE = FOLDER.resolve("site");
    private static final Path RECORDING = FOLDER.resolve("recording");
    private static final Path JAR = Path.of("target/secondbolt.jar");
    private static final String CLASSES = "target/test-classes";

    private NotebookBenchmark() {}

    /** Runs both races and tells their medians. */
    public static void main(String[] args) throws Exception {
        if (!Files.exists(JAR)) {
            throw new IllegalStateException(JAR + " is not there: mvn -DskipTests package");
        }
        record();
        print("cold, a process each, -Xmx128m", cold());
        print("warm, in one process", warm());
    }

    private static void print(String title, Race race) {
        System.out.println(title);
        race.told().forEach(System.out::println);
    }

    /** Records the site, and makes sure that the floor draws the same sheets from it. */
    private static void record() throws IOException {
        Folders.removed(FOLDER);
        notebook();
        Recording.record(SITE, RECORDING);
        Path floor = FOLDER.resolve("floor");
        Floor.write(RECORDING, floor, false);
        for (Path file : Recording.files(SITE)) {
            Path other = floor.resolve(SITE.relativize(file));
            boolean isSame =
                    file.toString().endsWith(".pdf")
                            ? drawn(file).equals(drawn(other))
                            : Files.mismatch(file, other) < 0;
            if (!isSame) {
                throw new IllegalStateException("the floor makes another " + file);
            }
        }
    }

    private static List<String> drawn(Path pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            for (PDPage page : document.getPages()) {
                pages.add(page.getMediaBox().toString());
                pages.add(Arrays.toString(page.getContents().readAllBytes()));
            }
        }
        return pages;
    }

    private static Race cold() throws Exception {
        String classPath = JAR + System.getProperty("path.separator") + CLASSES;
        String recording = RECORDING.toString();
        String site = SITE.toString();
        String[] notebook = {
            "-jar", JAR.toString(), "notebook", "projects", "--out", site, "--quiet"
        };
        String floor = Floor.class.getName();
        Race race =
                new Race(() -> Folders.removed(SITE))
                        .with("notebook", () -> java(notebook))
                        .with(
                                "notebook, quick compiler only",
                                () -> java(with("-XX:TieredStopAtLevel=1", notebook)))
                        .with(
                                "floor",
                                () -> java("-cp", classPath, floor, recording, site, "false"))
                        .with(
                                "floor that awaits the disk",
                                () -> java("-cp", classPath, floor, recording, site, "true"));
        race.run(1, COLD_ROUNDS);
        return race;
    }

    private static String[] with(String option, String... arguments) {
        List<String> all = new ArrayList<>(List.of(option));
        all.addAll(List.of(arguments));
        return all.toArray(String[]::new);
    }

    private static Race warm() throws Exception {
        Race race =
                new Race(() -> Folders.removed(SITE))
                        .with("notebook", NotebookBenchmark::notebook)
                        .with("floor", () -> Floor.write(RECORDING, SITE, false))
                        .with(
                                "floor that awaits the disk",
                                () -> Floor.write(RECORDING, SITE, true));
        race.run(WARM_ROUNDS_BEFORE, WARM_ROUNDS);
        return race;
    }

    private static void notebook() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        int code =
                new Secondbolt(Path.of(""), nowhere, nowhere)
                        .run("notebook", "projects", "--out", SITE.toString(), "--quiet");
        if (code != 0) {
            throw new IllegalStateException("the notebook was refused: " + code);
        }
    }

    private static void java(String... arguments) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-Xmx128m");
        command.addAll(List.of(arguments));
        int code = new ProcessBuilder(command).inheritIO().start().waitFor();
        if (code != 0) {
            throw new IllegalStateException(command + " ended with " + code);
        }
    }
}
