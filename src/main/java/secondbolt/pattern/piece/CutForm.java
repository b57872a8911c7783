package secondbolt.pattern.piece;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;
import secondbolt.measure.Parsed;

/** How it is written how many of a piece are cut of one cloth. */
final class CutForm {
    private static final int MOST = 200;

    private static final String WORDS = "`2 pairs` or `2 alike`, with how many";

    /** The letters of what it takes beside a number and {@code pair}. */
    private static final String LETTERS = "(1 pair|([1-9][0-9]?|100) pairs|[1-9][0-9]{0,2} alike)";

    private static final Pattern PAIRS = Pattern.compile("(?:a|an|([1-9]\\d?|100))?\\s*pairs?");
    private static final Pattern ALIKE = Pattern.compile("([1-9]\\d{0,2})\\s+alike");
    private static final Pattern ON_FOLD =
            Pattern.compile(
                    "([1-9]\\d{0,2})?\\W*(?:x|times)?\\W*(?:on|at)\\b.*\\bfold\\b.*|.*\\bfold\\b.*");

    static final Form<Piece.Cut> COUNT =
            Forms.either(
                    Forms.either(
                            Forms.map(
                                    Forms.whole(1, MOST),
                                    count -> new Piece.Cut(count, Piece.Hands.NOT_TOLD)),
                            Forms.phrase(WORDS, LETTERS, CutForm::parse)),
                    Forms.word("pair", Piece.Cut.pairs(1)));

    private CutForm() {}

    private static Parsed<Piece.Cut> parse(String written) {
        String text = written.strip().toLowerCase(Locale.ROOT);
        Matcher pairs = PAIRS.matcher(text);
        Matcher alike = ALIKE.matcher(text);
        Matcher onFold = ON_FOLD.matcher(text);
        if (text.equals("pairs")) {
            return refuse(written, "`cut: pair` for one pair, or so many as in `cut: 2 pairs`");
        }
        if (pairs.matches()) {
            return new Parsed.Value<>(
                    Piece.Cut.pairs(pairs.group(1) == null ? 1 : Integer.parseInt(pairs.group(1))));
        }
        if (alike.matches() && Integer.parseInt(alike.group(1)) <= MOST) {
            return new Parsed.Value<>(
                    new Piece.Cut(Integer.parseInt(alike.group(1)), Piece.Hands.ALIKE));
        }
        if (onFold.matches()) {
            return refuse(
                    written,
                    "`cut: "
                            + (onFold.group(1) == null ? "1" : onFold.group(1))
                            + "`, and the edge that lies on the fold under a key of its own, such"
                            + " as `fold: centre back`; the piece is then drawn half");
        }
        return refuse(written, "a whole number from 1 to " + MOST + ", `pair`, " + WORDS);
    }

    private static Parsed<Piece.Cut> refuse(String written, String right) {
        return new Parsed.Refusal<>("`" + written + "`", right);
    }
}
