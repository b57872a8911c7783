package secondbolt.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;

/** The {@code alterations} section of the project file. */
public final class AlterationSection {
    private static final int MOST = 60;
    private static final LengthRange AMOUNT = LengthRange.of("1 mm", "1 m");

    private static final Key<String> LENGTHEN =
            Key.optional("lengthen", Forms.nameOf(60), "A line to lengthen at.", "sleeve");
    private static final Key<String> SHORTEN =
            Key.optional("shorten", Forms.nameOf(60), "A line to shorten at.", "body");
    private static final Form<List<String>> EDGES =
            Forms.either(
                    Forms.map(Forms.nameOf(60), List::of),
                    ListForm.of("edges", Forms.nameOf(60), 1, 10));
    private static final Key<List<String>> WIDEN =
            Key.optional(
                    "widen",
                    EDGES,
                    "Edges to widen at, by their name; the pieces that go round together share it,"
                            + " and what is sewn to them follows.",
                    "side");
    private static final Key<List<String>> NARROW =
            Key.optional("narrow", EDGES, "Edges to narrow at, likewise.", "side");
    private static final Key<Length> BY =
            Key.required(
                    "by",
                    Forms.length(AMOUNT),
                    "By how much: of the line, or in all round the body; at a sleeve or leg, in"
                            + " all of both.",
                    "2.5");
    private static final Key<Length> FROM =
            Key.optional(
                    "from",
                    Forms.length(LengthRange.of("0 mm", "5 m")),
                    "Widen or narrow nothing above this, along the piece from its top.",
                    "30");
    private static final Key<Length> TO =
            Key.optional(
                    "to",
                    Forms.length(LengthRange.of("0 mm", "5 m")),
                    "Widen or narrow by all from this on.",
                    "60");
    private static final Key<Map<String, Length>> PIECES =
            Key.optional(
                    "pieces",
                    NamedForm.of("piece", Forms.length(LengthRange.of("0 mm", "1 m"))),
                    "Pieces that are lengthened or shortened by another amount, on purpose.",
                    "{back: 2.5}");
    private static final Key<String> FOUND =
            Key.optional(
                    "found",
                    Forms.text(120),
                    "The fitting in which it was found.",
                    "fitting of 2026-05-20");

    /** The section. */
    public static final Key<List<Alteration>> KEY =
            Key.optional(
                    "alterations",
                    ListForm.of(
                            "alterations",
                            MapForm.of(
                                            "an alteration",
                                            List.of(
                                                    LENGTHEN, SHORTEN, WIDEN, NARROW, BY, FROM, TO,
                                                    PIECES, FOUND),
                                            AlterationSection::alteration)
                                    .with(
                                            Rule.one("lengthen", "shorten", "widen", "narrow"),
                                            Rule.when(
                                                    Rule.some("lengthen", "shorten"),
                                                    Rule.not(Rule.some("from", "to"))),
                                            Rule.when(
                                                    Rule.some("widen", "narrow"),
                                                    Rule.not(Rule.has("pieces"))),
                                            Rule.when(Rule.has("from"), Rule.has("to")),
                                            Rule.when(Rule.has("to"), Rule.has("from"))),
                            0,
                            MOST),
                    "Changes to the pattern, each written once; every piece concerned follows.",
                    "[{lengthen: sleeve, by: 2.5}]");

    private AlterationSection() {}

    private static Optional<Alteration> alteration(Fields fields) {
        List<Key<?>> verbs = new ArrayList<>();
        for (Key<?> verb : List.<Key<?>>of(LENGTHEN, SHORTEN, WIDEN, NARROW)) {
            if (fields.get(verb).isPresent()) {
                verbs.add(verb);
            }
        }
        if (verbs.size() != 1) {
            fields.tell(
                    fields.place(),
                    verbs.isEmpty() ? "an alteration of nothing" : "two alterations in one",
                    "one of `lengthen`, `shorten`, `widen`, `narrow`");
            return Optional.empty();
        }
        boolean ofLength = fields.get(LENGTHEN).or(() -> fields.get(SHORTEN)).isPresent();
        Key<?> other = ofLength ? FROM : PIECES;
        Key<?> second = ofLength ? TO : PIECES;
        for (Key<?> wrong : List.<Key<?>>of(other, second)) {
            if (fields.get(wrong).isPresent()) {
                fields.tell(
                        wrong,
                        "`" + wrong.name() + "` for `" + verbs.get(0).name() + "`",
                        ofLength ? "`by`, and `pieces` that differ" : "`by`, `from` and `to`");
                return Optional.empty();
            }
        }
        if (fields.get(FROM).isPresent() != fields.get(TO).isPresent()) {
            fields.tell(
                    fields.get(FROM).isPresent() ? FROM : TO,
                    "a taper with one end",
                    "`from` and `to`, or neither for the whole edge");
            return Optional.empty();
        }
        return Optional.of(ofLength ? lengthen(fields) : widen(fields));
    }

    private static Alteration lengthen(Fields fields) {
        boolean longer = fields.get(LENGTHEN).isPresent();
        Map<String, Length> pieces = fields.get(PIECES).orElse(Map.of());
        Map<String, Length> signed = new LinkedHashMap<>();
        pieces.forEach((name, by) -> signed.put(name, signed(by, longer)));
        return new Alteration.Lengthen(
                fields.get(LENGTHEN).or(() -> fields.get(SHORTEN)).orElseThrow(),
                signed(fields.require(BY), longer),
                signed,
                fields.get(FOUND),
                fields.place(longer ? LENGTHEN : SHORTEN));
    }

    private static Alteration widen(Fields fields) {
        boolean wider = fields.get(WIDEN).isPresent();
        return new Alteration.Widen(
                fields.get(WIDEN).or(() -> fields.get(NARROW)).orElseThrow(),
                signed(fields.require(BY), wider),
                fields.get(FROM),
                fields.get(TO),
                fields.get(FOUND),
                fields.place(wider ? WIDEN : NARROW));
    }

    private static Length signed(Length by, boolean more) {
        return more ? by : Length.ZERO.minus(by);
    }
}
