package secondbolt.supply.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Tape;

/** Finds a thing written twice, prices in no money, and packs and stores of another measure. */
public final class SupplyCheck {
    private SupplyCheck() {}

    /** All mistakes that can be told from the section alone. */
    public static List<Trouble> of(
            List<Supply> supplies, Optional<Answer<Currency>> currency, Tape tape) {
        List<Trouble> troubles = new ArrayList<>();
        Set<ItemName> before = new HashSet<>();
        for (Supply supply : supplies) {
            if (!before.add(supply.name())) {
                troubles.add(
                        new Trouble(
                                supply.item().place(),
                                "`" + supply.item().value() + "`, which is told of above",
                                "each thing once, with all that is told of it"));
            }
            troubles.addAll(twoMeasures(supply, tape));
        }
        supplies.stream()
                .flatMap(supply -> supply.price().stream())
                .findFirst()
                .filter(price -> currency.isEmpty())
                .map(
                        price ->
                                new Trouble(
                                        price.place(),
                                        "a price without `currency`",
                                        SupplySection.CURRENCY.line(tape)
                                                + ", or the money you pay in, as a line of its own"
                                                + " beside `supplies`"))
                .ifPresent(troubles::add);
        return List.copyOf(troubles);
    }

    /** What of a thing's pack and store is not measured as the thing is. */
    private static List<Trouble> twoMeasures(Supply supply, Tape tape) {
        List<Quantity.Kind> kinds = supply.kinds();
        return List.of(supply.have(), supply.pack()).stream()
                .flatMap(Optional::stream)
                .filter(quantity -> quantity.value().kind() != kinds.get(0))
                .map(
                        quantity ->
                                new Trouble(
                                        quantity.place(),
                                        "`"
                                                + supply.item().value()
                                                + "` "
                                                + kinds.get(0).words()
                                                + " and "
                                                + quantity.value().kind().words(),
                                        "one of both, such as `"
                                                + kinds.get(0).example(tape)
                                                + "` here"))
                .toList();
    }
}
