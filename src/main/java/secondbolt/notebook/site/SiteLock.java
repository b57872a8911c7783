package secondbolt.notebook.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import secondbolt.disk.FolderLock;
import secondbolt.disk.Home;

/**
 * Keeps other runs out of a site, from the first look at what stands in it until it is written. A
 * folder that was made for it and stays empty is taken away again.
 */
public final class SiteLock implements AutoCloseable {
    private final FolderLock lock;
    private final List<Path> made;

    private SiteLock(FolderLock lock, List<Path> made) {
        this.lock = lock;
        this.made = made;
    }

    /**
     * Waits until no other run is writing a site.
     *
     * @param out its folder; made if it is not there
     * @param tries at the most, a tenth of a second apart, 1 or more
     * @param waiting told once if another run is
     * @throws UncheckedIOException with the path, if the other one does not end or the folder
     *     cannot be made or written to
     */
    public static SiteLock take(Path out, int tries, Runnable waiting) {
        Path folder = out.toAbsolutePath().normalize();
        try {
            for (int left = tries; left > 1; left--) {
                try {
                    return takeIn(folder, left, waiting);
                } catch (NoSuchFileException e) {
                    // The run that had it wrote nothing and took its folder away again.
                }
            }
            return takeIn(folder, 1, waiting);
        } catch (IOException e) {
            throw new UncheckedIOException(SiteFolder.words(e, folder), e);
        }
    }

    private static SiteLock takeIn(Path folder, int tries, Runnable waiting) throws IOException {
        List<Path> made = new ArrayList<>();
        try {
            for (Path up = folder; up != null && !Files.exists(up); up = up.getParent()) {
                made.add(up);
            }
            Files.createDirectories(folder);
            Optional<FolderLock> lock = FolderLock.take(folder, tries, waiting);
            if (lock.isEmpty()) {
                throw SiteFolder.refused(
                        folder, "another run is still writing here; try again when it has ended");
            }
            return new SiteLock(lock.get(), made);
        } catch (IOException e) {
            takeAway(made);
            throw e;
        }
    }

    /** Whether a run is writing a site, or one that was killed left its lock. */
    public static boolean isThere(Path out) {
        return Home.isTaken(out.resolve(FolderLock.NAME));
    }

    /** Does work while no other run is writing a site, as {@link #take} waits for. */
    public static <T> T during(Path out, int tries, Runnable waiting, Supplier<T> work) {
        SiteLock lock = take(out, tries, waiting);
        try {
            return work.get();
        } finally {
            lock.close();
        }
    }

    @Override
    public void close() {
        lock.close();
        takeAway(made);
    }

    private static void takeAway(List<Path> made) {
        for (Path folder : made) {
            try {
                Files.deleteIfExists(folder);
            } catch (IOException e) {
                // It holds the site now, or stays empty and does no harm.
                return;
            }
        }
    }
}
