package secondbolt.project;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import secondbolt.disk.Home;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Place;

/**
 * Finds project files. What was meant to be one and cannot be read is a mistake, never passed over:
 * a project that is not seen would be taken for one that is gone.
 *
 * @param folder the working folder; paths are read from here
 */
public record ProjectFiles(Path folder) {
    /** What a name becomes whose letters the machine's settings do not know. */
    private static final char UNKNOWN_LETTER = '\uFFFD';

    /** What file managers and editors make of its name: the other ending, a second, capitals. */
    private static final Pattern NEARLY =
            Pattern.compile("(?i)project\\.(yml|yaml|yaml\\.txt|yml\\.txt|txt)");

    private static final String LEADS_OUT = "a link that leads out of the working folder";
    private static final String LEADS_OUT_RIGHT =
            "the folder itself, or its own path on the command line";

    /**
     * The project files of a folder that holds one, or of folders that each hold one, by name.
     *
     * @param shown the folders that have pages already
     * @param mistakes told what is in the way
     */
    public List<Path> in(Path path, SortedSet<String> shown, Mistakes mistakes) {
        Path at = folder.resolve(path);
        if (leadsOut(path)) {
            mistakes.add(mistake(path, LEADS_OUT, LEADS_OUT_RIGHT));
            return List.of();
        }
        if (isFile(at)) {
            return List.of(path);
        }
        if (isProject(at)) {
            return List.of(path.resolve(ProjectReader.FILE));
        }
        int before = mistakes.count();
        tellNearly(path, mistakes);
        tellUnspelt(path, mistakes);
        if (mistakes.count() > before) {
            return List.of();
        }
        List<Path> found = new ArrayList<>();
        for (String name : names(path, mistakes)) {
            one(path.resolve(name), shown, found, mistakes);
        }
        if (found.isEmpty() && mistakes.count() == before) {
            mistakes.add(
                    mistake(
                            path,
                            Files.exists(at) ? "no project file" : "no such file or folder",
                            "a folder with a "
                                    + ProjectReader.FILE
                                    + ", or a folder of such folders"));
        }
        return found;
    }

    private void one(Path path, SortedSet<String> shown, List<Path> found, Mistakes mistakes) {
        Path at = folder.resolve(path);
        String name = path.getFileName().toString();
        if (isProject(at)) {
            if (leadsOut(path)) {
                mistakes.add(mistake(path, LEADS_OUT, LEADS_OUT_RIGHT));
            } else {
                found.add(path.resolve(ProjectReader.FILE));
            }
            return;
        }
        if (isBrokenLink(at) && !name.startsWith(".")) {
            mistakes.add(mistake(path, "a link that leads nowhere", "a project's folder itself"));
            return;
        }
        int before = mistakes.count();
        tellNearly(path, mistakes);
        boolean isLost =
                shown.contains(name)
                        && mistakes.count() == before
                        && !names(path, mistakes).isEmpty();
        if (isLost) {
            mistakes.add(
                    mistake(
                            path,
                            "a folder without a " + ProjectReader.FILE + ", which has pages",
                            "its project file put back; or the whole folder deleted, so that its"
                                    + " pages go too"));
        }
    }

    /** Whether a path names one project, not a folder of projects. */
    public boolean isOne(Path path) {
        Path at = folder.resolve(path);
        return isFile(at) || isProject(at);
    }

    /** Whether a folder, or one above it, is that of a project. */
    public static boolean isIn(Path folder) {
        for (Path up = folder; up != null; up = up.getParent()) {
            if (isProject(up)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isFile(Path at) {
        return Files.exists(at) && !Files.isDirectory(at);
    }

    /** Whether a folder has a project file, be it one that cannot be read. */
    private static boolean isProject(Path at) {
        return Files.isDirectory(at) && Home.isTaken(at.resolve(ProjectReader.FILE)) && isSpelt(at);
    }

    /** Where capitals do not count, another spelling of its name is not taken for it. */
    private static boolean isSpelt(Path at) {
        try (Stream<Path> children = Files.list(at)) {
            List<String> names = children.map(child -> child.getFileName().toString()).toList();
            return names.contains(ProjectReader.FILE);
        } catch (IOException e) {
            return true;
        }
    }

    private static boolean isBrokenLink(Path at) {
        return Files.isSymbolicLink(at) && !Files.exists(at);
    }

    /** Whether a path of the working folder leads out of it, in a way nobody has typed. */
    private boolean leadsOut(Path path) {
        Path home = folder.toAbsolutePath().normalize();
        Path at = folder.resolve(path).toAbsolutePath().normalize();
        return at.startsWith(home) && Files.exists(at) && new Home(home).leadsOut(at);
    }

    /** Asks about a file that was meant to be the project file and is not named so. */
    private void tellNearly(Path path, Mistakes mistakes) {
        for (String name : names(path, mistakes)) {
            if (NEARLY.matcher(name).matches()) {
                mistakes.add(
                        mistake(
                                path.resolve(name),
                                "`" + name + "`, which is not read",
                                "the same file named `" + ProjectReader.FILE + "`"));
            }
        }
    }

    /** The names in a folder. */
    private List<String> names(Path path, Mistakes mistakes) {
        Path at = folder.resolve(path);
        if (!Files.isDirectory(at)) {
            return List.of();
        }
        try (Stream<Path> children = Files.list(at)) {
            return children.map(child -> child.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            mistakes.add(mistake(path, "a folder that cannot be read", "one you may read"));
            return List.of();
        }
    }

    private void tellUnspelt(Path path, Mistakes mistakes) {
        for (String name : names(path, mistakes)) {
            if (name.indexOf(UNKNOWN_LETTER) >= 0) {
                mistakes.add(
                        mistake(
                                path,
                                "`" + name + "`, with letters this machine's settings do not know",
                                "the program run with LC_ALL=C.UTF-8"));
            }
        }
    }

    private static Mistake mistake(Path path, String found, String right) {
        String name = path.toString().replace('\\', '/');
        return new Mistake(Place.beginningOf(name), found, right, "");
    }
}
