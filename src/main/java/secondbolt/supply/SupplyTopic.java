package secondbolt.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Key;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Trouble;
import secondbolt.lay.LayTopic;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.plan.Design;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.LaySection;
import secondbolt.supply.cost.Cost;
import secondbolt.supply.list.Shopping;
import secondbolt.supply.plan.Currency;
import secondbolt.supply.plan.Supply;
import secondbolt.supply.plan.SupplyCheck;
import secondbolt.supply.plan.SupplySection;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.worksheet.Gives;

/** What is needed, what of it is to be bought, and what the garment costs. */
public final class SupplyTopic implements Topic<SupplyResult> {
    /** Its name; it comes to the shopping list with its cost. */
    public static final TopicName<SupplyResult> NAME = new TopicName<>("supply");

    @Override
    public TopicName<SupplyResult> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return SupplySection.KEYS;
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<SupplyResult> work(Bench bench) {
        List<Supply> supplies = bench.written(SupplySection.SUPPLIES).orElse(List.of());
        Optional<Answer<Currency>> currency = bench.written(SupplySection.CURRENCY);
        Shopping.Asked asked = asked(supplies, bench);
        List<Trouble> troubles = new ArrayList<>(SupplyCheck.of(supplies, currency, bench.tape()));
        troubles.addAll(Shopping.troubles(asked, bench.tape()));
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        Shopping shopping = Shopping.of(asked, bench.tape());
        Currency money = currency.flatMap(Answer::toOptional).orElse(Currency.UNTOLD);
        SupplyResult result =
                new SupplyResult(
                        asked,
                        shopping,
                        Cost.of(shopping.purchases(), money, bench.tape()),
                        bench.written(SupplySection.HOURS).orElse(Map.of()));
        Optional<LayResult> lay =
                bench.came(LayTopic.NAME).filter(found -> !found.made().stocks().isEmpty());
        return result.isEmpty() && lay.isEmpty()
                ? Outcome.nothing()
                : Outcome.of(result, new SupplyWorksheet(result, lay, bench.tape()).worksheet());
    }

    private static Shopping.Asked asked(List<Supply> supplies, Bench bench) {
        LayPlan plan = LaySection.plan(bench::written);
        Gives given = bench.given();
        String design = plan.made().orElse("");
        return new Shopping.Asked(
                given.needs(),
                given.steps(),
                design,
                Optional.ofNullable(plan.designs().get(design))
                        .map(Design::notions)
                        .orElse(List.of()),
                supplies);
    }
}
