package secondbolt.supply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.supply.list.Purchase;
import secondbolt.supply.list.Shopping;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/** The steps of buying: once at the beginning, and once after each step that things wait for. */
final class BuySteps {
    /** By this name other steps follow it. */
    static final String NAME = "buy";

    private BuySteps() {}

    static List<WorkStep> of(Shopping shopping) {
        List<Purchase> bought = shopping.purchases().stream().filter(p -> !p.isThere()).toList();
        List<WorkStep> steps = new ArrayList<>();
        if (bought.stream().anyMatch(Purchase::isNow)) {
            steps.add(
                    WorkStep.of(
                            NAME,
                            Stage.PLANNING,
                            "Buy what the shopping list names under Buy now."));
        }
        Map<String, WorkStep> later = new LinkedHashMap<>();
        bought.stream()
                .filter(p -> !p.isNow())
                .forEach(p -> later.merge(SupplyWords.after(p), step(p), BuySteps::both));
        steps.addAll(later.values());
        return List.copyOf(steps);
    }

    private static WorkStep step(Purchase purchase) {
        String after = SupplyWords.after(purchase);
        WorkStep step =
                WorkStep.of(
                        NAME + " after " + after,
                        Stage.PLANNING,
                        "Buy what the shopping list names under After " + after + ".");
        for (WorkStep.Follows follows : purchase.after()) {
            step = step.after(follows.step(), follows.why());
        }
        return step;
    }

    /** The same with the other's reasons. */
    private static WorkStep both(WorkStep one, WorkStep other) {
        WorkStep both = one;
        for (WorkStep.Follows follows : other.follows()) {
            if (!both.follows().contains(follows)) {
                both = both.after(follows.step(), follows.why());
            }
        }
        return both;
    }
}
