package secondbolt.supply.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.task.Amount;

/**
 * Something a design needs beside cloth, as its envelope or the maker says it.
 *
 * @param item what it is
 * @param amount how much, if told
 */
public record Notion(String item, Optional<Amount> amount) {
    private static final int MOST = 60;

    private static final Key<String> ITEM =
            Key.required(
                    "item",
                    Forms.nameOf(Supply.LONGEST_ITEM),
                    "What it is, by the name under which it is priced in `supplies`.",
                    "shirt buttons");

    /** The key of this name, of a design. */
    public static final Key<List<Notion>> KEY =
            Key.optional(
                    "notions",
                    ListForm.of("things", form(), 0, MOST),
                    "What it needs beside cloth, as its envelope says. What the notebook works out"
                            + " by itself, such as buttons, is held against it and not added.",
                    "[{item: shirt buttons, count: 7}]");

    private static Form<Notion> form() {
        return MapForm.of(
                        "a notion",
                        SupplySection.keys(List.of(ITEM), AmountKeys.ALL, List.of()),
                        fields ->
                                Optional.of(fields)
                                        .filter(AmountKeys::isOne)
                                        .map(
                                                f ->
                                                        new Notion(
                                                                f.require(ITEM),
                                                                AmountKeys.amount(f))))
                .with(AmountKeys.rules());
    }
}
