package secondbolt.worksheet;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Makes the names of sheets out of the maker's own names: such that any machine can give them to a
 * file, and each sheet of a project has one of its own.
 */
public final class SheetName {
    /** On Latin, Greek and Cyrillic letters; the marks of other scripts are part of the word. */
    private static final String ACCENTS = "[\\u0300-\\u036F]+";

    /** With room for a number and an ending. */
    private static final int MOST_CHARACTERS = 90;

    /** File systems take 255, of which an ending and that of a temporary take some. */
    private static final int MOST_BYTES = 200;

    private static final int LARGEST_OF_ONE_BYTE = 0x7F;
    private static final int LARGEST_OF_TWO_BYTES = 0x7FF;
    private static final int LARGEST_OF_THREE_BYTES = 0xFFFF;

    private static final String NAMELESS = "sheet";

    /**
     * Devices of some systems, whatever ending follows.
     *
     * <p>Source: Microsoft, Naming Files, Paths, and Namespaces, "Naming Conventions"; from memory.
     */
    private static final Pattern DEVICE =
            Pattern.compile("(con|prn|aux|nul|(com|lpt)[\\p{Nd}¹²³])([ .].*)?");

    private SheetName() {}

    /**
     * What a sheet would be called after its words: lower case, letters and figures of any script,
     * hyphens between words; at most 90 characters and 200 bytes.
     */
    public static String of(String words) {
        String plain =
                Normalizer.normalize(words, Normalizer.Form.NFD)
                        .replaceAll(ACCENTS, "")
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{M}\\p{Nd}]+\\p{M}*", "-")
                        .replaceAll("^[-\\p{M}]+|-+$", "");
        String cut = cut(Normalizer.normalize(plain, Normalizer.Form.NFC)).replaceAll("-+$", "");
        if (cut.isEmpty()) {
            return NAMELESS;
        }
        return isDevice(cut) ? NAMELESS + "-" + cut : cut;
    }

    /** Whether a file or folder of that name would be a device to some system. */
    public static boolean isDevice(String name) {
        return DEVICE.matcher(name.toLowerCase(Locale.ROOT)).matches();
    }

    private static String cut(String name) {
        int bytes = 0;
        int end = 0;
        while (end < name.length()) {
            int letter = name.codePointAt(end);
            bytes += bytes(letter);
            if (bytes > MOST_BYTES || end + Character.charCount(letter) > MOST_CHARACTERS) {
                break;
            }
            end += Character.charCount(letter);
        }
        return name.substring(0, end);
    }

    private static int bytes(int letter) {
        if (letter <= LARGEST_OF_ONE_BYTE) {
            return 1;
        }
        if (letter <= LARGEST_OF_TWO_BYTES) {
            return 2;
        }
        return letter <= LARGEST_OF_THREE_BYTES ? 3 : 4;
    }

    /**
     * One name for each, in order, no two the same to any file system. The first that would be
     * called so is; the others get a number behind it that no other sheet would be called by, so
     * that a name depends on nothing but those before that are called alike.
     *
     * @param wished what each would be called, as {@link #of} gives it
     */
    public static List<String> forEach(List<String> wished) {
        Set<String> taken = new HashSet<>();
        wished.forEach(name -> taken.add(folded(name)));
        Set<String> unclaimed = new HashSet<>(taken);
        List<String> made = new ArrayList<>();
        for (String name : wished) {
            String free = name;
            if (!unclaimed.remove(folded(name))) {
                for (int i = 2; !taken.add(folded(free)); i++) {
                    free = name + "-" + i;
                }
            }
            made.add(free);
        }
        return Collections.unmodifiableList(made);
    }

    /**
     * The same for all names that some file system takes for one: they differ in capitals, or in
     * how their accents are put together.
     */
    public static String folded(String name) {
        String capitals = Normalizer.normalize(name, Normalizer.Form.NFKD).toUpperCase(Locale.ROOT);
        return Normalizer.normalize(capitals.toLowerCase(Locale.ROOT), Normalizer.Form.NFKC);
    }
}
