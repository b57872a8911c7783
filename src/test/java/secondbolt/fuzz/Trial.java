package secondbolt.fuzz;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import secondbolt.app.Secondbolt;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.kept.LayStore;
import secondbolt.notebook.Notebook;
import secondbolt.notebook.PrintedSheet;
import secondbolt.notebook.PrintedSheet.Asked;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.project.ProjectSection;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

/**
 * What the program makes of a project's folder, held against what must be: no failure, a place for
 * each mistake, an end in good time, and a site that is whole.
 */
final class Trial {
    private static final double LONGEST_SECONDS = 20;
    private static final Pattern TOLD = Pattern.compile("(?m)^(.*?):(\\d+):(\\d+): ");
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final LayStore NONE =
            new LayStore() {
                @Override
                public Optional<String> find(String key) {
                    return Optional.empty();
                }

                @Override
                public void keep(String key, String value) {
                    // Each mutant is laid by itself.
                }
            };

    private final Path folder;

    /**
     * Trials in a folder of their own.
     *
     * @param folder in which a project and its site are made
     */
    Trial(Path folder) {
        this.folder = folder;
    }

    /**
     * Reads a project and works it out, with its notebook in memory if that is asked for. No search
     * for a lay goes on for long.
     *
     * @param files of the project's folder, by their paths
     */
    Verdict workOut(Map<String, String> files, boolean isMade) {
        write(files);
        return timed(() -> judged(isMade));
    }

    private Verdict judged(boolean isMade) {
        Mistakes mistakes = new Mistakes();
        Path file = folder.resolve("projects/mutant/project.yaml");
        Optional<Workings> workings =
                new Workshop(Topics.all(new LayDesk(NONE, 1, (share, best) -> false)))
                        .work(file, "project.yaml", "mutant", mistakes);
        for (Mistake mistake : mistakes.inOrder()) {
            if (mistake.isOfProgram()) {
                return Verdict.wrong(mistake.toString());
            }
            Optional<String> lost = lost(mistake.toString());
            if (lost.isPresent()) {
                return Verdict.wrong(lost.get());
            }
        }
        if (workings.isEmpty() == mistakes.isEmpty()) {
            return Verdict.wrong("taken with mistakes, or refused without one");
        }
        workings.ifPresent(w -> made(w, isMade));
        return workings.isPresent() ? Verdict.TAKEN : Verdict.REFUSED;
    }

    private static void made(Workings workings, boolean isMade) {
        workings.findings();
        workings.worksheets().forEach(Trial::shown);
        List<Finding> stops = workings.stops();
        PaperChoice paper = PaperChoice.of(Desk.UNKNOWN, workings.heading());
        workings.sheets()
                .forEach(s -> PrintedSheet.of(Asked.of(workings.heading(), stops, s, paper)));
        if (isMade) {
            new Notebook("0", ProjectSection.form(Topics.all(LayDesk.inMemory())), Map.of())
                    .make(List.of(workings), List.of(), Desk.UNKNOWN);
        }
    }

    private static void shown(Worksheet worksheet) {
        worksheet.blocks();
        worksheet.figures();
    }

    /** A message whose place is none, or lies outside its file. */
    private Optional<String> lost(String message) {
        Matcher told = TOLD.matcher(message);
        if (!told.lookingAt()) {
            return Optional.of("a message without a place: " + message);
        }
        Path file = folder.resolve("projects/mutant").resolve(told.group(1));
        String[] lines = text(file).split("\r\n|\n|\r", -1);
        int line = Integer.parseInt(told.group(2));
        boolean isThere = line >= 1 && line <= lines.length;
        int column = Integer.parseInt(told.group(3));
        boolean isIn =
                isThere
                        && column >= 1
                        && column
                                <= lines[line - 1].codePointCount(0, lines[line - 1].length()) + 1;
        return isIn ? Optional.empty() : Optional.of("a place outside the file: " + message);
    }

    /** Makes the notebook by the command, over the site of another file. */
    Verdict make(Map<String, String> files) {
        write(files);
        Map<String, Integer> before = site();
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told);
        Verdict verdict =
                timed(
                        () ->
                                switch (new Secondbolt(folder, to, to).run("notebook", "--quiet")) {
                                    case 0 -> Verdict.TAKEN;
                                    case 1 -> Verdict.REFUSED;
                                    default -> Verdict.wrong("usage: " + told);
                                });
        if (told.toString().contains("fault of the program")) {
            return Verdict.wrong(told.toString());
        }
        boolean isWhole =
                !Files.exists(folder.resolve("site/.unfinished.json"))
                        && site().keySet().stream().noneMatch(path -> path.endsWith("~"));
        if (!isWhole || (!verdict.isTaken() && !site().equals(before))) {
            return Verdict.wrong("a site that is half written: " + told);
        }
        return verdict;
    }

    private static Verdict timed(Supplier<Verdict> work) {
        long began = THREADS.getCurrentThreadCpuTime();
        Verdict verdict;
        try {
            verdict = work.get();
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            return Verdict.wrong(e + " at " + Stream.of(cause.getStackTrace()).limit(6).toList());
        }
        double seconds = (THREADS.getCurrentThreadCpuTime() - began) / 1e9;
        return seconds > LONGEST_SECONDS ? Verdict.wrong("took " + seconds + " s") : verdict;
    }

    private void write(Map<String, String> files) {
        try {
            Path project = folder.resolve("projects/mutant");
            Files.createDirectories(project);
            for (String name : List.of("project.yaml", "plan.yaml", "piece.svg")) {
                if (files.containsKey(name)) {
                    byte[] bytes = files.get(name).getBytes(StandardCharsets.UTF_8);
                    Files.write(project.resolve(name), bytes);
                } else {
                    Files.deleteIfExists(project.resolve(name));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            return "";
        }
    }

    private Map<String, Integer> site() {
        Map<String, Integer> site = new ConcurrentHashMap<>();
        Path root = folder.resolve("site");
        if (!Files.exists(root)) {
            return site;
        }
        try (Stream<Path> walk = Files.walk(root)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                site.put(
                        root.relativize(file).toString(),
                        java.util.Arrays.hashCode(Files.readAllBytes(file)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new TreeMap<>(site);
    }
}
