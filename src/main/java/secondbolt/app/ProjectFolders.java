package secondbolt.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Place;
import secondbolt.notebook.FolderName;

/**
 * The folders of projects, whose names are those of their pages.
 *
 * @param folder the working folder
 */
record ProjectFolders(Path folder) {
    /** The name of the folder a project file lies in, which names its pages. */
    String name(Path file) {
        Path absolute = folder.resolve(file).toAbsolutePath().normalize();
        Path parent = absolute.getParent().getFileName();
        return parent == null ? "project" : parent.toString();
    }

    /** Tells what project folders may not be called, each by itself and those beside each other. */
    void check(List<Path> files, Mistakes mistakes) {
        Map<Path, List<Path>> beside = new LinkedHashMap<>();
        for (Path file : files) {
            FolderName.refusal(name(file)).ifPresent(f -> tell(file, f, mistakes));
            Path above = folder.resolve(file).toAbsolutePath().normalize().resolve("../..");
            List<Path> there = beside.computeIfAbsent(above.normalize(), same -> new ArrayList<>());
            if (there.stream().noneMatch(f -> name(f).equals(name(file)))) {
                there.add(file);
            }
        }
        beside.values().forEach(there -> tellClashes(there, mistakes));
    }

    private void tellClashes(List<Path> beside, Mistakes mistakes) {
        Map<String, FolderName.Refusal> clashes =
                FolderName.clashes(beside.stream().map(this::name).toList());
        for (Path file : beside) {
            Optional.ofNullable(clashes.get(name(file)))
                    .ifPresent(clash -> tell(file, clash, mistakes));
        }
    }

    private static void tell(Path file, FolderName.Refusal refusal, Mistakes mistakes) {
        mistakes.add(
                new Mistake(
                        Place.beginningOf(Workplace.name(file)),
                        refusal.found(),
                        refusal.right(),
                        ""));
    }
}
