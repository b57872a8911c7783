package secondbolt.notebook.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import secondbolt.disk.AtomicFile;
import secondbolt.disk.Home;

/**
 * Puts a site into a folder. Only files whose bytes changed are written; each is first written in
 * full beside its place and moved there when all are, so that a run that fails on a full disk
 * leaves the old site as it was, and one that is killed leaves every file whole.
 *
 * <p>Files of an earlier run that are no longer made are deleted, but for those that the new list
 * of contents keeps. A file that no run made is never overwritten or deleted, and no link is
 * followed out of the folder.
 */
public final class SiteWriter {
    /** Lists what a run is about to write; it lies in the site only while one is at work. */
    public static final String JOURNAL = ".unfinished.json";

    /**
     * What a run did.
     *
     * @param written the paths of files written, in that order
     * @param deleted the paths of files deleted
     * @param left the paths of files that stay, although the list of an earlier run names them and
     *     this one does not make them, since the program did not make them
     * @param unchanged how many files were right already
     */
    public record Written(
            List<String> written, List<String> deleted, List<String> left, int unchanged) {
        /** Copies the lists. */
        public Written {
            written = List.copyOf(written);
            deleted = List.copyOf(deleted);
            left = List.copyOf(left);
        }
    }

    private final Path root;
    private final SiteFolder folder;
    private final Set<String> sealed;
    private final List<SiteFile> files;
    private final SortedSet<String> own;
    private final List<Path> parts = new ArrayList<>();
    private final List<Path> newFolders = new ArrayList<>();
    private boolean isJournalWritten;
    private boolean isJournalNeeded;

    private SiteWriter(Path root, List<SiteFile> files, Set<String> sealed) {
        this.root = root;
        this.folder = new SiteFolder(root);
        this.sealed = Set.copyOf(sealed);
        this.files = files;
        this.own = new TreeSet<>();
    }

    /** Writes a site of which nothing is known but what stands in it. */
    public static Written write(Path out, List<SiteFile> files) {
        return write(out, files, Set.of());
    }

    /**
     * Writes a site.
     *
     * @param out its folder; made if it is not there
     * @param files in the order in which they are put in place, so that a page stands behind what
     *     it links to; the last is the list of {@link Contents}
     * @param sealed the paths of files that the last run from this working folder made, whatever
     *     became of them since
     * @throws UncheckedIOException with the path, if the machine refuses or a file of someone else
     *     is in the way; every file of the old site is then whole
     * @throws IllegalArgumentException if two files share a path or the list of contents is missing
     */
    public static Written write(Path out, List<SiteFile> files, Set<String> sealed) {
        check(files);
        Path folder = out.toAbsolutePath().normalize();
        SiteWriter writer = new SiteWriter(folder, files, sealed);
        try {
            return writer.write();
        } catch (IOException e) {
            throw new UncheckedIOException(SiteFolder.words(e, folder), e);
        } catch (InvalidPathException e) {
            String words = SiteFolder.words(e);
            throw new UncheckedIOException(words, new IOException(words, e));
        }
    }

    /** The text of a file of the site as it now stands, if it is there and not absurdly large. */
    public static Optional<String> textIn(Path out, String path) {
        Path root = out.toAbsolutePath().normalize();
        try {
            return new SiteFolder(root).text(path);
        } catch (IOException e) {
            throw new UncheckedIOException(SiteFolder.words(e, root), e);
        }
    }

    /** The paths of all files that earlier runs made and left in the site. */
    public static SortedSet<String> pathsIn(Path out) {
        Path root = out.toAbsolutePath().normalize();
        try {
            return new SiteFolder(root).listed();
        } catch (IOException e) {
            throw new UncheckedIOException(SiteFolder.words(e, root), e);
        }
    }

    /** Whether a run that was killed left its journal. */
    public static boolean isUnfinished(Path out) {
        return Home.isTaken(out.resolve(JOURNAL));
    }

    private static void check(List<SiteFile> files) {
        Set<String> paths = new HashSet<>();
        for (SiteFile file : files) {
            if (!paths.add(file.path())) {
                throw new IllegalArgumentException("made twice: " + file.path());
            }
        }
        if (files.isEmpty() || !files.get(files.size() - 1).path().equals(Contents.PATH)) {
            throw new IllegalArgumentException("the last file must be " + Contents.PATH);
        }
    }

    private Written write() throws IOException {
        try {
            makeFolder(root);
            folder.refuseWhatIsInTheWay(root.resolve(JOURNAL));
            own.addAll(folder.listed());
            Optional<String> journal = folder.text(JOURNAL);
            isJournalNeeded = journal.isPresent();
            own.addAll(Contents.paths(journal.orElse("")));
            removeLeftovers();
            List<SiteFile> changed = changed();
            SortedSet<String> stale = stale();
            if (!changed.isEmpty() || !stale.isEmpty()) {
                writeJournal();
                writeParts(changed);
            }
            moveIntoPlace(changed);
            List<String> left = new ArrayList<>();
            List<String> deleted = delete(stale, left);
            Files.deleteIfExists(root.resolve(JOURNAL));
            List<String> written = changed.stream().map(SiteFile::path).toList();
            return new Written(written, deleted, left, files.size() - changed.size());
        } catch (IOException | RuntimeException e) {
            undo(e);
            throw e;
        }
    }

