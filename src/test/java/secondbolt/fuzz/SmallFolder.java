package secondbolt.fuzz;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import secondbolt.app.Secondbolt;

/**
 * A working folder with small projects, and beside it files that are none of the program's
 * business.
 *
 * @param root holds the folder, what lies beside it, and what runs print
 */
record SmallFolder(Path root) {
    /** The projects. */
    static final List<String> NAMES = List.of("apron", "bag", "coat");

    private static final String PROJECT =
            """
            title: Title %1$s %2$d
            units: cm
            wearer: {age: adult}
            cloth:
              sheet: {size: [150, 90], prewash: done, flaws: none}
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                panel: {cut: 1, rectangle: [30, 40]}
                pocket: {cut: 2, rectangle: [14, 16]}
            closures:
              %3$s: {length: %2$d, extension: 1.8, buttons: 5, first: 1.5, last: 8, holes: upright,
                button: {across: 11 mm, thick: 2.5 mm}, laps: left over right}
            """;

    /** With all projects as they are first. */
    static SmallFolder in(Path root) {
        SmallFolder folder = new SmallFolder(root);
        NAMES.forEach(name -> folder.write(name, 40, "band"));
        write(root.resolve("beside/hers.txt"), "hers");
        write(folder.at().resolve("hers.txt"), "hers");
        return folder;
    }

    Path at() {
        return root.resolve("desk");
    }

    /** Changes a length of a project, and now and then the name of a sheet. */
    void edit(String name, SplittableRandom random) {
        write(name, random.nextInt(30, 90), random.nextInt(4) == 0 ? "placket" : "band");
    }

    private void write(String name, int length, String closure) {
        write(
                at().resolve("projects/" + name + "/project.yaml"),
                PROJECT.formatted(name, length, closure));
    }

    private static void write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Started start(String run, String... args) {
        return Started.in(at(), root.resolve("told " + run + ".txt"), args);
    }

    /** The files of the site, by their paths in it. */
    Map<String, String> site() {
        return files(at().resolve("site"));
    }

    /** All that lies outside of the site and of what is kept between runs. */
    Map<String, String> others() {
        Map<String, String> all = files(root);
        all.keySet()
                .removeIf(
                        path ->
                                path.startsWith("desk/site/")
                                        || path.startsWith("desk/.secondbolt/")
                                        || path.startsWith("told "));
        return all;
    }

    /** The paths of what a run should have cleared away. */
    List<String> leftovers() {
        return files(at()).keySet().stream()
                .filter(
                        path ->
                                path.endsWith("~")
                                        || path.endsWith(".lock")
                                        || path.endsWith(".unfinished.json"))
                .toList();
    }

    /** A site made in one go elsewhere from the same projects. */
    Map<String, String> fresh() {
        Path other = root.resolve("fresh");
        delete(other);
        files(at().resolve("projects"))
                .forEach((path, text) -> write(other.resolve("projects/" + path), text));
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told);
        if (new Secondbolt(other, to, to).run("notebook", "--quiet") != 0) {
            throw new IllegalStateException(told.toString());
        }
        Map<String, String> site = files(other.resolve("site"));
        delete(other);
        return site;
    }

    /** The bytes of all files in a folder, as letters, and where its links lead. */
    static Map<String, String> files(Path folder) {
        Map<String, String> files = new TreeMap<>();
        if (!Files.exists(folder)) {
            return files;
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path file : walk.filter(f -> !Files.isDirectory(f)).toList()) {
                String text =
                        Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                                ? new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)
                                : "no plain file";
                files.put(folder.relativize(file).toString().replace('\\', '/'), text);
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path one : walk.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
