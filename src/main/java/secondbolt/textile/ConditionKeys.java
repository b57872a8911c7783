package secondbolt.textile;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Region;
import secondbolt.textile.extent.Extent;
import secondbolt.textile.extent.Flaw;
import secondbolt.textile.extent.FlawKeys;
import secondbolt.textile.extent.Patch;
import secondbolt.textile.extent.Sides;

/** The keys that say how sound a cloth is. */
final class ConditionKeys {
    private static final int MOST_FLAWS = 100;

    private static final Key<LocalDate> ON =
            Key.optional("on", Forms.date(), "The day.", "2026-05-01");
    private static final Key<Survey.By> BY =
            Key.required(
                    "by",
                    Forms.choice(Survey.By.values(), Survey.By::word),
                    "How it was looked over.",
                    "held to the light");
    private static final Key<Survey.When> WHEN =
            Key.optional(
                    "when",
                    Forms.choice(Survey.When.values(), Survey.When::word),
                    "Before or after the last wash or other wet step; taken as before if not told.",
                    "after the wash");
    static final Key<Survey> SURVEYED =
            Key.optional(
                    "surveyed",
                    MapForm.of(
                            "a survey",
                            List.of(ON, BY, WHEN),
                            fields ->
                                    Optional.of(
                                            new Survey(
                                                    fields.get(ON),
                                                    fields.require(BY),
                                                    fields.get(WHEN)))),
                    "When and how it was looked over for flaws.",
                    "{on: 2026-05-01, by: held to the light, when: after the wash}");
    static final Key<List<Placed<Flaw>>> FLAWS =
            Key.optional(
                            "flaws",
                            orNone(ListForm.of("flaws", FlawKeys.FLAW, 0, MOST_FLAWS)),
                            "All that is not sound; `none` if nothing was found, `unknown` if nobody"
                                    + " has looked. Never taken over from a cloth it is like.",
                            "[{what: pulled thread, at: [97, 160], round: 3}]")
                    .asking(
                            "Hold it to the light after its last wash, edge by edge, and note each"
                                    + " hole, stain and thin place; write `flaws: none` if there is"
                                    + " nothing.");
    static final Key<List<Placed<Flaw>>> FEATURES =
            Key.optional(
                    "features",
                    orNone(ListForm.of("features", FlawKeys.FEATURE, 0, MOST_FLAWS)),
                    "What the textile already has, such as a border.",
                    "[{what: hemstitched border, at: [66, 198], size: [132, 8], use: avoid}]");
    static final Key<Length> CLEAR =
            Key.optional(
                    "clear",
                    Forms.either(
                            Forms.length(LengthRange.of("0 mm", "50 cm")), Forms.none(Length.ZERO)),
                    "Kept clear round every flaw and feature, on the finished cloth; nothing if not"
                            + " told.",
                    "1");

    private ConditionKeys() {}

    private static Form<List<Placed<Flaw>>> orNone(Form<List<Placed<Flaw>>> form) {
        return Forms.either(form, Forms.none(List.<Placed<Flaw>>of()));
    }

    static Optional<Cloth.Condition> read(Fields fields, Answer<Extent> extent) {
        List<Placed<Flaw>> all = new ArrayList<>(fields.get(FLAWS).orElse(List.of()));
        all.addAll(fields.get(FEATURES).orElse(List.of()));
        boolean lieOnIt = true;
        if (extent.toOptional().isPresent()) {
            for (Placed<Flaw> flaw : all) {
                lieOnIt &= liesOn(fields, flaw, extent.toOptional().get());
            }
        }
        return lieOnIt
                ? Optional.of(
                        new Cloth.Condition(
                                fields.get(SURVEYED),
                                all.stream().map(Placed::value).toList(),
                                told(fields),
                                fields.get(CLEAR)))
                : Optional.empty();
    }

    private static Cloth.Flaws told(Fields fields) {
        return fields.isOpen(FLAWS)
                ? Cloth.Flaws.UNKNOWN
                : fields.get(FLAWS).isPresent() ? Cloth.Flaws.TOLD : Cloth.Flaws.NOT_TOLD;
    }

    private static boolean liesOn(Fields fields, Placed<Flaw> flaw, Extent extent) {
        String found = "`" + flaw.value().what() + "`, which ";
        Patch patch = flaw.value().patch();
        if (liesOutside(patch, extent)) {
            fields.tell(
                    flaw.place(),
                    found + "lies wholly outside the cloth",
                    "a place on the cloth as measured: " + printed(extent, fields.tape()));
            return false;
        }
        Optional<String> past = past(patch.bounds(), extent.bounds(), fields.tape());
        past.ifPresent(
                reach ->
                        fields.tell(
                                flaw.place(),
                                found + "reaches " + reach,
                                "a place and size that end at the edge of the cloth as measured: "
                                        + printed(extent, fields.tape())));
        return past.isEmpty();
    }

    private static boolean liesOutside(Patch patch, Extent extent) {
        return Region.of(patch.outline()).intersection(Region.of(extent.outline())).isEmpty();
    }

    private static String printed(Extent extent, Tape tape) {
        return tape.print(extent.size().across())
                + " across, "
                + tape.print(extent.size().along())
                + " along";
    }

    /** The first edge that it runs past by more than a tape shows. */
    private static Optional<String> past(Sides<Length> flaw, Sides<Length> cloth, Tape tape) {
        List<String> names = List.of("left", "right", "top", "bottom");
        List<Length> over =
                List.of(
                        cloth.left().minus(flaw.left()),
                        flaw.right().minus(cloth.right()),
                        cloth.top().minus(flaw.top()),
                        flaw.bottom().minus(cloth.bottom()));
        for (int i = 0; i < over.size(); i++) {
            if (over.get(i).roundedTo(tape.mark()).isPositive()) {
                return Optional.of(tape.print(over.get(i)) + " past the " + names.get(i) + " edge");
            }
        }
        return Optional.empty();
    }
}
