package secondbolt.supply.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import secondbolt.supply.plan.ItemName;
import secondbolt.supply.plan.Notion;
import secondbolt.supply.plan.Quantity;
import secondbolt.supply.plan.Supply;
import secondbolt.task.Amount;
import secondbolt.task.Need;

/**
 * Gathers what is wanted, so that each thing of one measure stands once, in the order it was asked
 * for. Whatever two topics call the same is the same thing.
 */
final class Gathering {
    private final Set<String> steps;
    private final List<Gathered> all = new ArrayList<>();

    /**
     * An empty one.
     *
     * @param steps the names of the steps that topics contribute; nothing waits for others
     */
    Gathering(Set<String> steps) {
        this.steps = Set.copyOf(steps);
    }

    void add(Need need) {
        Quantity quantity = Quantity.of(need.amount());
        if (!quantity.isPositive()) {
            return;
        }
        String each = each(need.amount());
        ItemName name = ItemName.of(need.item());
        change(
                g -> g.isOf(name) && g.kind() == quantity.kind() && g.each().equals(each),
                Gathered.begun(need.item(), quantity.kind(), each),
                g -> {
                    Gathered more = g.with(g.wanted().alsoWorkedOut(quantity)).because(need.why());
                    return need.buyAfter()
                            .filter(after -> steps.contains(after.step()))
                            .map(more::notBefore)
                            .orElse(more);
                });
    }

    /** What a design asks for; an amount that is not told is none. */
    void add(Notion notion, String design) {
        notion.amount()
                .map(Quantity::of)
                .ifPresent(
                        quantity ->
                                change(
                                        like(notion.item(), quantity.kind()),
                                        Gathered.begun(notion.item(), quantity.kind(), ""),
                                        g ->
                                                g.with(g.wanted().alsoByDesign(quantity))
                                                        .because("for " + design)));
    }

    void add(Supply supply) {
        String item = supply.item().value();
        supply.amount()
                .map(Quantity::of)
                .ifPresent(
                        quantity ->
                                change(
                                        like(item, quantity.kind()),
                                        Gathered.begun(item, quantity.kind(), ""),
                                        g ->
                                                g.with(g.wanted().withOwn(quantity))
                                                        .because(supply.purpose().orElse(""))));
    }

    List<Gathered> all() {
        return List.copyOf(all);
    }

    private static Predicate<Gathered> like(String item, Quantity.Kind kind) {
        ItemName name = ItemName.of(item);
        return g -> g.isOf(name) && g.kind() == kind;
    }

    /** The first that suits, changed; a new one if none does. */
    private void change(Predicate<Gathered> suits, Gathered begun, UnaryOperator<Gathered> change) {
        Optional<Gathered> there = all.stream().filter(suits).findFirst();
        if (there.isPresent()) {
            all.set(all.indexOf(there.get()), change.apply(there.get()));
        } else {
            all.add(change.apply(begun));
        }
    }

    private static String each(Amount amount) {
        return amount.accept(
                new Amount.Visitor<>() {
                    @Override
                    public String pieces(Amount.Pieces pieces) {
                        return pieces.each();
                    }

                    @Override
                    public String run(Amount.Run run) {
                        return "";
                    }

                    @Override
                    public String weighed(Amount.Weighed weighed) {
                        return "";
                    }

                    @Override
                    public String liquid(Amount.Liquid liquid) {
                        return "";
                    }
                });
    }
}
