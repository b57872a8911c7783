package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.ClothResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** What a maker should know of her lay before she cuts. */
final class LayFindings {
    /** What a plan says of cloth with stripes or checks. */
    static final String NOT_MATCHED =
            "The cutting plan does not match stripes or checks: the repeat of this cloth is not"
                    + " heeded.";

    private final LayResult result;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    private LayFindings(LayResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
    }

    static List<Finding> of(LayResult result, Tape tape) {
        LayFindings all = new LayFindings(result, tape);
        all.result.made().stocks().forEach(all::stock);
        all.withoutCloth();
        all.result.others().forEach(all::other);
        all.printedNeed();
        return List.copyOf(all.findings);
    }

    private void stock(StockLay stock) {
        if (!stock.isFinished() && stock.fits()) {
            findings.add(
                    new Finding(
                            stock.role(),
                            Level.NOTE,
                            "The search for this lay was stopped; this is the best it had found.",
                            "Make the notebook again for a plan that uses less."));
        }
        stock.cloths().stream()
                .filter(LayFindings::repeats)
                .forEach(
                        cloth ->
                                findings.add(
                                        new Finding(
                                                cloth.name(),
                                                Level.WARNING,
                                                NOT_MATCHED,
                                                "Before you cut, move the pieces by part of a repeat"
                                                        + " until the seams that shall match do;"
                                                        + " leave room for it.")));
        if (stock.fits()) {
            return;
        }
        List<String> helps =
                result.remedies().stream()
                        .filter(r -> r.role().equals(stock.role()) && r.leftOver().isEmpty())
                        .map(LayResult.Remedy::words)
                        .toList();
        findings.add(
                new Finding(
                        stock.role(),
                        Level.STOP,
                        noRoom(stock),
                        !stock.isFinished()
                                ? "Make the notebook again and let it finish."
                                : helps.isEmpty()
                                        ? "What was tried quickly did not help. Cut it with a seam across,"
                                                + " of another cloth, or choose another design; or try"
                                                + " `effort: thorough`."
                                        : "It fits with "
                                                + String.join(", or with ", helps)
                                                + "."));
    }

    /** Whether a cloth has stripes or checks. */
    static boolean repeats(ClothResult cloth) {
        return cloth.cloth().textile().repeat().isAny();
    }

    /** What is left out, and whether it was looked for to the end. */
    static String noRoom(StockLay stock) {
        String pieces = String.join(", ", LayWords.counted(stock.leftOver()));
        return stock.isFinished()
                ? "There is no room found for " + pieces + tooLarge(stock) + "."
                : "The search was stopped before these had their place: " + pieces + ".";
    }

    private static String tooLarge(StockLay stock) {
        if (stock.tooLarge().isEmpty()) {
            return "";
        }
        String pieces = String.join(", ", LayWords.counted(stock.tooLarge()));
        return "; longer than every cloth: " + pieces;
    }

    /** Pieces of a role that no cloth has are not laid, which must not be missed. */
    private void withoutCloth() {
        List<String> roles = result.made().stocks().stream().map(StockLay::role).toList();
        result.made().bolts().stream()
                .map(BoltLength::role)
                .distinct()
                .filter(role -> !roles.contains(role))
                .forEach(
                        role ->
                                findings.add(
                                        new Finding(
                                                role,
                                                Level.NOTE,
                                                "No cloth of known size is there for the "
                                                        + role
                                                        + " pieces; they are not laid.",
                                                "What they take from the bolt is in the yardage"
                                                        + " summary; or write a cloth with `role: "
                                                        + role
                                                        + "`.")));
    }

    private void other(DesignLay design) {
        if (design.fits() && !result.made().fits()) {
            findings.add(
                    new Finding(
                            design.name(),
                            Level.NOTE,
                            "This design fits on the cloth.",
                            "If you would as soon make it, write `make: " + design.name() + "`."));
        }
    }

    /** An envelope that asks for less than the altered pieces need. */
    private void printedNeed() {
        DesignLay made = result.made();
        for (BoltLength bolt : made.bolts()) {
            Optional<Length> printed = made.design().map(d -> d.printedNeed().get(bolt.width()));
            boolean less =
                    bolt.role().equals("main")
                            && printed.isPresent()
                            && bolt.length().filter(l -> l.isLongerThan(printed.get())).isPresent();
            if (less) {
                findings.add(
                        new Finding(
                                made.name(),
                                Level.CAUTION,
                                "The envelope says "
                                        + tape.printShop(printed.get())
                                        + " of cloth "
                                        + tape.print(bolt.width())
                                        + " wide; the pieces as altered were laid in "
                                        + tape.printShop(bolt.toBuy().orElseThrow())
                                        + ".",
                                "Buy by the longer of the two."));
            }
        }
    }
}
