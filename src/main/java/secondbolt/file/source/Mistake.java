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

    /** Cuts short what is too long to be told, so that no mistake holds much of a file. */
    public Mistake {
        found = Visible.found(found);
        right = Visible.right(right);
    }

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
            return Visible.escaped(place.toString())
                    + ": a fault of the program, not of your file: it failed at "
                    + found
                    + "; please report it with the file";
        }
        StringBuilder text = new StringBuilder();
        text.append(Visible.escaped(place.toString())).append(": mistake: found ").append(found);
        if (!right.isEmpty()) {
            text.append("; right would be ").append(right);
        }
        if (!line.isBlank()) {
            text.append('\n').append(shown());
        }
        return text.toString();
    }

    private String shown() {
        int before = Math.max(0, place.column() - LONGEST_LINE_SHOWN / 2);
        int from = offset(0, before);
        String part = line.substring(from, offset(from, LONGEST_LINE_SHOWN));
        int caret = Math.max(0, place.column() - 1 - line.codePointCount(0, from));
        return "    " + seen(part) + "\n    " + " ".repeat(Math.min(caret, wide(part))) + "^";
    }

    /** So many letters on from a place in the line, or its end. */
    private int offset(int from, int letters) {
        int to = from;
        for (int i = 0; i < letters && to < line.length(); i++) {
            to += Character.charCount(line.codePointAt(to));
        }
        return to;
    }

    private static int wide(String part) {
        return part.codePointCount(0, part.length());
    }

    /** Every letter that is not to be seen as a blank, so that the caret stands right. */
    private static String seen(String part) {
        return part.codePoints()
                .map(letter -> Visible.isUnseen(letter) ? ' ' : letter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
