package secondbolt.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Folders to work in. */
final class Folders {
    private Folders() {}

    /** Removes a folder with all that is in it, if it is there. */
    static Path removed(Path folder) throws IOException {
        if (Files.exists(folder)) {
            List<Path> all;
            try (Stream<Path> walked = Files.walk(folder)) {
                all = walked.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path path : all) {
                Files.delete(path);
            }
        }
        return folder;
    }

    /** Copies a folder with all that is in it to a place where nothing is yet. */
    static void copied(Path folder, Path to) throws IOException {
        List<Path> all;
        try (Stream<Path> walked = Files.walk(folder)) {
            all = walked.sorted().toList();
        }
        for (Path path : all) {
            Path target = to.resolve(folder.relativize(path).toString());
            if (Files.isDirectory(path)) {
                Files.createDirectories(target);
            } else {
                Files.copy(path, target);
            }
        }
    }
}
