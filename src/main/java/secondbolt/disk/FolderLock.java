package secondbolt.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Keeps other runs out of a folder while it is open. Its file lies in the folder meanwhile and is
 * gone afterwards; one that a killed run left is taken over.
 */
public final class FolderLock implements AutoCloseable {
    /** The name of its file. */
    public static final String NAME = ".secondbolt.lock";

    private static final long TRY_EVERY_MILLISECONDS = 100;

    /** A second channel on the file would, when closed, let go what this program holds. */
    private static final Set<Path> HELD = new HashSet<>();

    private final Path file;
    private final FileChannel channel;

    private FolderLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Waits until no other run has a folder.
     *
     * @param folder which is there
     * @param tries at the most, a tenth of a second apart, 1 or more
     * @param waiting told once if it is not to be had at once
     * @return nothing if another run has it still
     * @throws IOException if no lock can be put there, or something else has its name
     */
    public static Optional<FolderLock> take(Path folder, int tries, Runnable waiting)
            throws IOException {
        Path file = folder.toRealPath().resolve(NAME);
        for (int i = 0; i < tries; i++) {
            Optional<FolderLock> taken = tryOnce(file);
            if (taken.isPresent()) {
                return taken;
            }
            if (i == 0) {
                waiting.run();
            }
            if (i + 1 < tries && !isSlept()) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static boolean isSlept() {
        try {
            Thread.sleep(TRY_EVERY_MILLISECONDS);
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static Optional<FolderLock> tryOnce(Path file) throws IOException {
        synchronized (HELD) {
            if (HELD.contains(file)) {
                return Optional.empty();
            }
            Optional<FolderLock> taken = open(file);
            taken.ifPresent(lock -> HELD.add(file));
            return taken;
        }
    }

    private static Optional<FolderLock> open(Path file) throws IOException {
        try {
            Files.createFile(file);
        } catch (FileAlreadyExistsException e) {
            refuseSomeoneElses(file);
        }
        try {
            String before = identity(file);
            FileChannel channel =
                    FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
            // The run that had it may have deleted the file, and another made a new one.
            if (before.equals(identity(file)) && isLocked(channel, file, before)) {
                return Optional.of(new FolderLock(file, channel));
            }
            channel.close();
            return Optional.empty();
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    private static boolean isLocked(FileChannel channel, Path file, String opened)
            throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null && opened.equals(identity(file));
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    private static String identity(Path file) throws IOException {
        BasicFileAttributes found =
                Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        return found.fileKey() + " " + found.creationTime();
    }

    private static void refuseSomeoneElses(Path file) throws IOException {
        try {
            BasicFileAttributes found =
                    Files.readAttributes(
                            file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            if (!found.isRegularFile() || found.size() > 0) {
                throw new FileAlreadyExistsException(
                        file.toString(),
                        null,
                        "not made by Secondbolt, so it is left alone; move it away first");
            }
        } catch (NoSuchFileException e) {
            // Its run has just ended; it is made anew at the next try.
        }
    }

    /** Lets other runs in. */
    @Override
    public void close() {
        synchronized (HELD) {
            try (channel) {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                // An empty file stays, which the next run takes over.
            } finally {
                HELD.remove(file);
            }
        }
    }
}
