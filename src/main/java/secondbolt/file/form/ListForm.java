package secondbolt.file.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Reading;
import secondbolt.file.Schemas;
import secondbolt.file.source.Node;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Tape;

/**
 * A list of values of one form.
 *
 * @param what the list is of, in the plural
 * @param form how each is written
 * @param least how many there must be
 * @param most how many there may be
 * @param <T> what each is read as
 */
public record ListForm<T>(String what, Form<T> form, int least, int most) implements Form<List<T>> {
    /** A list of so many at most. */
    public static <T> Form<List<T>> of(String what, Form<T> form, int least, int most) {
        return new ListForm<>(what, form, least, most);
    }

    /** A pair, written {@code [across, along]}. */
    public static <T> Form<AcrossAlong<T>> acrossAlong(Form<T> form) {
        return Forms.map(
                new ListForm<>("[across, along]", form, 2, 2),
                pair -> new AcrossAlong<>(pair.get(0), pair.get(1)));
    }

    @Override
    public Optional<List<T>> read(Node node, Reading reading) {
        Optional<Node.Listing> listing = node.asListing();
        if (listing.isEmpty()) {
            reading.tellKind(node, this);
            return Optional.empty();
        }
        int count = listing.get().items().size();
        if (listing.get().splitByComma() || count < least || count > most) {
            reading.tell(
                    node.place(), node.words(), words(reading.tape()) + hint(listing.get(), count));
            return Optional.empty();
        }
        List<T> items = new ArrayList<>();
        for (Node item : listing.get().items()) {
            reading.item(form, item).ifPresent(items::add);
        }
        return items.size() == count ? Optional.of(List.copyOf(items)) : Optional.empty();
    }

    private String hint(Node.Listing listing, int count) {
        if (listing.splitByComma() || (isPair() && count > most)) {
            return " (inside brackets a comma parts values: write decimals with a point, 49.5)";
        }
        return count > most ? ", at most " + most : count < least ? ", at least " + least : "";
    }

    private boolean isPair() {
        return least == 2 && most == 2;
    }

    @Override
    public boolean suits(Node node) {
        return node.asListing().isPresent();
    }

    @Override
    public boolean mayBeNone() {
        return least == 0;
    }

    @Override
    public String words() {
        return words(form.words());
    }

    @Override
    public String words(Tape tape) {
        return words(form.words(tape));
    }

    private String words(String formWords) {
        String each = formWords.replace("; or ", " or ");
        return (isPair() ? "two values, " : "a list of ") + what + ", each " + each;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = Schemas.ofType("array");
        schema.put("items", form.schema());
        schema.put("minItems", least);
        schema.put("maxItems", most);
        return schema;
    }

    @Override
    public List<Key<?>> keys() {
        return form.keys();
    }
}
