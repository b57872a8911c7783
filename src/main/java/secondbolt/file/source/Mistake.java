package secondbolt.file.source;

/**
 * One mistake in a maker's file.
 *
 * @param place where it stands
 * @param found what stands there, and what is the matter with it
 * @param right what would be right
 * @param line the line of the file it stands in, for showing
 * @param isOfProgram whether it is not the maker's: the program failed there, and what was found is
 *     what it was at
 */
public record Mistake(Place place, String found, String right, String line, boolean isOfProgram)
        implements Comparable<Mistake> {
    private static final int LONGEST_LINE_SHOWN = 110;

    /** One of the maker's. */
    public Mistake(Place place, String found, String right, String line) {
        this(place, found, right, line, false);
    }

    /**
     * One of the program's own.
     *
     * @param at what it was at, as a maker knows it
     */
    public static Mistake ofProgram(Place place, String at) {
        return new Mistake(place, at, "", "", true);
    }

    @Override
    public int compareTo(Mistake other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : found.compareTo(other.found);
    }

    /** One message: the place, what was found, what would be right, and the line with a caret. */
    @Override
    public String toString() {
        if (isOfProgram) {
            return place
                    + ": a fault of the program, not of your file: it failed at "
                    + found
                    + "; please report it with the file";
        }
        StringBuilder text = new StringBuilder();
        text.append(place).append(": mistake: found ").append(found);
        if (!right.isEmpty()) {
            text.append("; right would be ").append(right);
        }
        if (!line.isBlank()) {
            text.append('\n').append(shown());
        }
        return text.toString();
    }

    private String shown() {
        int from = Math.max(0, place.column() - LONGEST_LINE_SHOWN / 2);
        int[] letters = line.codePoints().map(c -> Character.isISOControl(c) ? ' ' : c).toArray();
        from = Math.min(from, letters.length);
        int count = Math.min(LONGEST_LINE_SHOWN, letters.length - from);
        String part = new String(letters, from, count);
        return "    " + part + "\n    " + " ".repeat(Math.max(0, place.column() - 1 - from)) + "^";
    }
}
