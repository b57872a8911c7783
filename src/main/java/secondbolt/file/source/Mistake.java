package secondbolt.file.source;

/**
 * One mistake in a maker's file.
 *
 * @param place where it stands
 * @param found what stands there, and what is the matter with it
 * @param right what would be right
 * @param line the line of the file it stands in, for showing
 */
public record Mistake(Place place, String found, String right, String line)
        implements Comparable<Mistake> {
    private static final int LONGEST_LINE_SHOWN = 110;

    @Override
    public int compareTo(Mistake other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : found.compareTo(other.found);
    }

    /** One message: the place, what was found, what would be right, and the line with a caret. */
    @Override
    public String toString() {
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
