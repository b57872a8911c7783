package secondbolt.notebook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.disk.AtomicFile;
import secondbolt.file.source.Visible;
import secondbolt.notebook.site.Contents;
import secondbolt.notebook.site.SiteWriter;
import secondbolt.worksheet.SheetName;

/** Which names of a project's folder its pages in the notebook can have. */
public final class FolderName {
    /** File systems take 255. */
    private static final int MOST_BYTES = 200;

    /** Of the notebook's own files and folders, as {@link SheetName#folded} gives them. */
    private static final Set<String> OWN =
            Stream.of(
                            Look.FOLDER,
                            Notebook.INDEX,
                            Notebook.REFERENCE,
                            Notebook.SCHEMA,
                            Contents.PATH,
                            SiteWriter.JOURNAL)
                    .map(SheetName::folded)
                    .collect(Collectors.toUnmodifiableSet());

    private FolderName() {}

    /**
     * What is wrong with the name of a folder.
     *
     * @return what was found and, behind it, what would be right; nothing if it is right
     */
    public static Optional<Refusal> refusal(String folder) {
        return reason(folder)
                .map(
                        why ->
                                new Refusal(
                                        "a project's folder called `" + folder + "`, " + why,
                                        "the same folder under another name"));
    }

    private static Optional<String> reason(String folder) {
        if (OWN.contains(SheetName.folded(folder).replace(AtomicFile.PART, ""))) {
            return Optional.of("which is the name of a part of the notebook itself");
        }
        if (folder.equals("..") || folder.codePoints().anyMatch(FolderName::leadsElsewhere)) {
            return Optional.of("with a letter in it that no name of a file may have everywhere");
        }
        if (SheetName.isDevice(folder)) {
            return Optional.of("which is a device on some machines");
        }
        if (folder.isBlank() || folder.endsWith(" ") || folder.endsWith(".")) {
            return Optional.of("with a blank or a dot at the end, which some machines drop");
        }
        return folder.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES
                ? Optional.of("which is too long: some machines take 200 letters without accents")
                : Optional.empty();
    }

    private static boolean leadsElsewhere(int letter) {
        return letter == '/' || letter == '\\' || letter == ':' || Visible.isUnseen(letter);
    }

    /** A clash of folders, told for each but the first of those that some machines take for one. */
    public static Map<String, Refusal> clashes(List<String> folders) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        folders.forEach(
                folder ->
                        alike.computeIfAbsent(SheetName.folded(folder), f -> new ArrayList<>())
                                .add(folder));
        Map<String, Refusal> clashes = new LinkedHashMap<>();
        for (List<String> same : alike.values()) {
            for (String other : same.subList(1, same.size())) {
                clashes.put(
                        other,
                        new Refusal(
                                "folders `"
                                        + same.get(0)
                                        + "` and `"
                                        + other
                                        + "`, which some machines take for one",
                                "names that differ in more than capitals or how accents are put"
                                        + " together"));
            }
        }
        return clashes;
    }

    /**
     * Something wrong with the name of a folder.
     *
     * @param found what was found
     * @param right what would be right
     */
    public record Refusal(String found, String right) {}
}
