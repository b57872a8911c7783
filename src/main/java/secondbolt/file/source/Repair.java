package secondbolt.file.source;

import java.util.ArrayList;
import java.util.List;

/**
 * A change of one line that a maker may have meant, tried to find the line to blame.
 *
 * @param line from 1
 * @param at how many letters before the change stay
 * @param removed how many letters go
 * @param inserted what stands instead; with a line end in it the line becomes two
 * @param column where the caret points, from 1
 * @param found what is told of the line as it stands
 * @param right what is told to be right
 */
public record Repair(
        int line, int at, int removed, String inserted, int column, String found, String right) {
    /** The file with this change. */
    public SourceFile in(SourceFile file) {
        List<String> lines = new ArrayList<>(file.lines());
        String text = lines.get(line - 1);
        String changed = text.substring(0, at) + inserted + text.substring(at + removed);
        lines.remove(line - 1);
        lines.addAll(line - 1, List.of(changed.split("\n", -1)));
        return new SourceFile(file.name(), String.join("\n", lines), lines, file.folder());
    }

    /** Where a place of the changed file stands in the file without the change. */
    public Place before(Place place) {
        int end = inserted.lastIndexOf('\n') + 1;
        int added = end > 0 ? 1 : 0;
        if (place.line() < line || place.line() > line + added) {
            return place.line() < line
                    ? place
                    : new Place(place.file(), place.line() - added, place.column());
        }
        boolean isSecond = place.line() > line;
        int column = isSecond ? at + end + place.column() : place.column();
        int unchanged = at + inserted.length();
        int written =
                column > unchanged
                        ? column - inserted.length() + removed
                        : Math.min(column, at + 1);
        return new Place(place.file(), line, written);
    }

    /** What is told of the line. */
    public Mistake mistake(SourceFile file) {
        return file.mistake(new Place(file.name(), line, column), found, right);
    }
}
