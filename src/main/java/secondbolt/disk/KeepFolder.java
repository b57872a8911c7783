package secondbolt.disk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A folder of texts that only save work: it can be deleted at any time, and what cannot be read or
 * written is done without. Of too many texts the oldest are thrown away.
 *
 * @param folder where they lie; made when the first is kept, and never a link
 * @param most how many at the most, 1 or more
 */
public record KeepFolder(Path folder, int most) {
    private static final long LARGEST_BYTES = 50_000_000;

    /** The text kept under a name, if there is one that can be read. */
    public Optional<String> read(String name) {
        Path file = folder.resolve(name);
        try {
            return isLink() || Home.barAt(file).isPresent()
                    ? Optional.empty()
                    : Optional.of(text(file));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private String text(Path file) throws IOException {
        return new String(new Home(folder).read(file, LARGEST_BYTES), StandardCharsets.UTF_8);
    }

    /** Whether the folder, or the one it lies in, is a link and so leads to someone else's. */
    private boolean isLink() {
        Path above = folder.getParent();
        return Files.isSymbolicLink(folder) || (above != null && Files.isSymbolicLink(above));
    }

    /** Keeps a text under a name, if that can be. */
    public void write(String name, String text) {
        Path file = folder.resolve(name);
        try {
            if (isLink() || Home.barAt(file).isPresent()) {
                return;
            }
            Files.createDirectories(folder);
            AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
            throwAway();
        } catch (IOException | UncheckedIOException e) {
            // What cannot be kept is worked out again; nothing depends on it.
        }
    }

    private void throwAway() throws IOException {
        List<Path> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .forEach(all::add);
        }
        if (all.size() > most) {
            all.sort(Comparator.comparing(KeepFolder::age));
            for (Path old : all.subList(0, all.size() - most)) {
                Files.deleteIfExists(old);
            }
        }
    }

    private static FileTime age(Path file) {
        try {
            return Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }
}
