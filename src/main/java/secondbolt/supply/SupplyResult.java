package secondbolt.supply;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.file.value.Answer;
import secondbolt.supply.cost.Cost;
import secondbolt.supply.list.Shopping;
import secondbolt.supply.plan.WorkTime;

/**
 * What is to be bought, what it costs, and the hours spent.
 *
 * @param asked what was asked for
 * @param shopping the list
 * @param cost of what is on it
 * @param hours by the maker's names for the work, in her order
 */
public record SupplyResult(
        Shopping.Asked asked, Shopping shopping, Cost cost, Map<String, Answer<WorkTime>> hours) {
    /** Copies the map. */
    public SupplyResult {
        hours = Collections.unmodifiableMap(new LinkedHashMap<>(hours));
    }

    /** Whether there is nothing to tell. */
    boolean isEmpty() {
        return shopping.purchases().isEmpty() && shopping.untold().isEmpty() && hours.isEmpty();
    }

    /** All hours that are told, added up. */
    WorkTime worked() {
        return hours.values().stream()
                .flatMap(answer -> answer.toOptional().stream())
                .reduce(WorkTime.NONE, WorkTime::plus);
    }

    /** The work of which the maker does not know how long it took. */
    List<String> untimed() {
        return hours.entrySet().stream()
                .filter(entry -> entry.getValue().toOptional().isEmpty())
                .map(Map.Entry::getKey)
                .toList();
    }
}
