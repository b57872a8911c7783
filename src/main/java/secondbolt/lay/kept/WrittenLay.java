package secondbolt.lay.kept;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.Orientation;
import secondbolt.lay.placement.Placement;

/** A lay as it is written to a store: one line for each placement, and a last line. */
final class WrittenLay {
    /** The last line of a lay that was written to its end. */
    private static final String END = "end";

    /** No line is longer: six words, the numbers among them those of a cloth. */
    private static final int LONGEST_LINE = 100;

    private static final int WORDS = 6;
    private static final String NEARLY_NOTHING = "-0.0000000";

    private WrittenLay() {}

    /** A lay's text; places to a ten-millionth of a millimetre. */
    static String of(Lay lay) {
        StringBuilder text = new StringBuilder();
        for (Placement placement : lay.placements()) {
            text.append(line(placement)).append('\n');
        }
        return text.append(END).append('\n').toString();
    }

    private static String line(Placement placement) {
        Orientation orientation = placement.orientation();
        return placement.item()
                + " "
                + placement.container()
                + " "
                + orientation.isMirrored()
                + " "
                + orientation.turnDegrees()
                + " "
                + number(placement.acrossMm())
                + " "
                + number(placement.alongMm());
    }

    /** A number as it is written; nearly nothing has no sign. */
    static String number(double value) {
        String written = String.format(Locale.ROOT, "%.7f", value);
        return written.equals(NEARLY_NOTHING) ? written.substring(1) : written;
    }

    /**
     * The lay of a text; items it does not place are left over.
     *
     * @param items how many there are
     * @return nothing if the text is not, letter by letter, what is written of a lay of so many
     *     items
     */
    static Optional<Lay> read(String text, int items) {
        if (text.length() > (long) (items + 1) * LONGEST_LINE) {
            return Optional.empty();
        }
        List<Placement> placements = new ArrayList<>();
        boolean[] there = new boolean[items];
        for (String line : text.lines().takeWhile(line -> !line.equals(END)).toList()) {
            Optional<Placement> placement = placement(List.of(line.split(" ", -1)));
            int item = placement.map(Placement::item).orElse(-1);
            if (item < 0 || item >= items || there[item]) {
                return Optional.empty();
            }
            there[item] = true;
            placements.add(placement.get());
        }
        List<Integer> left = IntStream.range(0, items).filter(i -> !there[i]).boxed().toList();
        return Optional.of(new Lay(placements, left, true)).filter(lay -> of(lay).equals(text));
    }

    private static Optional<Placement> placement(List<String> words) {
        if (words.size() != WORDS) {
            return Optional.empty();
        }
        try {
            Orientation orientation =
                    new Orientation(
                            Integer.parseInt(words.get(3)), Boolean.parseBoolean(words.get(2)));
            return Optional.of(
                    new Placement(
                            Integer.parseInt(words.get(0)),
                            Integer.parseInt(words.get(1)),
                            orientation,
                            Double.parseDouble(words.get(4)),
                            Double.parseDouble(words.get(5))));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
