package secondbolt.textile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.Answer;
import secondbolt.textile.extent.Alternatives;
import secondbolt.textile.extent.Extent;
import secondbolt.textile.extent.ExtentKeys;
import secondbolt.textile.extent.InchLike;
import secondbolt.textile.state.State;
import secondbolt.textile.state.StateKeys;

/** The {@code cloth} section of the project file: its keys, and how they are read. */
public final class ClothSection {
    private static final Key<String> LIKE =
            Key.optional(
                    NamedForm.LIKE,
                    Forms.text(60),
                    "The name of a cloth before it: the same but for what is written here. Its"
                            + " flaws, how it was looked over and how far it is from square are never"
                            + " taken over.",
                    "left curtain");

    /** One of two, unless one of them is unknown. */
    private static Rule one(String first, String second) {
        return Rule.any(
                Rule.not(Rule.has(first, second)),
                Rule.is(first, "unknown"),
                Rule.is(second, "unknown"));
    }

    private static final Form<Cloth> FORM =
            MapForm.of("a cloth", keys(), ClothSection::cloth)
                    .with(
                            Rule.some("size", "outline", NamedForm.LIKE),
                            one("size", "outline"),
                            one("weight", "mass"));

    private static List<Key<?>> keys() {
        return Stream.concat(
                        Stream.of(
                                LIKE,
                                TextileKeys.ROLE,
                                TextileKeys.FIBRE,
                                TextileKeys.KNOWN_BY,
                                TextileKeys.WEIGHT,
                                TextileKeys.MASS,
                                ExtentKeys.SIZE,
                                ExtentKeys.OUTLINE,
                                ExtentKeys.MEASURED,
                                EdgingKeys.EDGES,
                                EdgingKeys.TRIM,
                                PrewashKeys.PREWASH,
                                ConditionKeys.SURVEYED,
                                TextileKeys.NAP,
                                TextileKeys.REPEAT,
                                TextileKeys.STRETCH,
                                ConditionKeys.FLAWS,
                                ConditionKeys.FEATURES,
                                ConditionKeys.CLEAR),
                        StateKeys.KEYS.stream())
                .toList();
    }

    /** The section: cloths under names of the maker's own. */
    public static final Key<Map<String, Cloth>> KEY =
            Key.optional(
                    "cloth",
                    NamedForm.of(
                            "cloth",
                            FORM,
                            Set.of(
                                    ConditionKeys.FLAWS,
                                    ConditionKeys.SURVEYED,
                                    ExtentKeys.MEASURED,
                                    StateKeys.RID_OF)),
                    "The textiles to be used, each under a name of your own.",
                    "{left curtain: {size: [132, 214]}}");

    private ClothSection() {}

    private static Optional<Cloth> cloth(Fields fields) {
        Optional<Textile> textile = TextileKeys.read(fields);
        Optional<Answer<Extent>> extent = ExtentKeys.read(fields);
        if (textile.isEmpty() || extent.isEmpty() || massOfAnother(fields, textile.get())) {
            return Optional.empty();
        }
        boolean squareFits = PrewashKeys.liesOn(fields, extent.get());
        Optional<Cloth.Edging> edging = EdgingKeys.read(fields, extent.get());
        Optional<Cloth.Condition> condition = ConditionKeys.read(fields, extent.get());
        Optional<State> state = StateKeys.read(fields);
        if (!squareFits || edging.isEmpty() || condition.isEmpty() || state.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Cloth(
                        textile.get(),
                        extent.get(),
                        edging.get(),
                        fields.get(PrewashKeys.PREWASH),
                        condition.get(),
                        state.get(),
                        InchLike.of(fields)));
    }

    /** A cloth like another, but of another size, has not the other's mass. */
    private static boolean massOfAnother(Fields fields, Textile textile) {
        boolean own =
                Alternatives.isOwn(TextileKeys.MASS, fields)
                        || textile.mass().flatMap(Answer::toOptional).isEmpty();
        boolean ownSize =
                Alternatives.isOwn(ExtentKeys.SIZE, fields)
                        || Alternatives.isOwn(ExtentKeys.OUTLINE, fields);
        if (own || !ownSize) {
            return false;
        }
        fields.tell(
                Alternatives.isOwn(ExtentKeys.SIZE, fields) ? ExtentKeys.SIZE : ExtentKeys.OUTLINE,
                "a size of its own with the `mass` of the cloth it is like",
                "its own `mass`, or its `weight`");
        return true;
    }
}
