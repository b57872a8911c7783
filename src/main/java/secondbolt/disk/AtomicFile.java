package secondbolt.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A file that is first written in full beside its place and then moved there. What stands at its
 * place is replaced, be it a link; nothing is written through one.
 *
 * @param target its place
 * @param part the temporary beside it
 */
public record AtomicFile(Path target, Path part) {
    /** The end of a temporary's name; a plain file with it was left by a run that was killed. */
    public static final String PART = ".part~";

    private static final AtomicLong COUNT = new AtomicLong();
    private static final int MOST_TRIES = 100;

    /** With the one temporary that is known by the file's name, where no other run is at work. */
    public AtomicFile(Path target) {
        this(target, target.resolveSibling(target.getFileName() + PART));
    }

    /**
     * Writes the temporary.
     *
     * @throws IOException if it cannot be written, or something of its name is there already, be it
     *     a link
     */
    public void stage(byte[] content) throws IOException {
        Files.write(part, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    /**
     * Waits until the temporary is on the disk: moved before, it could be empty after a power cut.
     */
    public void awaitDisk() throws IOException {
        try (FileChannel channel =
                FileChannel.open(part, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
            channel.force(true);
        }
    }

    /** Moves the temporary to its place, over what was there. */
    public void commit() throws IOException {
        Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Deletes the temporary of a run that was killed; what is no plain file is someone else's. */
    public void deleteLeftover() throws IOException {
        if (Files.isRegularFile(part, LinkOption.NOFOLLOW_LINKS)) {
            Files.delete(part);
        }
    }

    /**
     * Writes a file and puts it in place, also while another run does the same: the last one stays.
     *
     * @throws IOException if that cannot be; the old file is then as it was, and no temporary left
     */
    public static void write(Path target, byte[] content) throws IOException {
        clearAway(target);
        AtomicFile file = staged(target, content);
        try {
            file.awaitDisk();
            file.commit();
        } catch (IOException e) {
            try {
                file.deleteLeftover();
            } catch (IOException second) {
                e.addSuppressed(second);
            }
            throw e;
        }
    }

    /** Deletes the temporaries of runs that are no longer there. */
    private static void clearAway(Path target) throws IOException {
        String own = Pattern.quote(target.getFileName().toString());
        Pattern leftover =
                Pattern.compile(own + "(?:\\.([0-9]{1,18})-[0-9]+)?" + Pattern.quote(PART));
        List<Path> all;
        try (Stream<Path> beside = Files.list(target.toAbsolutePath().getParent())) {
            all = beside.toList();
        }
        for (Path one : all) {
            Matcher name = leftover.matcher(one.getFileName().toString());
            if (name.matches() && !isAtWork(name.group(1))) {
                new AtomicFile(target, one).deleteLeftover();
            }
        }
    }

    private static boolean isAtWork(String run) {
        return run != null && ProcessHandle.of(Long.parseLong(run)).isPresent();
    }

    /** Staged under a name that no other run and nobody else has taken. */
    private static AtomicFile staged(Path target, byte[] content) throws IOException {
        IOException taken = null;
        for (int i = 0; i < MOST_TRIES; i++) {
            String own = "." + ProcessHandle.current().pid() + "-" + COUNT.incrementAndGet();
            AtomicFile file =
                    new AtomicFile(
                            target, target.resolveSibling(target.getFileName() + own + PART));
            try {
                file.stage(content);
                return file;
            } catch (FileAlreadyExistsException e) {
                taken = e;
            } catch (IOException e) {
                file.deleteLeftover();
                throw e;
            }
        }
        throw new IOException("every temporary's name is taken beside " + target, taken);
    }
}
