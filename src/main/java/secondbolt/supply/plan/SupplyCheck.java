package secondbolt.supply.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Placed;
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
            twoMeasures(supply, tape).ifPresent(troubles::add);
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

    /** A thing whose amount, pack and store are not measured alike. */
    private static Optional<Trouble> twoMeasures(Supply supply, Tape tape) {
        List<Quantity.Kind> kinds = supply.kinds();
        Optional<Placed<Quantity>> other =
                List.of(supply.have(), supply.pack()).stream()
                        .flatMap(Optional::stream)
                        .filter(quantity -> quantity.value().kind() != kinds.get(0))
                        .findFirst();
        return other.map(
                quantity ->
                        new Trouble(
                                quantity.place(),
                                "`"
                                        + supply.item().value()
                                        + "` "
                                        + kinds.get(0).words()
                                        + " and "
                                        + quantity.value().kind().words(),
                                "one of both, such as `" + kinds.get(0).example(tape) + "` here"));
    }
}
