package secondbolt.draw.paper;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A size of paper, upright as the printer takes it in.
 *
 * @param name as the maker writes it
 * @param across the side that runs across
 * @param along the side that runs along; of a roll, as much as one page can have
 * @param feed how it comes
 */
public record Paper(String name, Length across, Length along, Feed feed) {
    /** How paper comes. */
    public enum Feed {
        /** In sheets of one size. */
        SHEETS,
        /** On a roll, cut where the drawing ends. */
        ROLL
    }

    /**
     * Room for the test square of 100 mm on a printer that shrinks everything to four fifths, and
     * both margins: 100 × 1.25 + 2 × 10, and 2 mm for its lines.
     */
    private static final Length SMALLEST_SIDE = Length.ofMillimetres(147);

    /** What printers at home take in. Source: 13 in, the widest in common use; common practice. */
    private static final Length WIDEST_AT_HOME = Length.ofInches(13, 1);

    /** A page of a PDF ends at 200 in. Source: ISO 32000-1, annex C.2, 14400 units. */
    private static final Length LARGEST_SIDE = Length.ofInches(200, 1);

    /** Source: ISO 216:2007, A series. */
    public static final Paper A4 = millimetres("a4", 210, 297);

    /** Source: ISO 216:2007, A series. */
    public static final Paper A3 = millimetres("a3", 297, 420);

    /** For a plotter. Source: ISO 216:2007, A series. */
    public static final Paper A0 = millimetres("a0", 841, 1189);

    /** For a plotter. Source: 36 in, the usual width of a plotter's roll; common practice. */
    public static final Paper ROLL_36 = roll("36in-roll", 36);

    /** For a narrow plotter. Source: 24 in; common practice. */
    public static final Paper ROLL_24 = roll("24in-roll", 24);

    /** Source: ANSI/ASME Y14.1, size A. */
    public static final Paper LETTER = halfInches("letter", 17, 22);

    /** Source: 8½ by 14 in, common practice. */
    public static final Paper LEGAL = halfInches("legal", 17, 28);

    /** Source: ANSI/ASME Y14.1, size B, upright. */
    public static final Paper TABLOID = halfInches("tabloid", 22, 34);

    /** The part that A4 and Letter share, so that one file prints true on both. */
    public static final Paper A4_AND_LETTER =
            new Paper(
                    "a4+letter",
                    A4.across.orShorter(LETTER.across),
                    A4.along.orShorter(LETTER.along),
                    Feed.SHEETS);

    private static final List<Paper> ALL =
            List.of(A4_AND_LETTER, A4, LETTER, A3, LEGAL, TABLOID, A0, ROLL_36, ROLL_24);

    /**
     * Checks the sides.
     *
     * @throws IllegalArgumentException if the size does not {@link #leaveRoom}
     */
    public Paper {
        if (!leaveRoom(across, along)) {
            throw new IllegalArgumentException("no room on paper " + across + " by " + along);
        }
    }

    /** Whether paper of this size has room for the test square, and is not larger than 200 in. */
    public static boolean leaveRoom(Length across, Length along) {
        return Stream.of(across, along)
                .noneMatch(
                        side ->
                                side.isShorterThan(SMALLEST_SIDE)
                                        || side.isLongerThan(LARGEST_SIDE));
    }

    /**
     * Paper of any size.
     *
     * @param tape the one its name is written with: {@code 21 cm x 29.7 cm}
     * @throws IllegalArgumentException if the size does not {@link #leaveRoom}
     */
    public static Paper custom(Length across, Length along, Tape tape) {
        return new Paper(
                tape.print(across) + " x " + tape.print(along), across, along, Feed.SHEETS);
    }

    /**
     * Its name as it is said, which the maker does not type: {@code A4}, {@code 36 in roll}; of any
     * other size, that size.
     */
    public String words() {
        return switch (name) {
            case "a4", "a3", "a0" -> name.toUpperCase(Locale.ROOT);
            case "a4+letter" -> "A4 or Letter";
            case "letter" -> "Letter";
            case "legal" -> "Legal";
            case "tabloid" -> "Tabloid";
            case "36in-roll" -> "36 in roll";
            case "24in-roll" -> "24 in roll";
            default -> name;
        };
    }

    /** The paper of this name. */
    public static Optional<Paper> named(String name) {
        return ALL.stream().filter(paper -> paper.name.equals(name)).findFirst();
    }

    /** The names there are, the one that fits most homes first. */
    public static List<String> names() {
        return ALL.stream().map(Paper::name).toList();
    }

    /** Whether a printer at home takes it in; else it is for a plotter. */
    public boolean isForHome() {
        return !across.isLongerThan(WIDEST_AT_HOME);
    }

    /**
     * What stands in front of the drawing is printed on this: at home, whatever the drawing is on.
     */
    public Paper forLead() {
        return isForHome() && feed == Feed.SHEETS ? this : A4_AND_LETTER;
    }

    /**
     * Paper from a roll cut to this length, at least as long as it must be; sheets stay as they
     * are.
     */
    Paper cutTo(Length needed) {
        if (feed == Feed.SHEETS) {
            return this;
        }
        Length cut = needed.orLonger(SMALLEST_SIDE).orShorter(along);
        return new Paper(name, across, cut, Feed.SHEETS);
    }

    private static Paper roll(String name, long inches) {
        return new Paper(name, Length.ofInches(inches, 1), LARGEST_SIDE, Feed.ROLL);
    }

    private static Paper millimetres(String name, long across, long along) {
        return new Paper(
                name, Length.ofMillimetres(across), Length.ofMillimetres(along), Feed.SHEETS);
    }

    private static Paper halfInches(String name, long across, long along) {
        return new Paper(name, Length.ofInches(across, 2), Length.ofInches(along, 2), Feed.SHEETS);
    }
}
