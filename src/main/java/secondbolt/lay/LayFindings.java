package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.ClothYield;
import secondbolt.garment.Role;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.lay.plan.Match;
import secondbolt.lay.stock.Matching;
import secondbolt.lay.stock.PlacementRules;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Finding;

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
        if (!result.made().crossed().isEmpty()) {
            all.add(
                    result.made().name(),
                    Level.STOP,
                    crossed(result.made()),
                    "Mend the piece first, as told with the pieces.");
        }
        all.result.made().stocks().forEach(all::stock);
        all.withoutCloth();
        all.result.others().forEach(all::other);
        all.together();
        all.printedNeed();
        return List.copyOf(all.findings);
    }

    private void add(String what, Level level, String text, String remedy) {
        findings.add(new Finding(what, level, text, remedy));
    }

    private void stock(StockLay stock) {
        if (!stock.isFinished() && stock.fits()) {
            add(
                    stock.role().word(),
                    Level.NOTE,
                    "The search for this lay was stopped; this is the best it had found.",
                    "Make the notebook again for a plan that uses less.");
        }
        pattern(stock);
        oneWay(stock);
        spoilt(stock);
        if (!stock.fits()) {
            add(stock.role().word(), Level.STOP, noRoom(stock), helps(stock));
        }
    }

    /** Stripes and checks: what matches, and what does not. */
    private void pattern(StockLay stock) {
        for (int i = 0; i < stock.cloths().size(); i++) {
            String cloth = stock.cloths().get(i).name();
            for (String warning : new LayWords(tape).ofPattern(stock, i, result.plan())) {
                add(
                        cloth,
                        Level.WARNING,
                        warning,
                        warning.equals(LayWords.NOT_MATCHED)
                                ? "Write under `lay` which seams match: `match: [[front.side,"
                                        + " back.side]]`."
                                : "Write the matches that matter most first.");
            }
        }
        matched(stock);
        List<String> darts =
                Matching.belowDarts(
                        result.plan().rules().matches(),
                        stock.laid().stream().map(LaidPiece::piece).toList());
        if (!darts.isEmpty() && stock.spreads().stream().anyMatch(s -> s.repeat().isAny())) {
            add(
                    stock.role().word(),
                    Level.NOTE,
                    "What is matched at "
                            + String.join(", ", darts)
                            + " matches below the dart and not above it.",
                    "");
        }
    }

    private void matched(StockLay stock) {
        boolean any =
                stock.laid().stream().flatMap(l -> l.pins().stream()).anyMatch(PinPoint::isMatch);
        if (any) {
            add(
                    stock.role().word(),
                    Level.NOTE,
                    "Matched on the sewing line, at the crosses of the plan: "
                            + String.join(
                                    "; ",
                                    result.plan().rules().matches().stream()
                                            .map(Match::words)
                                            .toList())
                            + ". All matched pieces lie with their top up.",
                    "Woven checks are never quite even: before you cut, lay each piece so that its"
                            + " cross meets the same line as the piece it is sewn to.");
        }
    }

    private void oneWay(StockLay stock) {
        boolean oneWay = stock.spreads().stream().anyMatch(SpreadCloth::isOneWay);
        boolean turned =
                stock.laid().stream()
                        .anyMatch(
                                l ->
                                        l.placement().orientation().turnDegrees() != 0
                                                && !l.piece().isHidden());
        if (oneWay && turned) {
            add(
                    stock.role().word(),
                    Level.CAUTION,
                    "On the cloth that runs one way, pieces across the grain lie with their top to"
                            + " the right and pieces on the bias with their top up to the right:"
                            + " they shade otherwise than the rest.",
                    "Look at it on the cloth first, from where it will be seen.");
        }
    }

    private void spoilt(StockLay stock) {
        for (SpreadCloth spread : stock.spreads()) {
            if (!spread.cuts().spoilt().isEmpty()) {
                add(
                        spread.name(),
                        Level.NOTE,
                        "What was spoilt is planned anew, and what is cut from it lies inside its"
                                + " dashed line.",
                        "Write what is damaged as a flaw of the cloth, if it is not told yet.");
            }
        }
    }

    private String helps(StockLay stock) {
        if (!stock.isFinished()) {
            return "Make the notebook again and let it finish.";
        }
        List<String> helps =
                result.remedies().stream()
                        .filter(r -> r.role() == stock.role() && r.leftOver().isEmpty())
                        .map(LayResult.Remedy::words)
                        .toList();
        String tried =
                helps.isEmpty()
                        ? "What was tried quickly did not help. Cut it of another cloth, or choose"
                                + " another design; or try `effort: thorough`."
                        : "It fits with " + String.join(", or with ", helps) + ".";
        return kept(stock) + tried;
    }

    /** A piece with an edge on a feature has few places, and none if it has an allowance there. */
    private static String kept(StockLay stock) {
        List<String> kept = new ArrayList<>();
        for (SpreadCloth spread : stock.spreads()) {
            for (ClothYield.Kept feature : spread.kept()) {
                boolean isLeft =
                        stock.leftOver().stream()
                                .anyMatch(p -> PlacementRules.isOf(p, feature.edge()));
                if (isLeft) {
                    kept.add(feature.edge() + " must lie along the " + feature.what());
                }
            }
        }
        return kept.isEmpty()
                ? ""
                : String.join("; ", kept)
                        + ": at the edge of the cloth it can have no allowance and no hem of its"
                        + " own, and the piece may have to be turned. ";
    }

    /** What is left out, and whether it was looked for to the end. */
    static String noRoom(StockLay stock) {
        String pieces = String.join(", ", LayWords.counted(stock.leftOver()));
        if (stock.cloths().isEmpty()) {
            return "There is no sound cloth for " + pieces + ".";
        }
        return stock.isFinished()
                ? "There is no room found for " + pieces + tooLarge(stock) + "."
                : "The search was stopped before these had their place: " + pieces + ".";
    }

    /** What cannot be laid at all. */
    static String crossed(DesignLay design) {
        return "Not laid, because the cutting line crosses itself: "
                + String.join(", ", design.crossed())
                + ".";
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
        List<Role> roles = result.made().stocks().stream().map(StockLay::role).toList();
        result.made().bolts().stream()
                .map(BoltLength::role)
                .distinct()
                .filter(role -> !roles.contains(role))
                .forEach(
                        role ->
                                findings.add(
                                        new Finding(
                                                role.word(),
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

    private void together() {
        for (LayResult.DesignPair both : result.together()) {
            if (both.fits()) {
                add(
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
            Optional<Length> printed = made.design().map(d -> d.printedNeed().get(bolt.width()));
            boolean less =
                    bolt.role() == Role.MAIN
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
