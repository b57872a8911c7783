package secondbolt.file.source;

/**
 * Where something stands in a file.
 *
 * @param file the file's name as the maker gave it
 * @param line from 1
 * @param column from 1, in letters
 */
public record Place(String file, int line, int column) implements Comparable<Place> {
    /** The very beginning of a file, for what is wrong with it as a whole. */
    public static Place beginningOf(String file) {
        return new Place(file, 1, 1);
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        int byLine = Integer.compare(line, other.line);
        return byFile != 0 ? byFile : byLine != 0 ? byLine : Integer.compare(column, other.column);
    }

    /** In the form editors jump to: {@code file:line:column}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
