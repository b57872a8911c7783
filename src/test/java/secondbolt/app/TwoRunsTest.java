package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.disk.AtomicFile;
import secondbolt.disk.FolderLock;
import secondbolt.notebook.site.SiteLock;

/** Two runs at once wait for each other. */
class TwoRunsTest {
    private static final String BAND =
            """
            title: %s
            units: cm
            closures:
              band: {length: 65, extension: 1.8, buttons: 7, first: 1.5, last: 11, holes: upright,
                button: {across: 11 mm, thick: 2.5 mm}, laps: left over right}
            """;

    private static final List<String> PROJECTS = List.of("apron", "bag", "coat");

    @TempDir Path folder;

    @BeforeEach
    void projects() {
        PROJECTS.forEach(
                name ->
                        new Desktop(folder)
                                .with(
                                        "projects/" + name + "/project.yaml",
                                        BAND.formatted("Title " + name)));
    }

    private static <T> List<T> atOnce(List<Callable<T>> works)
            throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(works.size());
        try {
            List<T> results = new ArrayList<>();
            for (Future<T> one : threads.invokeAll(works)) {
                results.add(one.get());
            }
            return results;
        } finally {
            threads.shutdown();
        }
    }

    private List<String> site() throws IOException {
        Path site = folder.resolve("site");
        try (Stream<Path> all = Files.walk(site)) {
            return all.filter(Files::isRegularFile)
                    .map(file -> site.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void neitherRunDeletesThePagesOfTheOther()
            throws IOException, InterruptedException, ExecutionException {
        List<Callable<Integer>> runs = new ArrayList<>();
        for (String name : PROJECTS) {
            runs.add(() -> new Desktop(folder).run("notebook", "projects/" + name));
        }
        runs.add(() -> new Desktop(folder).run("notebook", "projects"));
        assertEquals(List.of(0, 0, 0, 0), atOnce(runs));
        List<String> together = site();
        String index = Files.readString(folder.resolve("site/index.html"));
        PROJECTS.forEach(name -> assertTrue(index.contains("Title " + name), name));
        assertEquals(0, new Desktop(folder).run("notebook"));
        assertEquals(together, site());
        assertEquals(index, Files.readString(folder.resolve("site/index.html")));
        assertFalse(together.toString().contains("lock"), together.toString());
    }

    @Test
    void itIsToldThatARunWaitsAndThatItHasWaitedLongEnough() {
        Path site = folder.resolve("site");
        AtomicInteger told = new AtomicInteger();
        SiteLock first = SiteLock.take(site, 1, told::incrementAndGet);
        assertEquals(0, told.get());
        UncheckedIOException e =
                assertThrows(
                        UncheckedIOException.class,
                        () -> SiteLock.take(site, 2, told::incrementAndGet));
        assertTrue(e.getMessage().contains("another run is still writing here"), e.getMessage());
        assertEquals(1, told.get());
        first.close();
        SiteLock.take(site, 1, told::incrementAndGet).close();
        assertEquals(1, told.get());
        assertFalse(Files.exists(site), "nothing was written");
    }

    @Test
    void aLockThatAKilledRunLeftIsTakenOver() throws IOException {
        new Desktop(folder).with("site/" + FolderLock.NAME, "");
        assertEquals(0, new Desktop(folder).run("notebook"));
        assertFalse(site().contains(FolderLock.NAME));
    }

    /** It was killed when all was written already, so nothing is left to do but this. */
    @Test
    void aLockThatWasLeftGoesAlsoWhereNothingChanged() throws IOException {
        for (int i = 0; i < 2; i++) {
            assertEquals(0, new Desktop(folder).run("notebook"));
            new Desktop(folder).with("site/" + FolderLock.NAME, "");
        }
        assertEquals(0, new Desktop(folder).run("notebook"));
        assertFalse(site().contains(FolderLock.NAME));
    }

    /** Else the older state, read before the wait, would be written over the newer one. */
    @ParameterizedTest
    @ValueSource(strings = {"notebook", "notebook projects/apron"})
    void whatIsSavedWhileARunWaitsIsInTheSite(String command) {
        SiteLock other = SiteLock.take(folder.resolve("site"), 1, () -> {});
        StringWriter told =
                new StringWriter() {
                    @Override
                    public void write(String text, int from, int length) {
                        super.write(text, from, length);
                        if (text.contains("waiting")) {
                            new Desktop(folder)
                                    .with("projects/apron/project.yaml", BAND.formatted("Newer"));
                            other.close();
                        }
                    }
                };
        PrintWriter to = new PrintWriter(told);
        assertEquals(0, new Secondbolt(folder, to, to).run(command.split(" ")), told::toString);
        assertTrue(told.toString().contains("waiting"), told::toString);
        assertTrue(new Desktop(folder).read("site/apron/index.html").contains("Newer"));
        assertTrue(new Desktop(folder).read("site/index.html").contains("Newer"));
    }

    /** The last writer's file is whole, and no temporary stays. */
    @Test
    void aFileThatManyWriteAtOnceIsThatOfOneOfThem()
            throws IOException, InterruptedException, ExecutionException {
        Path target = folder.resolve("plan.yaml");
        List<Callable<Boolean>> writers = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            byte[] content = String.valueOf(i).repeat(100_000).getBytes(StandardCharsets.UTF_8);
            writers.add(
                    () -> {
                        for (int k = 0; k < 20; k++) {
                            AtomicFile.write(target, content);
                        }
                        return true;
                    });
        }
        atOnce(writers);
        String text = Files.readString(target);
        assertEquals(text.substring(0, 1).repeat(100_000), text);
        try (Stream<Path> all = Files.list(folder)) {
            assertEquals(List.of(), all.filter(f -> f.toString().endsWith("~")).toList());
        }
    }

    /** The temporary of a run that was killed goes; a link of its name is someone else's. */
    @Test
    void leftoversAreClearedAway() throws IOException {
        Path target = folder.resolve("plan.yaml");
        Files.writeString(folder.resolve("plan.yaml.part~"), "half");
        Files.writeString(folder.resolve("plan.yaml.999999999-1.part~"), "half");
        Path link = folder.resolve("plan.yaml.999999999-2.part~");
        Files.createSymbolicLink(link, folder.resolve("hers"));
        AtomicFile.write(target, "whole".getBytes(StandardCharsets.UTF_8));
        try (Stream<Path> all = Files.list(folder)) {
            assertEquals(List.of(link), all.filter(f -> f.toString().endsWith("~")).toList());
        }
        assertFalse(Files.exists(folder.resolve("hers")));
    }
}
