package secondbolt.textile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.garment.Direction;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.textile.extent.Extent;

/** The key that says how a cloth changes in the wash. */
final class PrewashKeys {
    /** Woollens felt and crepes crimp, but none to less than half (common practice, no source). */
    private static final Share LEAST_LEFT = Share.ofPercent(50);

    private static final Share MOST_LEFT = Share.ofPercent(120);

    private static final Key<AcrossAlong<Answer<Length>>> MARKED =
            Key.required(
                    "marked",
                    square(),
                    "A square before the wash, across and along; either may be unknown.",
                    "[50, 50]");
    private static final Key<AcrossAlong<Answer<Length>>> NOW =
            Key.required(
                    "now",
                    square(),
                    "The same square after the wash, dry; either may be unknown.",
                    "[49.2, 48.0]");
    private static final Key<List<AcrossAlong<Answer<Length>>>> THEN =
            Key.optional(
                    "then",
                    Forms.either(
                            ListForm.of("the square after each further wash", square(), 0, 20),
                            Forms.none(List.<AcrossAlong<Answer<Length>>>of())),
                    "The same square after each further wash, in order; sizes go by the last.",
                    "[[49.1, 47.8]]");
    static final Key<Prewash> PREWASH =
            Key.optional(
                    "prewash",
                    Forms.either(
                            MapForm.of(
                                    "a prewash", List.of(MARKED, NOW, THEN), PrewashKeys::marked),
                            Forms.said(said())),
                    "What the wash does to it: a square marked before and measured after; done if"
                            + " the cloth was washed before it was measured, yes for short; never if it"
                            + " will never be washed; or unknown, as it is too if you say no: the wash"
                            + " is still to come.",
                    "{marked: [50, 50], now: [49.2, 48.0]}");

    private PrewashKeys() {}

    private static Map<String, Prewash> said() {
        Map<String, Prewash> said = new LinkedHashMap<>();
        said.put("done", new Prewash.Done());
        said.put("yes", new Prewash.Done());
        said.put("never", new Prewash.Never());
        said.put("unknown", new Prewash.NotKnown());
        said.put("no", new Prewash.NotKnown());
        said.put("none", new Prewash.NotKnown());
        return said;
    }

    private static Form<AcrossAlong<Answer<Length>>> square() {
        return ListForm.acrossAlong(Forms.orUnknown(Forms.length(LengthRange.of("5 cm", "20 m"))));
    }

    private static Optional<Prewash> marked(Fields fields) {
        Prewash.Marked marked =
                new Prewash.Marked(
                        fields.require(MARKED),
                        fields.require(NOW),
                        fields.get(THEN).orElse(List.of()));
        List<AcrossAlong<Optional<Length>>> squares = marked.squares();
        boolean isPlausible = true;
        for (int wash = 1; wash < squares.size(); wash++) {
            Key<?> key = wash == 1 ? NOW : THEN;
            isPlausible &= isPlausible(fields, key, squares.get(0), squares.get(wash));
        }
        return isPlausible ? Optional.of(marked) : Optional.empty();
    }

    private static boolean isPlausible(
            Fields fields,
            Key<?> key,
            AcrossAlong<Optional<Length>> before,
            AcrossAlong<Optional<Length>> after) {
        boolean across =
                isPlausible(fields, key, left(before.across(), after.across()), Direction.ACROSS);
        boolean along =
                isPlausible(fields, key, left(before.along(), after.along()), Direction.ALONG);
        return across && along;
    }

    private static Optional<Share> left(Optional<Length> before, Optional<Length> after) {
        return before.flatMap(b -> after.map(a -> Share.left(a, b)));
    }

    private static boolean isPlausible(
            Fields fields, Key<?> key, Optional<Share> left, Direction way) {
        boolean plausible =
                left.isEmpty()
                        || (left.get().compareTo(LEAST_LEFT) >= 0
                                && left.get().compareTo(MOST_LEFT) <= 0);
        if (!plausible) {
            fields.tell(
                    key,
                    "a square that is "
                            + left.orElseThrow().percent(0)
                            + " of what was marked "
                            + way,
                    "the same square measured again: 50 % to 120 % of it");
        }
        return plausible;
    }

    /** The square must lie on the cloth. */
    static boolean liesOn(Fields fields, Answer<Extent> extent) {
        Optional<AcrossAlong<Length>> size = extent.toOptional().map(Extent::size);
        Optional<AcrossAlong<Optional<Length>>> square = fields.get(PREWASH).map(Prewash::square);
        if (size.isEmpty() || square.isEmpty()) {
            return true;
        }
        return fits(fields, square.get().across(), size.get().across(), Direction.ACROSS)
                && fits(fields, square.get().along(), size.get().along(), Direction.ALONG);
    }

    private static boolean fits(
            Fields fields, Optional<Length> marked, Length size, Direction way) {
        Optional<Length> tooLong = marked.filter(m -> m.isLongerThan(size));
        tooLong.ifPresent(
                m ->
                        fields.tell(
                                PREWASH,
                                "a marked square of "
                                        + fields.tape().print(m)
                                        + " on a cloth that is "
                                        + fields.tape().print(size)
                                        + " "
                                        + way,
                                "a square that lies on the cloth"));
        return tooLong.isEmpty();
    }
}
