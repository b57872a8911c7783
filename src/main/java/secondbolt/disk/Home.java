package secondbolt.disk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import secondbolt.disk.BarredException.Bar;

/**
 * A folder out of which no link leads: what is read or written below it lies in it, whatever a
 * stranger packed into it. Nothing but plain files is ever opened; a pipe would be waited for.
 *
 * @param folder itself, be it reached by a link
 */
public record Home(Path folder) {
    /**
     * Reads a plain file that lies here. A link to another one that does is followed.
     *
     * @param file its path, below this folder
     * @param most bytes it may have
     * @throws BarredException if there is something else
     * @throws IOException if the machine fails while it is read
     */
    public byte[] read(Path file, long most) throws IOException {
        Path real = real(file);
        if (!real.startsWith(real(folder))) {
            throw new BarredException(Bar.LEADS_OUT);
        }
        BasicFileAttributes found = attributes(real);
        if (!found.isRegularFile()) {
            throw new BarredException(kind(found));
        }
        if (found.size() > most) {
            throw new BarredException(Bar.LARGE);
        }
        byte[] bytes;
        try (InputStream in =
                Files.newInputStream(real, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
            bytes = in.readNBytes((int) Math.min(most + 1, Integer.MAX_VALUE));
        } catch (FileSystemException e) {
            throw because(Bar.CLOSED, e);
        }
        if (bytes.length > most) {
            throw new BarredException(Bar.LARGE);
        }
        return bytes;
    }

    /**
     * What keeps a file from being written here; nothing if it is not there yet or a plain file.
     *
     * @param file its path, below this folder
     */
    public Optional<Bar> bar(Path file) {
        return leadsOut(file.getParent()) ? Optional.of(Bar.LEADS_OUT) : barAt(file);
    }

    /** Whether a path, as far as it exists, leads out of this folder by a link. */
    public boolean leadsOut(Path path) {
        Path up = path;
        while (up != null && !Files.exists(up, LinkOption.NOFOLLOW_LINKS)) {
            up = up.getParent();
        }
        try {
            return up != null && !real(up).startsWith(real(folder));
        } catch (IOException e) {
            // A link that leads nowhere now could lead out when it is written through.
            return true;
        }
    }

    /**
     * Whether anything has a path's name, or it cannot be told; a file is then to be read there.
     */
    public static boolean isTaken(Path path) {
        try {
            attributes(path);
            return true;
        } catch (BarredException e) {
            return e.bar() != Bar.MISSING;
        }
    }

    /** What stands at a path, but for a plain file or nothing; no link is followed. */
    public static Optional<Bar> barAt(Path path) {
        try {
            BasicFileAttributes found = attributes(path);
            return found.isRegularFile() ? Optional.empty() : Optional.of(kind(found));
        } catch (BarredException e) {
            return Optional.of(e.bar()).filter(bar -> bar != Bar.MISSING);
        }
    }

    private static BasicFileAttributes attributes(Path path) throws BarredException {
        try {
            return Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        } catch (NoSuchFileException e) {
            throw because(Bar.MISSING, e);
        } catch (IOException e) {
            throw because(Bar.CLOSED, e);
        }
    }

    private static Bar kind(BasicFileAttributes found) {
        if (found.isDirectory()) {
            return Bar.FOLDER;
        }
        return found.isSymbolicLink() ? Bar.LINK : Bar.DEVICE;
    }

    private static Path real(Path path) throws BarredException {
        try {
            return path.toRealPath();
        } catch (NoSuchFileException e) {
            throw because(Files.isSymbolicLink(path) ? Bar.BROKEN_LINK : Bar.MISSING, e);
        } catch (AccessDeniedException e) {
            throw because(Bar.CLOSED, e);
        } catch (IOException e) {
            throw because(Files.isSymbolicLink(path) ? Bar.BROKEN_LINK : Bar.CLOSED, e);
        }
    }

    private static BarredException because(Bar bar, IOException cause) {
        BarredException barred = new BarredException(bar);
        barred.initCause(cause);
        return barred;
    }
}
