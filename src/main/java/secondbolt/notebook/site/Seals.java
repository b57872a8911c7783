package secondbolt.notebook.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import secondbolt.disk.KeepFolder;
import secondbolt.file.json.Json;
import secondbolt.file.json.JsonReader;
import secondbolt.file.source.Visible;

/**
 * The seals of the last run, kept in a file of the working folder. A seal is believed only if
 * everything it speaks of is there and is as it says; one that is spoilt, of another version, or
 * came from elsewhere is passed over, and what it sealed is made anew.
 */
public final class Seals {
    /** More would be some other folder. */
    private static final int MOST_SOURCES = 500;

    private static final long LARGEST_BYTES = 50_000_000;
    private static final int MOST_SITES = 50;
    private static final int MOST_LINES = 1_000;
    private static final int LONGEST_LINE = 5_000;
    private static final int NAME_LETTERS = 16;
    private static final String PROGRAM = "program";
    private static final String SITE = "site";
    private static final String SEALS = "seals";
    private static final String FROM = "from";
    private static final String FILES = "files";
    private static final String TOLD = "told";

    private final KeepFolder keep;
    private final Path site;
    private final String program;
    private final Map<String, Seal> seals = new TreeMap<>();

    private Seals(KeepFolder keep, Path site, String program) {
        this.keep = keep;
        this.site = site;
        this.program = program;
    }

    /**
     * The seals that the last run left.
     *
     * @param keep the folder they are kept in; it need not be there
     * @param site the folder of the site they speak of
     * @param program tells one build of the program from every other
     */
    public static Seals in(Path keep, Path site, String program) {
        Path out = site.toAbsolutePath().normalize();
        KeepFolder folder = new KeepFolder(keep.resolve("seals"), MOST_SITES);
        Seals seals = new Seals(folder, out, program);
        // Spoilt or not to be read, nothing is taken and everything made anew.
        folder.read(seals.name()).flatMap(JsonReader::readObject).ifPresent(seals::take);
        return seals;
    }

    /** One file for each site that is made from this working folder. */
    private String name() {
        return hash(site.toString()).substring(0, NAME_LETTERS) + ".json";
    }

    private void take(Map<String, Object> kept) {
        if (program.equals(kept.get(PROGRAM))
                && site.toString().equals(kept.get(SITE))
                && kept.get(SEALS) instanceof Map<?, ?> all) {
            all.forEach(
                    (name, seal) -> {
                        if (seal instanceof Map<?, ?> map) {
                            seals.put(String.valueOf(name), seal(map));
                        }
                    });
        }
    }

    private static Seal seal(Map<?, ?> map) {
        List<String> told = new ArrayList<>();
        if (map.get(TOLD) instanceof List<?> lines) {
            lines.forEach(line -> told.add(String.valueOf(line)));
        }
        return new Seal(texts(map.get(FROM)), texts(map.get(FILES)), told);
    }

    private static SortedMap<String, String> texts(Object value) {
        SortedMap<String, String> texts = new TreeMap<>();
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, text) -> texts.put(String.valueOf(key), String.valueOf(text)));
        }
        return texts;
    }

    /**
     * The hashes of all files in a folder and those below it, by their paths.
     *
     * @return nothing if it holds links or what is no file, or too much to be a project
     */
    public static Optional<Map<String, String>> sources(Path folder) {
        try (Stream<Path> walk = Files.walk(folder)) {
            List<Path> all = walk.limit(MOST_SOURCES + 1L).sorted().toList();
            Map<String, String> sources = new LinkedHashMap<>();
            long bytes = 0;
            for (Path one : all) {
                boolean isFile = Files.isRegularFile(one, LinkOption.NOFOLLOW_LINKS);
                bytes += isFile ? Files.size(one) : 0;
                boolean isOdd = !isFile && !Files.isDirectory(one, LinkOption.NOFOLLOW_LINKS);
                if (isOdd || bytes > LARGEST_BYTES || all.size() > MOST_SOURCES) {
                    return Optional.empty();
                }
                if (isFile) {
                    String name = folder.relativize(one).toString().replace('\\', '/');
                    sources.put(name, FileMark.hash(Files.readAllBytes(one)));
                }
            }
            return Optional.of(sources);
        } catch (IOException | UncheckedIOException e) {
            // What cannot be read here is told where the project is read.
            return Optional.empty();
        }
    }

    /** The paths of all files that the last run made. */
    public SortedSet<String> files() {
        SortedSet<String> files = new TreeSet<>();
        seals.values().forEach(seal -> files.addAll(seal.files().keySet()));
        return files;
    }

    /** The hash of one text. */
    public static String hash(String text) {
        return FileMark.hash(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The seal of a part of the site, if it was made from the same and every file of it is as it
     * was made.
     *
     * @param name of the part
     * @param from the hashes of all it would be made from now
     * @param listed the files of the part that the site's list of contents names
     */
    public Optional<Seal> unbroken(
            String name, Map<String, String> from, SortedSet<String> listed) {
        return Optional.ofNullable(seals.get(name))
                .filter(Seals::isPlain)
                .filter(seal -> seal.from().equals(from))
                .filter(seal -> seal.files().keySet().equals(listed))
                .filter(seal -> seal.files().keySet().stream().allMatch(SiteFile::isSafe))
                .filter(seal -> seal.files().equals(marks(listed)));
    }

    /** What was told is told again: one line each, and no more of them than any project has. */
    private static boolean isPlain(Seal seal) {
        return seal.told().size() <= MOST_LINES
                && seal.told().stream()
                        .allMatch(
                                line ->
                                        line.length() <= LONGEST_LINE
                                                && line.codePoints().noneMatch(Visible::isUnseen));
    }

    private SortedMap<String, String> marks(SortedSet<String> paths) {
        SortedMap<String, String> marks = new TreeMap<>();
        paths.forEach(path -> marks.put(path, FileMark.ofMade(site.resolve(path)).orElse("")));
        return marks;
    }

    /**
     * Seals a part of the site as it now lies on the disk.
     *
     * @param from the hashes of all it was made from
     * @param files its paths
     * @param told what was told of it
     */
    public Seal seal(Map<String, String> from, SortedSet<String> files, List<String> told) {
        return new Seal(from, marks(files), told);
    }

    /** Keeps these seals in place of the last run's; where that cannot be, none are kept. */
    public void keep(Map<String, Seal> now) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put(PROGRAM, program);
        all.put(SITE, site.toString());
        Map<String, Object> parts = new LinkedHashMap<>();
        new TreeMap<>(now)
                .forEach(
                        (name, seal) -> {
                            Map<String, Object> part = new LinkedHashMap<>();
                            part.put(FROM, seal.from());
                            part.put(FILES, seal.files());
                            part.put(TOLD, seal.told());
                            parts.put(name, part);
                        });
        all.put(SEALS, parts);
        keep.write(name(), Json.write(all));
    }
}
