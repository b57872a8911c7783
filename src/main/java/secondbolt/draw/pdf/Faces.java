package secondbolt.draw.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.draw.Lettering;

/** Which font writes which letter, and which letters none has. */
public final class Faces {
    /** Stands for a letter that no font has. */
    private static final int MISSING = 0x25A1;

    private Faces() {}

    /** Reads the fonts that every sheet needs, which otherwise the first sheet does. */
    public static void read() {
        FontFile.REGULAR.font();
        FontFile.BOLD.font();
    }

    /**
     * The letters of a text that no font of the program has, each once, in order of appearance.
     * Sheets show an empty square in their place.
     */
    public static List<String> missing(String text) {
        return VisualText.of(text)
                .codePoints()
                .filter(c -> find(c, Lettering.Face.REGULAR).isEmpty())
                .distinct()
                .mapToObj(Character::toString)
                .toList();
    }

    /** The text, in the order it is seen, as runs of one font each. */
    static List<Run> runs(String text, Lettering.Face face) {
        List<Run> runs = new ArrayList<>();
        FontFile current = null;
        StringBuilder letters = new StringBuilder();
        for (int c : VisualText.of(text).codePoints().toArray()) {
            Optional<FontFile> found = find(c, face);
            FontFile font = found.orElse(FontFile.WIDER);
            if (font != current && letters.length() > 0) {
                runs.add(new Run(current, letters.toString()));
                letters.setLength(0);
            }
            current = font;
            letters.appendCodePoint(found.isPresent() ? c : MISSING);
        }
        if (letters.length() > 0) {
            runs.add(new Run(current, letters.toString()));
        }
        return runs;
    }

    private static Optional<FontFile> find(int codePoint, Lettering.Face face) {
        FontFile first =
                switch (face) {
                    case REGULAR -> FontFile.REGULAR;
                    case BOLD -> FontFile.BOLD;
                };
        // One after the other, so that the large fonts are read only for letters that need them.
        for (FontFile font : List.of(first, FontFile.WIDER, FontFile.EAST_ASIAN)) {
            if (font.has(codePoint)) {
                return Optional.of(font);
            }
        }
        return Optional.empty();
    }

    /**
     * Letters of one font.
     *
     * @param font the font, which has all of them
     * @param letters in the order they are seen
     */
    record Run(FontFile font, String letters) {}
}
