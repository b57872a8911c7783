package secondbolt.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.disk.AtomicFile;
import secondbolt.lay.stock.LayStore;

/**
 * Keeps finished lays in the working folder, in {@code .secondbolt/lays}, and the last ones in
 * memory. The folder can be deleted at any time; where it cannot be read or written, the lays are
 * searched again. Of too many, those not looked at for longest are thrown away.
 *
 * @param folder the working folder
 * @param isWritten whether lays are written to it, or only read
 */
record LayFolder(Path folder, boolean isWritten) implements LayStore {
    private static final int MOST_IN_MEMORY = 200;
    private static final int MOST_FILES = 2000;
    private static final Map<String, String> MEMORY = Collections.synchronizedMap(new Recent());

    /** The entries asked for or put last. */
    private static final class Recent extends LinkedHashMap<String, String> {
        private static final long serialVersionUID = 1L;

        Recent() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, String> eldest) {
            return size() > MOST_IN_MEMORY;
        }
    }

    @Override
    public Optional<String> find(String key) {
        return Optional.ofNullable(MEMORY.get(key)).or(() -> read(key));
    }

    private Optional<String> read(String key) {
        try {
            return Optional.of(Files.readString(file(key)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public void keep(String key, String value) {
        MEMORY.put(key, value);
        if (isWritten) {
            write(key, value);
        }
    }

    private void write(String key, String value) {
        Path file = file(key);
        try {
            Files.createDirectories(file.getParent());
            new AtomicFile(file).write(value.getBytes(StandardCharsets.UTF_8));
            throwAway(file.getParent());
        } catch (IOException | UncheckedIOException e) {
            // A lay that cannot be kept is searched again; the notebook does not depend on it.
        }
    }

    private static void throwAway(Path lays) throws IOException {
        List<Path> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(lays)) {
            files.forEach(all::add);
        }
        if (all.size() > MOST_FILES) {
            all.sort(Comparator.comparing(LayFolder::age));
            for (Path old : all.subList(0, all.size() - MOST_FILES)) {
                Files.deleteIfExists(old);
            }
        }
    }

    private static FileTime age(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    private Path file(String key) {
        return folder.resolve(Workplace.KEEP).resolve("lays").resolve(key);
    }
}
