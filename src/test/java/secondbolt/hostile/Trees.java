package secondbolt.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Folders, looked at and thrown away without following a link. */
final class Trees {
    private Trees() {}

    /**
     * All that lies in a folder, by its path in it: the bytes of a file as letters, where a link
     * leads, what else it is.
     */
    static Map<String, String> in(Path root) {
        Map<String, String> tree = new TreeMap<>();
        try (Stream<Path> all = Files.walk(root)) {
            for (Path one : (Iterable<Path>) all::iterator) {
                tree.put(root.relativize(one).toString().replace('\\', '/'), what(one));
            }
            return tree;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String what(Path one) throws IOException {
        if (Files.isSymbolicLink(one)) {
            return "link to " + Files.readSymbolicLink(one);
        }
        if (Files.isDirectory(one)) {
            return "folder";
        }
        return Files.isRegularFile(one, LinkOption.NOFOLLOW_LINKS)
                ? "file " + new String(Files.readAllBytes(one), StandardCharsets.ISO_8859_1)
                : "neither file nor folder";
    }

    /** Deletes all that lies in a folder. */
    static void clear(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            for (Path one : all.toList()) {
                delete(one);
            }
        }
    }

    /** Deletes a file, or a folder with all that lies in it, if it is there. */
    static void delete(Path path) throws IOException {
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            clear(path);
        }
        Files.deleteIfExists(path);
    }
}
