package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import secondbolt.file.value.Quoted;
import secondbolt.garment.Role;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know of her lay before she cuts. */
final class LayFindings {
    private final LayResult result;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    private LayFindings(LayResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
    }

    static List<Finding> of(LayResult result, Tape tape) {
        LayFindings all = new LayFindings(result, tape);
        all.findings.addAll(result.log());
        if (!result.made().crossed().isEmpty()) {
            all.add(
                    "lay-piece-crosses-itself",
                    result.made().name(),
                    Level.STOP,
                    crossed(result.made()),
                    "Mend the piece first, as told with the pieces.");
        }
        for (StockLay stock : result.made().stocks()) {
            all.findings.addAll(StockFindings.of(result, stock, tape));
        }
        all.withoutCloth();
        all.result.others().forEach(all::other);
        all.together();
        all.printedNeed();
        return List.copyOf(all.findings);
    }

    private void add(String code, String design, Level level, String text, String remedy) {
        findings.add(new Finding(code, new Subject.Design(design), level, text, remedy));
    }

    /** What cannot be laid at all. */
    private static String crossed(DesignLay design) {
        return "Not laid, because the cutting line crosses itself: "
                + String.join(", ", design.crossed())
                + ".";
    }

    /** Pieces of a role that no cloth has are not laid, which must not be missed. */
    private void withoutCloth() {
        List<Role> roles = result.made().stocks().stream().map(StockLay::role).toList();
        result.made().bolts().stream()
                .map(BoltLength::role)
                .distinct()
                .filter(role -> !roles.contains(role))
                .forEach(
                        role ->
                                findings.add(
                                        new Finding(
                                                "lay-role-without-cloth",
                                                new Subject.Stock(role),
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
            add(
                    "design-fits-instead",
                    design.name(),
                    Level.NOTE,
                    "This design fits on the cloth.",
                    "If you would as soon make it, write `make: "
                            + Quoted.of(design.name())
                            + "`.");
        }
    }

    private void together() {
        for (LayResult.DesignPair both : result.together()) {
            if (both.fits()) {
                add(
                        "design-pair-fits",
                        result.made().name(),
                        Level.NOTE,
                        both.first() + " and " + both.second() + " can both be made of the cloth.",
                        "");
            }
        }
    }

    /** An envelope that asks for less than the altered pieces need. */
    private void printedNeed() {
        DesignLay made = result.made();
        for (BoltLength bolt : made.bolts()) {
            made.printedNeed(bolt)
                    .filter(need -> bolt.length().filter(l -> l.isLongerThan(need)).isPresent())
                    .ifPresent(need -> printedTooLittle(need, bolt));
        }
    }

    private void printedTooLittle(Length need, BoltLength bolt) {
        add(
                "design-envelope-too-little",
                result.made().name(),
                Level.CAUTION,
                "The envelope says "
                        + tape.printShop(need)
                        + " of cloth "
                        + tape.print(bolt.width())
                        + " wide; the pieces as altered were laid in "
                        + tape.printShop(bolt.toBuy().orElseThrow())
                        + ".",
                "Buy by the longer of the two.");
    }
}
