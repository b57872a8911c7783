package secondbolt.supply.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Placed;

/** The sections {@code supplies}, {@code currency} and {@code hours}. */
public final class SupplySection {
    private static final int MOST = 200;
    private static final int MOST_PROJECTS = 1000;
    private static final int LONGEST_WORD = 12;

    private static final Key<Placed<String>> ITEM =
            Key.required(
                    "item",
                    Forms.placed(Forms.nameOf(Supply.LONGEST_ITEM)),
                    "What it is. Under the name of something the notebook needs it tells of that"
                            + " thing; under another it is a thing of your own.",
                    "shirt buttons");
    private static final Key<String> FOR =
            Key.optional(
                    "for",
                    Forms.text(120),
                    "What a thing of your own is for; it stands on the shopping list.",
                    "the cuffs");
    private static final Key<Placed<BigDecimal>> PRICE =
            Key.optional(
                            "price",
                            Forms.placed(Forms.number("0", "100000")),
                            "Of a pack, if `pack` is told; else of one, or of a metre (of a yard"
                                    + " where the units are inches). Needs `currency`.",
                            "0.40")
                    .kept()
                    .asking("Look at the shop's ticket or at the last bill.");
    private static final Key<Placed<Quantity>> PACK =
            Key.optional(
                            "pack",
                            Forms.placed(AmountKeys.number(1)),
                            "What one pack, reel or bag holds: a number, or a measure such as 100 m"
                                    + " or 500 g. Whole packs are bought.",
                            "6")
                    .asking("Look at the ticket of the pack.");
    private static final Key<Placed<Quantity>> HAVE =
            Key.optional(
                            "have",
                            Forms.placed(AmountKeys.number(0)),
                            "How much of it is in the house already; none if not told.",
                            "5")
                    .asking("Look in the button box and the work basket, and count or measure.");
    private static final Key<Integer> SERVES =
            Key.optional(
                    "serves",
                    Forms.whole(1, MOST_PROJECTS),
                    "How many projects share it, this one counted: so much of its price is this"
                            + " project's. 1 if not told.",
                    "3");

    private static final Form<Supply> SUPPLY =
            MapForm.of(
                            "a supply",
                            keys(
                                    List.of(ITEM),
                                    AmountKeys.ALL,
                                    List.of(FOR, PRICE, PACK, HAVE, SERVES)),
                            SupplySection::supply)
                    .with(AmountKeys.rules());

    /** The section of this name. */
    public static final Key<List<Supply>> SUPPLIES =
            Key.optional(
                    "supplies",
                    ListForm.of("supplies", SUPPLY, 0, MOST),
                    "Prices of what is needed, what of it is in the house, and things of your own"
                            + " to buy.",
                    "[{item: shirt buttons, have: 5, price: 0.40}]");

    /** The section of this name; {@code unknown} leaves open in which money. */
    public static final Key<Answer<Currency>> CURRENCY =
            Key.optional(
                    "currency",
                    Forms.orUnknown(
                            Forms.map(
                                    Forms.checked(
                                            Forms.text(LONGEST_WORD),
                                            SupplySection::isMoney,
                                            "the code or the sign of the money, without a figure,"
                                                    + " of "
                                                    + LONGEST_WORD
                                                    + " letters at most, such as `EUR`"),
                                    Currency::new)),
                    "The money all prices are in: a code such as EUR, or a word or sign of your"
                            + " own. It is never turned into another.",
                    "EUR");

    /** The section of this name. */
    public static final Key<Map<String, Answer<WorkTime>>> HOURS =
            Key.optional(
                            "hours",
                            NamedForm.atMost(60, "work", Forms.orUnknown(WorkTime.FORM)),
                            "The hours you spent, under names of your own such as preparing,"
                                    + " cutting, sewing: as 1.5 or as 1 h 30 min. They are added"
                                    + " up and never guessed.",
                            "{survey: 0.5, cutting: 1.5}")
                    .kept();

    /** All three, in the order of the reference. */
    public static final List<Key<?>> KEYS = List.of(SUPPLIES, CURRENCY, HOURS);

    private SupplySection() {}

    static List<Key<?>> keys(List<Key<?>> first, List<Key<?>> then, List<Key<?>> last) {
        return Stream.of(first, then, last).<Key<?>>flatMap(List::stream).toList();
    }

    private static boolean isMoney(String word) {
        return !List.of("none", "no", "yes").contains(word)
                && !word.isBlank()
                && word.codePoints().noneMatch(Character::isDigit);
    }

    /** While she does not know what a pack holds, nobody knows what the price is of. */
    private static Optional<Placed<BigDecimal>> price(Fields fields) {
        return fields.isOpen(PACK) ? Optional.empty() : fields.get(PRICE);
    }

    private static Optional<Supply> supply(Fields fields) {
        if (!AmountKeys.isOne(fields)) {
            return Optional.empty();
        }
        return Optional.of(
                new Supply(
                        fields.require(ITEM),
                        AmountKeys.amount(fields),
                        fields.get(FOR),
                        price(fields),
                        fields.get(PACK),
                        fields.get(HAVE),
                        fields.get(SERVES).orElse(1)));
    }
}
