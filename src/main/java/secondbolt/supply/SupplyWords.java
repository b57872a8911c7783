package secondbolt.supply;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.block.Both;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.supply.list.Purchase;
import secondbolt.supply.list.Rounding;
import secondbolt.supply.plan.Quantity;
import secondbolt.supply.plan.Supply;
import secondbolt.task.WorkStep;

/**
 * Words for amounts, the same on the page, on the list and in findings.
 *
 * @param tape to print with
 */
record SupplyWords(Tape tape) {
    private static final int TEASPOONS_IN_A_QUARTER_CUP = 12;
    private static final BigDecimal QUARTER = new BigDecimal("0.25");

    /** As it is, to the tape's marks. */
    static String exact(Quantity quantity, Tape on) {
        return switch (quantity.kind()) {
            case COUNT -> Integer.toString(quantity.count());
            case LENGTH -> length(quantity.length(), on);
            case MASS -> on.print(quantity.mass());
            case VOLUME -> volume(quantity, on);
        };
    }

    /** On a shop's step as shops say it, else to the tape's marks. */
    private static String length(Length length, Tape on) {
        boolean isOnAStep = length.equals(length.roundedUpTo(on.shopStep()));
        return isOnAStep && !length.isShorterThan(on.pricedLength())
                ? on.printShop(length)
                : on.print(length);
    }

    /** Less than a quarter of a cup is measured by the spoon. */
    private static String volume(Quantity quantity, Tape on) {
        return isSpooned(quantity, on)
                ? Plural.of(Rounding.teaspoons(quantity), "teaspoon (US)", "teaspoons (US)")
                : on.print(quantity.volume());
    }

    private static boolean isSpooned(Quantity quantity, Tape on) {
        return on == Tape.INCH
                && quantity.kind() == Quantity.Kind.VOLUME
                && Rounding.steps(quantity, on) == 1
                && Rounding.teaspoons(quantity) < TEASPOONS_IN_A_QUARTER_CUP;
    }

    /** What is needed, on both tapes. */
    Both needed(Purchase purchase) {
        return of(purchase, purchase.wanted().most(), true);
    }

    /** What is in the house, on both tapes; empty if nothing is told. */
    Both have(Purchase purchase) {
        return purchase.have().map(have -> of(purchase, have, false)).orElse(Both.words(""));
    }

    /** What is weighed or poured is rounded up where it is needed, on each tape by itself. */
    private Both of(Purchase purchase, Quantity quantity, boolean isNeeded) {
        return switch (quantity.kind()) {
            case COUNT -> Both.words(counted(quantity, purchase.each()));
            case LENGTH -> Both.of(tape, on -> exact(quantity, on));
            case MASS, VOLUME ->
                    Both.of(
                            tape,
                            on ->
                                    exact(
                                            isNeeded && !isSpooned(quantity, on)
                                                    ? Rounding.up(quantity, on)
                                                    : quantity,
                                            on));
        };
    }

    private static String counted(Quantity quantity, String each) {
        return quantity.count() + (each.isEmpty() ? "" : " × " + each);
    }

    /** What is bought, on both tapes. */
    Both toBuy(Purchase purchase) {
        if (purchase.isThere()) {
            return Both.words("nothing");
        }
        if (purchase.packs().isPresent()) {
            Quantity pack = purchase.supply().flatMap(Supply::pack).orElseThrow().value();
            String packs = Plural.of(purchase.packs().get(), "pack") + " of ";
            return pack.kind() == Quantity.Kind.COUNT
                    ? Both.words(packs + counted(pack, purchase.each()))
                    : Both.of(tape, on -> packs + exact(pack, on));
        }
        return switch (purchase.toBuy().kind()) {
            case COUNT -> Both.words(counted(purchase.toBuy(), purchase.each()));
            case LENGTH -> Both.of(tape, on -> on.printToBuy(purchase.toBuy().length()));
            case MASS, VOLUME -> of(purchase, purchase.toBuy(), true);
        };
    }

    /** Text on both tapes, the other in brackets. */
    static String together(Both both) {
        return both.other().isEmpty() ? both.own() : both.own() + " (" + both.other() + ")";
    }

    /** What for; what is said of several is said once. */
    static String why(Purchase purchase) {
        return purchase.why().stream()
                .flatMap(why -> Stream.of(why.split("; ", -1)))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** The steps it waits for. */
    static String after(Purchase purchase) {
        return purchase.after().stream()
                .map(WorkStep.Follows::step)
                .distinct()
                .collect(Collectors.joining(" and "));
    }

    /** Why it waits. */
    static List<String> reasons(Purchase purchase) {
        return purchase.after().stream().map(WorkStep.Follows::why).distinct().toList();
    }

    /** The line that tells an amount, rounded up so that nothing is lacking: {@code count: 8}. */
    String line(Quantity quantity) {
        Quantity up = Rounding.up(quantity, tape);
        boolean isCups = up.kind() == Quantity.Kind.VOLUME && tape == Tape.INCH;
        return up.kind().key() + ": " + (isCups ? cups(up) : exact(up, tape));
    }

    private String cups(Quantity volume) {
        return QUARTER.multiply(BigDecimal.valueOf(Rounding.steps(volume, tape)))
                        .stripTrailingZeros()
                        .toPlainString()
                + " cup";
    }
}
