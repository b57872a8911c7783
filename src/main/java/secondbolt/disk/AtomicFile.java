package secondbolt.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A file that is first written in full beside its place and then moved there.
 *
 * @param target its place
 */
public record AtomicFile(Path target) {
    /** The end of a temporary's name, behind that of the file it will become. */
    public static final String PART = ".part~";

    /** The temporary beside its place. */
    public Path part() {
        return target.resolveSibling(target.getFileName() + PART);
    }

    /**
     * Writes the temporary.
     *
     * @throws IOException if it cannot be written, or something of its name is there already, be it
     *     a link
     */
    public void stage(byte[] content) throws IOException {
        Files.write(part(), content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    /**
     * Waits until the temporary is on the disk: moved before, it could be empty after a power cut.
     */
    public void awaitDisk() throws IOException {
        try (FileChannel channel = FileChannel.open(part(), StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Moves the temporary to its place, over what was there. */
    public void commit() throws IOException {
        Files.move(part(), target, StandardCopyOption.ATOMIC_MOVE);
    }

    /**
     * Writes it and puts it in place.
     *
     * @throws IOException if that cannot be; the old file is then as it was, and no temporary left
     */
    public void write(byte[] content) throws IOException {
        Files.deleteIfExists(part());
        try {
            stage(content);
            commit();
        } catch (IOException e) {
            deleteLeftover(e);
            throw e;
        }
    }

    private void deleteLeftover(IOException failure) {
        try {
            Files.deleteIfExists(part());
        } catch (IOException e) {
            failure.addSuppressed(e);
        }
    }
}
