package secondbolt.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.disk.BarredException.Bar;
import secondbolt.disk.Home;
import secondbolt.project.ProjectFiles;

/**
 * Where commands may write: new files, and those that the program made; nothing else is touched.
 *
 * @param folder the working folder
 */
record Targets(Path folder) {
    private static final long LARGEST_BYTES = 200_000_000;

    /**
     * Where a file that was asked for is to be written.
     *
     * @param ours whether a file that stands there may be replaced
     * @throws UncheckedIOException with its name, if what stands there is no such file
     */
    Path target(Path asked, Predicate<byte[]> ours, String right) {
        Path target = folder.resolve(asked).toAbsolutePath().normalize();
        try {
            if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
                throw refused(asked, "its folder is not there (make it first)", right);
            }
            Path home = folder.toAbsolutePath().normalize();
            Optional<Bar> bar =
                    target.startsWith(home) ? new Home(home).bar(target) : Home.barAt(target);
            if (bar.isPresent()) {
                throw refused(asked, bar.get().words(), right);
            }
            if (Home.isTaken(target)
                    && !ours.test(new Home(target.getParent()).read(target, LARGEST_BYTES))) {
                throw refused(asked, "not made by Secondbolt, so it is left alone", right);
            }
            return target;
        } catch (IOException e) {
            throw refused(asked, "a file that cannot be read", right);
        }
    }

    private static UncheckedIOException refused(Path asked, String found, String right) {
        String words = Workplace.name(asked) + " cannot be written: " + found + "; " + right;
        return new UncheckedIOException(words, new IOException(words));
    }

    /**
     * The folder of a site.
     *
     * @param projects which are read; the site does not lie among them
     * @throws UncheckedIOException with its name, if it cannot be one
     */
    Path site(Path out, Path projects) {
        Path home = folder.toAbsolutePath().normalize();
        Path site = folder.resolve(out).toAbsolutePath().normalize();
        String right = "name another folder with --out";
        if (site.getParent() == null) {
            throw refused(out, "the whole disk", right);
        }
        if (Home.isTaken(site) && !Files.isDirectory(site)) {
            Optional<Bar> bar = Home.barAt(site);
            String found = bar.map(Bar::words).orElse("a file");
            throw refused(out, found + " stands where the folder of the site belongs", right);
        }
        if (site.startsWith(home) && new Home(home).leadsOut(site)) {
            throw refused(out, "a link that leads out of the working folder", right);
        }
        Path read = folder.resolve(projects).toAbsolutePath().normalize();
        boolean isAmong =
                ProjectFiles.isIn(site)
                        || site.equals(read)
                        || (site.startsWith(read) && !home.startsWith(read));
        if (isAmong) {
            throw refused(out, "it lies among the projects, which are only read", right);
        }
        return site;
    }
}