    /** A killed run leaves temporaries of listed files only, for its journal was written first. */
    private void removeLeftovers() throws IOException {
        for (String path : own) {
            if (!folder.isBehindLink(root.resolve(path))) {
                new AtomicFile(root.resolve(path)).deleteLeftover();
            }
        }
        new AtomicFile(root.resolve(JOURNAL)).deleteLeftover();
    }

    private List<SiteFile> changed() throws IOException {
        List<SiteFile> changed = new ArrayList<>();
        for (SiteFile file : files) {
            folder.refuseWhatIsInTheWay(root.resolve(file.path()));
            Optional<byte[]> stands = folder.bytes(file.path());
            if (stands.isEmpty() || !file.holds(stands.get())) {
                if (stands.isPresent() && !isOurs(file.path(), stands.get())) {
                    throw SiteFolder.someoneElses(root.resolve(file.path()));
                }
                changed.add(file);
            }
        }
        return changed;
    }

    /** Whether a file that stands where one is made may be replaced. */
    private boolean isOurs(String path, byte[] stands) throws IOException {
        if (path.equals(Contents.PATH)) {
            return folder.isContentsOurs();
        }
        boolean isKnown = own.contains(path) && (sealed.contains(path) || stands.length == 0);
        return isKnown || MadeMark.isOn(path, stands);
    }

    private SortedSet<String> stale() {
        SortedSet<String> stale = new TreeSet<>(own);
        files.forEach(file -> stale.remove(file.path()));
        stale.removeAll(Contents.paths(files.get(files.size() - 1).text()));
        return stale;
    }

    private void writeJournal() throws IOException {
        SortedSet<String> all = new TreeSet<>(own);
        files.forEach(file -> all.add(file.path()));
        Path journal = root.resolve(JOURNAL);
        writePart(journal, Contents.write("", all).getBytes(StandardCharsets.UTF_8));
        new AtomicFile(journal).awaitDisk();
        move(journal);
        isJournalWritten = true;
    }

    private void writeParts(List<SiteFile> changed) throws IOException {
        for (SiteFile file : changed) {
            Path target = root.resolve(file.path());
            makeFolder(target.getParent());
            writePart(target, file.content());
        }
        // All are written before the first is waited for, so that the disk takes them together.
        for (SiteFile file : changed) {
            new AtomicFile(root.resolve(file.path())).awaitDisk();
        }
    }

    private void writePart(Path target, byte[] content) throws IOException {
        Path part = part(target);
        if (Home.isTaken(part)) {
            throw SiteFolder.someoneElses(part);
        }
        parts.add(part);
        new AtomicFile(target).stage(content);
    }

    private void moveIntoPlace(List<SiteFile> changed) throws IOException {
        for (SiteFile file : changed) {
            isJournalNeeded = true;
            Path target = root.resolve(file.path());
            move(target);
            newFolders.removeIf(target::startsWith);
        }
    }

    private void move(Path target) throws IOException {
        new AtomicFile(target).commit();
        parts.remove(part(target));
    }

    private List<String> delete(SortedSet<String> stale, List<String> left) throws IOException {
        List<String> deleted = new ArrayList<>();
        for (String path : stale) {
            Path file = root.resolve(path);
            if (folder.isMarked(path)) {
                Files.deleteIfExists(file);
                deleted.add(path);
                folder.removeEmptyFolders(file.getParent());
            } else if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                left.add(path);
            }
        }
        return deleted;
    }

    private void makeFolder(Path made) throws IOException {
        if (Files.exists(made) && !Files.isDirectory(made)) {
            throw SiteFolder.refused(made, "a file stands where the folder of the site belongs");
        }
        for (Path up = made; up != null && !Files.exists(up); up = up.getParent()) {
            newFolders.add(up);
        }
        Files.createDirectories(made);
    }

    /** What cannot be undone is told with the failure itself; the next run clears it away. */
    private void undo(Exception failure) {
        List<Path> leftovers = new ArrayList<>(parts);
        if (isJournalWritten && !isJournalNeeded) {
            leftovers.add(root.resolve(JOURNAL));
        }
        newFolders.sort(Comparator.comparingInt(Path::getNameCount).reversed());
        leftovers.addAll(newFolders);
        for (Path leftover : leftovers) {
            try {
                Files.deleteIfExists(leftover);
            } catch (IOException e) {
                failure.addSuppressed(e);
            }
        }
    }

    private static Path part(Path target) {
        return new AtomicFile(target).part();
    }
}
