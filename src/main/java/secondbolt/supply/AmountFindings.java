package secondbolt.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.measure.Tape;
import secondbolt.supply.list.Purchase;
import secondbolt.supply.list.Rounding;
import secondbolt.supply.list.Wanted;
import secondbolt.supply.plan.Quantity;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/**
 * Amounts that the maker or the design tells otherwise than they are worked out, and prices of
 * nobody knows how much.
 *
 * @param purchase the thing
 * @param design the name of the design that is made
 * @param tape to print with
 */
record AmountFindings(Purchase purchase, String design, Tape tape) {
    static List<Finding> of(SupplyResult result, Tape tape) {
        List<Finding> findings = new ArrayList<>();
        for (Purchase purchase : result.shopping().purchases()) {
            AmountFindings of = new AmountFindings(purchase, result.asked().design(), tape);
            of.amounts().forEach(findings::add);
            if (result.cost().priceOfWhat().contains(purchase.item())) {
                findings.add(of.priceOfWhat());
            }
        }
        return findings;
    }

    private Stream<Finding> amounts() {
        Wanted wanted = purchase.wanted();
        boolean isWorkedOut = wanted.workedOut().isPositive();
        Quantity against = isWorkedOut ? wanted.workedOut() : wanted.byDesign();
        Optional<Finding> byDesign =
                isWorkedOut
                        ? differs(
                                wanted.byDesign(),
                                against,
                                "`notions` of " + design,
                                new Subject.Design(design))
                        : Optional.empty();
        Optional<Finding> own =
                differs(wanted.own(), against, "`supplies`", new Subject.Supply(purchase.item()));
        return Stream.concat(byDesign.stream(), own.stream());
    }

    /** Nothing if nothing is told, if nothing is there to hold it against, or if both agree. */
    private Optional<Finding> differs(
            Quantity told, Quantity against, String where, Subject about) {
        if (!told.isPositive() || !against.isPositive()) {
            return Optional.empty();
        }
        String amounts =
                "`"
                        + purchase.item()
                        + "` under "
                        + where
                        + ": "
                        + SupplyWords.exact(told, tape)
                        + " told, "
                        + SupplyWords.exact(against, tape)
                        + " needed"
                        + (purchase.why().isEmpty() ? "" : " (" + SupplyWords.why(purchase) + ")")
                        + ".";
        String line = "`" + new SupplyWords(tape).line(against) + "`";
        if (against.isMoreThan(told)) {
            return Optional.of(
                    new Finding(
                            "supply-too-few",
                            about,
                            Finding.Level.WARNING,
                            amounts + " What is needed stands on the list.",
                            "Write "
                                    + line
                                    + ", or leave the amount out: it is worked out anew whenever"
                                    + " something changes."));
        }
        return told.isMoreThan(Rounding.up(against, tape))
                ? Optional.of(
                        new Finding(
                                "supply-more-than-needed",
                                about,
                                Finding.Level.NOTE,
                                amounts + " What is told stands on the list.",
                                "Leave it if some are to spare; if not, write " + line + "."))
                : Optional.empty();
    }

    private Finding priceOfWhat() {
        Quantity.Kind kind = purchase.toBuy().kind();
        return new Finding(
                "price-of-what",
                new Subject.Supply(purchase.item()),
                Finding.Level.CAUTION,
                "`"
                        + purchase.item()
                        + "` under `supplies` has a price, but it is "
                        + kind.words()
                        + " and nothing says how much of it that buys. It is left out of the sum.",
                "Write what the pack with that price holds, as in `pack: "
                        + kind.example(tape)
                        + "`. Whole packs are then bought.");
    }
}
