package secondbolt.textile;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.textile.extent.Extent;
import secondbolt.textile.extent.Sides;

/** The keys that say what a cloth's edges are and what is cut away of them. */
final class EdgingKeys {
    static final Key<Sides<Optional<String>>> EDGES =
            Key.optional(
                    "edges",
                    sides("edges", Forms.text(40), "selvage", Function.identity()),
                    "What each edge is: selvage, hem, heading tape, cut, fold, or words of your"
                            + " own.",
                    "{left: hem, right: selvage, top: heading tape, bottom: hem}");
    static final Key<Sides<Optional<Length>>> TRIM =
            Key.optional(
                    "trim",
                    Forms.either(
                            sides("trim", trimmed(), "3", Function.identity()),
                            Forms.none(alike(Optional.of(Length.ZERO)))),
                    "Cut away at each side before anything else, on the cloth as measured, or"
                            + " `none`; nothing where not told.",
                    "{left: 3, right: 1, top: 9, bottom: 12}");

    private EdgingKeys() {}

    private static Form<Length> trimmed() {
        return Forms.either(Forms.length(LengthRange.of("0 mm", "5 m")), Forms.none(Length.ZERO));
    }

    private static <T> Sides<T> alike(T all) {
        return new Sides<>(all, all, all, all);
    }

    private static <T, R> Form<Sides<R>> sides(
            String what, Form<T> form, String example, Function<Optional<T>, R> make) {
        Key<T> left = Key.optional("left", form, "At the left.", example);
        Key<T> right = Key.optional("right", form, "At the right.", example);
        Key<T> top = Key.optional("top", form, "At the top.", example);
        Key<T> bottom = Key.optional("bottom", form, "At the bottom.", example);
        return MapForm.of(
                what,
                List.of(left, right, top, bottom),
                fields ->
                        Optional.of(
                                new Sides<>(
                                        make.apply(fields.get(left)),
                                        make.apply(fields.get(right)),
                                        make.apply(fields.get(top)),
                                        make.apply(fields.get(bottom)))));
    }

    static Optional<Cloth.Edging> read(Fields fields, Answer<Extent> extent) {
        Sides<Optional<Length>> told = fields.get(TRIM).orElse(alike(Optional.empty()));
        Sides<Length> trim = told.map(length -> length.orElse(Length.ZERO));
        Optional<Extent> known = extent.toOptional();
        if (known.isPresent() && known.get().trimmed(trim).isEmpty()) {
            Tape tape = fields.tape();
            var size = known.get().size();
            fields.tell(
                    TRIM,
                    "a trim of "
                            + tape.print(trim.left().plus(trim.right()))
                            + " across and "
                            + tape.print(trim.top().plus(trim.bottom()))
                            + " along, which leaves no cloth",
                    "less than its "
                            + tape.print(size.across())
                            + " across and "
                            + tape.print(size.along())
                            + " along");
            return Optional.empty();
        }
        return Optional.of(
                new Cloth.Edging(
                        fields.get(EDGES).orElse(alike(Optional.empty())),
                        trim,
                        told.map(Optional::isPresent)));
    }
}
