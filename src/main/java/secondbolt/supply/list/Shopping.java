package secondbolt.supply.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Tape;
import secondbolt.supply.plan.ItemName;
import secondbolt.supply.plan.Notion;
import secondbolt.supply.plan.Quantity;
import secondbolt.supply.plan.Supply;
import secondbolt.task.Need;
import secondbolt.task.WorkStep;

/**
 * The shopping list.
 *
 * @param purchases each thing once: what topics need first, then the design's notions, then her own
 * @param untold entries of hers and of the design that nothing needs and that tell no amount
 */
public record Shopping(List<Purchase> purchases, List<String> untold) {
    /** Copies the lists. */
    public Shopping {
        purchases = List.copyOf(purchases);
        untold = List.copyOf(untold);
    }

    /**
     * All that is asked for.
     *
     * @param needs of the topics, in the order of working
     * @param steps the names of the steps that the topics contribute: a thing waits for these only
     * @param design the name of the design that is made
     * @param notions of that design
     * @param supplies as the maker wrote them, each once
     */
    public record Asked(
            List<Need> needs,
            List<WorkStep> steps,
            String design,
            List<Notion> notions,
            List<Supply> supplies) {
        /** Copies the lists. */
        public Asked {
            needs = List.copyOf(needs);
            steps = List.copyOf(steps);
            notions = List.copyOf(notions);
            supplies = List.copyOf(supplies);
        }

        /** What is gathered of it. */
        List<Gathered> gathered() {
            Set<String> names =
                    steps.stream()
                            .filter(step -> !step.isDone())
                            .map(WorkStep::name)
                            .collect(Collectors.toUnmodifiableSet());
            Gathering gathering = new Gathering(names);
            needs.forEach(gathering::add);
            notions.forEach(notion -> gathering.add(notion, design));
            supplies.forEach(gathering::add);
            return gathering.all();
        }
    }

    /** The list. */
    public static Shopping of(Asked asked, Tape tape) {
        List<Gathered> all = asked.gathered();
        List<Purchase> purchases = new ArrayList<>();
        for (Gathered gathered : all) {
            Optional<Supply> supply =
                    asked.supplies().stream()
                            .filter(s -> ofSupply(s, all).filter(gathered::equals).isPresent())
                            .findFirst();
            purchases.add(Purchase.of(gathered, supply, tape));
        }
        List<String> untold = new ArrayList<>();
        asked.supplies().stream()
                .filter(supply -> ofSupply(supply, all).isEmpty())
                .forEach(supply -> untold.add(supply.item().value()));
        asked.notions().stream()
                .filter(n -> all.stream().noneMatch(g -> g.isOf(ItemName.of(n.item()))))
                .filter(n -> untold.stream().noneMatch(n.item()::equals))
                .forEach(notion -> untold.add(notion.item()));
        return new Shopping(purchases, untold);
    }

    /**
     * The entries that speak of a needed thing in another measure than it is worked out in; none of
     * them could be bought by.
     */
    public static List<Trouble> troubles(Asked asked, Tape tape) {
        Asked withoutOwn =
                new Asked(asked.needs(), asked.steps(), asked.design(), asked.notions(), List.of());
        List<Gathered> needed = withoutOwn.gathered();
        return asked.supplies().stream()
                .flatMap(supply -> trouble(supply, needed, tape).stream())
                .toList();
    }

    private static Optional<Trouble> trouble(Supply supply, List<Gathered> needed, Tape tape) {
        List<Quantity.Kind> kinds =
                needed.stream().filter(g -> g.isOf(supply.name())).map(Gathered::kind).toList();
        boolean isOther = supply.kinds().stream().anyMatch(kind -> !kinds.contains(kind));
        return kinds.isEmpty() || !isOther
                ? Optional.empty()
                : Optional.of(
                        new Trouble(
                                supply.item().place(),
                                "`"
                                        + supply.item().value()
                                        + "` "
                                        + supply.kinds().get(0).words()
                                        + ", which the notebook works out "
                                        + kinds.get(0).words(),
                                "the same measure, such as `"
                                        + kinds.get(0).key()
                                        + ": "
                                        + kinds.get(0).example(tape)
                                        + "`, or no amount: it is worked out"));
    }

    /** What an entry tells of: the thing of its measure, or the first of its name. */
    private static Optional<Gathered> ofSupply(Supply supply, List<Gathered> all) {
        List<Gathered> named = all.stream().filter(g -> g.isOf(supply.name())).toList();
        return named.stream()
                .filter(g -> supply.kinds().contains(g.kind()))
                .findFirst()
                .or(() -> named.stream().findFirst());
    }
}
