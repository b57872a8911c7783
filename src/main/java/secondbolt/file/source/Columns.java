package secondbolt.file.source;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where a column, counted in letters, stands among the halves of letters that Java counts; of one
 * line asked many times it is known at once.
 */
public final class Columns {
    /** So many letters apart the places are kept. */
    private static final int STEP = 256;

    private final List<String> lines;
    private final Map<Integer, int[]> known = new HashMap<>();

    /** The columns of a file. */
    public Columns(SourceFile source) {
        this.lines = source.lines();
    }

    /**
     * The place of a column in its line.
     *
     * @param line from 1
     * @param column from 1; past the end counts as the end
     * @return from 0
     */
    public int offset(int line, int column) {
        String text = lines.get(line - 1);
        int letters = Math.max(0, column - 1);
        if (text.length() <= STEP) {
            return on(text, 0, letters);
        }
        int[] kept = known.computeIfAbsent(line, one -> places(text));
        int before = Math.min(letters / STEP, kept.length - 1);
        return on(text, kept[before], letters - before * STEP);
    }

    private static int[] places(String text) {
        int[] places = new int[text.codePointCount(0, text.length()) / STEP + 1];
        for (int i = 1; i < places.length; i++) {
            places[i] = text.offsetByCodePoints(places[i - 1], STEP);
        }
        return places;
    }

    private static int on(String text, int from, int letters) {
        int to = from;
        for (int i = 0; i < letters && to < text.length(); i++) {
            to += Character.charCount(text.codePointAt(to));
        }
        return to;
    }
}
