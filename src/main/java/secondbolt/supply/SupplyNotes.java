package secondbolt.supply;

import java.util.ArrayList;
import java.util.List;
import secondbolt.measure.Tape;
import secondbolt.supply.plan.Currency;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;

/** What is to be read of the supplies. */
final class SupplyNotes {
    private SupplyNotes() {}

    static Notes of(SupplyResult result, Tape tape) {
        List<Finding> findings = new ArrayList<>(AmountFindings.of(result, tape));
        findings.addAll(NameFindings.of(result, tape));
        return new Notes(findings, List.of(), open(result));
    }

    private static List<Open> open(SupplyResult result) {
        List<Open> open = new ArrayList<>();
        if (result.cost().currency().equals(Currency.UNTOLD) && !result.cost().lines().isEmpty()) {
            open.add(
                    new Open(
                            "the money that prices are in",
                            "what the sum of the cost is a sum of",
                            "Look at a bill of the shop, and write it, as in `currency: EUR`."));
        }
        if (!result.untimed().isEmpty()) {
            open.add(
                    new Open(
                            "hours of " + String.join(", ", result.untimed()),
                            "the sum of the hours, which is without them",
                            "Look at the clock when you begin and when you stop."));
        }
        return open;
    }
}
