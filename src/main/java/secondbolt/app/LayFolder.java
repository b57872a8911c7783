package secondbolt.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import secondbolt.lay.stock.LayDesk;
import secondbolt.lay.stock.LayStore;

/**
 * Keeps finished lays in the working folder, in {@code .secondbolt/lays}, and in memory as long as
 * the program runs. The folder can be deleted at any time; where it cannot be read or written, the
 * lays are searched again.
 *
 * @param folder the working folder
 * @param isWritten whether lays are written to it, or only read
 */
record LayFolder(Path folder, boolean isWritten) implements LayStore {
    private static final LayStore MEMORY = LayDesk.inMemory().store();

    @Override
    public Optional<String> find(String key) {
        return MEMORY.find(key).or(() -> read(key));
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
        MEMORY.keep(key, value);
        if (isWritten) {
            write(key, value);
        }
    }

    private void write(String key, String value) {
        Path file = file(key);
        Path part = file.resolveSibling(key + ".part");
        try {
            Files.createDirectories(file.getParent());
            Files.write(part, value.getBytes(StandardCharsets.UTF_8));
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            // A lay that cannot be kept is searched again; the notebook does not depend on it.
        }
    }

    private Path file(String key) {
        return folder.resolve(".secondbolt").resolve("lays").resolve(key);
    }
}
