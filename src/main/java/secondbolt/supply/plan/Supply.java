package secondbolt.supply.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.value.Placed;
import secondbolt.task.Amount;

/**
 * A thing to buy or had already, as the maker wrote it.
 *
 * @param item what it is: the name of something that is needed, or a thing of her own
 * @param amount how much of it she wants, if told
 * @param purpose what for, if told
 * @param price of a pack; of one, of a metre or of a yard if no pack is told
 * @param pack what one pack holds, if it is sold in packs
 * @param have what is in the house
 * @param serves how many projects share it, 1 if it is for this one alone
 */
public record Supply(
        Placed<String> item,
        Optional<Amount> amount,
        Optional<String> purpose,
        Optional<Placed<BigDecimal>> price,
        Optional<Placed<Quantity>> pack,
        Optional<Placed<Quantity>> have,
        int serves) {
    static final int LONGEST_ITEM = 60;

    /** Checks that somebody uses it. */
    public Supply {
        if (serves < 1) {
            throw new IllegalArgumentException("serves must be 1 or more: " + serves);
        }
    }

    /** Its name, by which two are the same thing. */
    public ItemName name() {
        return ItemName.of(item.value());
    }

    /** What its amounts are measured by. */
    public List<Quantity.Kind> kinds() {
        return Stream.concat(
                        amount.map(Quantity::of).stream(),
                        Stream.concat(pack.stream(), have.stream()).map(Placed::value))
                .map(Quantity::kind)
                .distinct()
                .toList();
    }
}
