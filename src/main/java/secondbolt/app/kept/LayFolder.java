package secondbolt.app.kept;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.disk.KeepFolder;
import secondbolt.lay.kept.LayStore;
import secondbolt.notebook.site.FileMark;
import secondbolt.notebook.site.Seals;

/**
 * Keeps finished lays in the working folder, in {@code .secondbolt/lays}, and the last ones in
 * memory. The folder can be deleted at any time; where it cannot be read or written, the lays are
 * searched again. Of too many, those not looked at for longest are thrown away.
 *
 * <p>Beside each lay, in {@code .secondbolt/marks}, stands what its file system knows its file by.
 * A file that came with a download, was copied or was changed is another one, and is not read: what
 * is given back is what this program wrote here, and so a run never comes to a worse lay than
 * without the folder. Who can change files behind the file system's back can change the pages too.
 *
 * @param folder the working folder
 * @param isWritten whether lays are written to it, or only read
 */
public record LayFolder(Path folder, boolean isWritten) implements LayStore {
    /** What is kept between runs, in the working folder; it can be deleted at any time. */
    public static final String KEEP = ".secondbolt";

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
        return Optional.ofNullable(MEMORY.get(key)).or(() -> unchanged(key));
    }

    @Override
    public void keep(String key, String value) {
        MEMORY.put(key, value);
        if (isWritten) {
            lays().write(key, value);
            identity(key).ifPresent(file -> marks().write(key, mark(file, value)));
        }
    }

    private Optional<String> unchanged(String key) {
        Optional<String> file = identity(key);
        Optional<String> mark = marks().read(key);
        return file.filter(known -> mark.filter(told -> told.startsWith(known)).isPresent())
                .flatMap(known -> lays().read(key))
                .filter(text -> mark.equals(Optional.of(mark(file.orElseThrow(), text))));
    }

    private static String mark(String file, String text) {
        return file + " " + Seals.hash(text);
    }

    private Optional<String> identity(String key) {
        return FileMark.identity(lays().folder().resolve(key));
    }

    private KeepFolder lays() {
        return new KeepFolder(folder.resolve(KEEP).resolve("lays"), MOST_FILES);
    }

    private KeepFolder marks() {
        return new KeepFolder(folder.resolve(KEEP).resolve("marks"), MOST_FILES);
    }
}
