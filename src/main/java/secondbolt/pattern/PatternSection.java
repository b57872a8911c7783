package secondbolt.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.LengthRange;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceKeys;
import secondbolt.wearer.PatternSizes;
import secondbolt.wearer.SizeChartSection;

/** The {@code pattern} section of the project file. */
public final class PatternSection {
    private static final Key<Pattern.Rights> RIGHTS =
            Key.optional(
                    "rights",
                    Forms.choice(Pattern.Rights.values(), Pattern.Rights::word),
                    "Whose the pattern is; unknown if not told. Outlines of a bought one are not"
                            + " for others.",
                    "mine");
    private static final Key<Length> OF =
            Key.required(
                    "of",
                    Forms.either(
                            Forms.length(LengthRange.of("0 mm", "15 cm")), Forms.none(Length.ZERO)),
                    "How wide it is.",
                    "1.5");
    private static final Key<Boolean> INCLUDED =
            Key.required(
                    "included",
                    Forms.trueOrFalse(),
                    "Whether the outlines as written include it.",
                    "false");
    private static final Key<Pattern.Allowance> ALLOWANCE =
            Key.optional(
                    "seam allowance",
                    Forms.either(
                            MapForm.of(
                                    "a seam allowance",
                                    List.of(OF, INCLUDED),
                                    PatternSection::allowance),
                            doubtful()),
                    "The pattern's seam allowance.",
                    "{of: 1.5, included: false}");
    private static final Key<Map<String, Piece>> PIECES =
            Key.required(
                    "pieces",
                    NamedForm.of("piece", PieceKeys.FORM),
                    "Its pieces, each under a name of your own.",
                    "{front: {cut: pair, rectangle: [30, 70]}}");

    /** A copy is laid, numbered and listed by itself. */
    private static final int MOST_COPIES = 4_000;

    /** Every point is offset, hemmed and drawn; a traced piece of some hundred is a careful one. */
    private static final int MOST_POINTS = 20_000;

    private static final Form<Pattern> FORM =
            MapForm.of("a pattern", keys(), PatternSection::pattern);

    /** The section. */
    public static final Key<Pattern> KEY =
            Key.optional(
                    "pattern",
                    FORM,
                    "The paper pattern.",
                    "{pieces: {front: {cut: pair, rectangle: [30, 70]}}}");

    private PatternSection() {}

    /**
     * Nothing to be added, or nothing that is drawn: one is cut on the line, the other beside it.
     */
    private static Form<Pattern.Allowance> doubtful() {
        return Forms.refused(
                List.of("none", "no"),
                "`seam allowance: {of: none, included: no}` where all is cut on the line as drawn;"
                        + " `{of: …, included: no}`, with its width, where the outlines have none"
                        + " and it is added");
    }

    private static Optional<Pattern.Allowance> allowance(Fields fields) {
        return Optional.of(new Pattern.Allowance(fields.require(OF), fields.require(INCLUDED)));
    }

    private static List<Key<?>> keys() {
        List<Key<?>> keys = new ArrayList<>(List.of(RIGHTS));
        keys.addAll(SizeChartSection.KEYS);
        keys.addAll(
                List.of(ALLOWANCE, PIECES, SeamKeys.SEAMS, SeamKeys.OPENINGS, MeaningKeys.MEANING));
        return keys;
    }

    private static Optional<Pattern> pattern(Fields fields) {
        Optional<PatternSizes> sizes = SizeChartSection.read(fields);
        List<Piece> pieces = new ArrayList<>();
        fields.require(PIECES).forEach((name, piece) -> pieces.add(piece.named(name)));
        Optional<Map<String, Serves>> told = MeaningKeys.read(fields, pieces);
        if (!areFewEnough(fields, pieces)) {
            return Optional.empty();
        }
        return sizes.flatMap(s -> told.map(t -> pattern(fields, s, pieces, t)));
    }

    private static boolean areFewEnough(Fields fields, List<Piece> pieces) {
        long copies =
                pieces.stream()
                        .flatMap(piece -> piece.cuts().values().stream())
                        .mapToLong(Piece.Cut::count)
                        .sum();
        long points =
                pieces.stream()
                        .flatMap(piece -> piece.shape().asDrawn().stream())
                        .flatMap(drawn -> drawn.edges().stream())
                        .mapToLong(edge -> edge.line().steps().size())
                        .sum();
        return isAtMost(fields, copies, "copies", MOST_COPIES)
                && isAtMost(fields, points, "points", MOST_POINTS);
    }

    private static boolean isAtMost(Fields fields, long found, String what, int most) {
        if (found > most) {
            fields.tell(
                    PIECES,
                    found + " " + what + " of all pieces together",
                    "at most " + most + " in one project");
        }
        return found <= most;
    }

    private static Pattern pattern(
            Fields fields, PatternSizes sizes, List<Piece> pieces, Map<String, Serves> told) {
        List<Seam> seams = fields.get(SeamKeys.SEAMS).orElse(List.of());
        return new Pattern(
                fields.get(RIGHTS).orElse(Pattern.Rights.UNKNOWN),
                sizes,
                fields.get(ALLOWANCE),
                pieces,
                seams,
                fields.get(SeamKeys.OPENINGS).orElse(List.of()),
                Meanings.of(pieces, seams, told));
    }
}
