package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.plan.Match;
import secondbolt.lay.stock.Matching;
import secondbolt.lay.stock.PlacementRules;
import secondbolt.lay.stock.Slack;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know of what is laid on the cloths of one role, before she cuts. */
final class StockFindings {
    private final LayResult result;
    private final StockLay stock;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    private StockFindings(LayResult result, StockLay stock, Tape tape) {
        this.result = result;
        this.stock = stock;
        this.tape = tape;
    }

    static List<Finding> of(LayResult result, StockLay stock, Tape tape) {
        return new StockFindings(result, stock, tape).all();
    }

    private List<Finding> all() {
        if (!stock.isFinished() && stock.fits()) {
            add(
                    "lay-search-stopped",
                    Level.NOTE,
                    "The search for this lay was stopped; this is the best it had found.",
                    "Make the notebook again for a plan that uses less.");
        }
        pattern();
        oneWay();
        spoilt();
        if (stock.fits()) {
            tight();
        } else {
            noRoom();
        }
        return List.copyOf(findings);
    }

    /** Cloths on which the pieces fit with nothing to spare. */
    private void tight() {
        for (int i = 0; i < stock.spreads().size(); i++) {
            SpreadCloth spread = stock.spreads().get(i);
            Optional<String> tight = stock.slack(i, gapMm()).flatMap(this::tight);
            if (tight.isPresent()) {
                findings.add(
                        new Finding(
                                "lay-no-slack",
                                new Subject.Cloth(spread.name()),
                                Level.CAUTION,
                                "The pieces fit on this cloth with no slack " + tight.get() + ".",
                                "Measure the cloth and the pieces once more before you cut."));
            }
        }
    }

    private Optional<String> tight(Slack slack) {
        LayWords words = new LayWords(tape);
        List<String> ways = new ArrayList<>();
        if (words.isTight(slack.across())) {
            ways.add("across");
        }
        if (words.isTight(slack.along())) {
            ways.add("along");
        }
        return ways.isEmpty() ? Optional.empty() : Optional.of(String.join(" or ", ways));
    }

    private double gapMm() {
        return result.plan().gapOrUsual().millimetres();
    }

    private void add(String code, Level level, String text, String remedy) {
        findings.add(new Finding(code, new Subject.Stock(stock.role()), level, text, remedy));
    }

    /** Stripes and checks: what matches, and what does not. */
    private void pattern() {
        for (SpreadCloth spread : stock.spreads()) {
            findings.addAll(new UnmatchedPattern(result.plan(), tape).of(stock, spread));
        }
        matched();
        stock.apart().forEach(this::apart);
        List<String> darts =
                Matching.belowDarts(
                        result.plan().rules().matches(),
                        stock.laid().stream().map(LaidPiece::piece).toList());
        if (!darts.isEmpty() && stock.spreads().stream().anyMatch(s -> s.repeat().isAny())) {
            add(
                    "lay-match-below-dart",
                    Level.NOTE,
                    "What is matched at "
                            + String.join(", ", darts)
                            + " matches below the dart and not above it.",
                    "");
        }
    }

    private void matched() {
        boolean any =
                stock.laid().stream().flatMap(l -> l.pins().stream()).anyMatch(PinPoint::isMatch);
        if (any) {
            add(
                    "lay-matched",
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

    /** Matches with what is cut, which nothing that is laid can mend. */
    private void apart(Matching.Apart apart) {
        if (apart.off().isPresent()) {
            add(
                    "cut-not-matching",
                    Level.WARNING,
                    apart.cut()
                            + " and "
                            + apart.other()
                            + " are cut, and the pattern of the cloth is off by "
                            + tape.printSmall(apart.off().get())
                            + " where they meet ("
                            + apart.match().words()
                            + ").",
                    "Lay the two beside each other and look. If it shows where it is worn, write"
                            + " `spoilt: yes` with one of them, and it is planned anew to match.");
            return;
        }
        add(
                "lay-match-cut-apart",
                Level.WARNING,
                apart.other()
                        + " must match "
                        + apart.cut()
                        + ", which is cut, and is laid without regard to it ("
                        + apart.match().words()
                        + "): the place of "
                        + apart.cut()
                        + " does not tell how the pattern lies in it. It was turned, or cut in"
                        + " another shape, or is used with its wrong side out, or lies on a cloth"
                        + " whose pattern is not told to begin anywhere.",
                "Before you cut "
                        + apart.other()
                        + ", lay "
                        + apart.cut()
                        + " beside it on the cloth so that the same lines meet, and move it until"
                        + " they do. Of several cloths, write where the pattern begins on each:"
                        + " `begins` with `repeat`.");
    }

    private void oneWay() {
        boolean oneWay = stock.spreads().stream().anyMatch(SpreadCloth::isOneWay);
        boolean turned =
                stock.laid().stream()
                        .anyMatch(
                                l ->
                                        l.placement().orientation().turnDegrees() != 0
                                                && !l.piece().isHidden());
        if (oneWay && turned) {
            add(
                    "lay-nap-turned",
                    Level.CAUTION,
                    "On the cloth that runs one way, pieces across the grain lie with their top to"
                            + " the right and pieces on the bias with their top up to the right:"
                            + " they shade otherwise than the rest.",
                    "Look at it on the cloth first, from where it will be seen.");
        }
    }

    private void spoilt() {
        for (SpreadCloth spread : stock.spreads()) {
            if (!spread.cuts().spoilt().isEmpty()) {
                findings.add(
                        new Finding(
                                "lay-spoilt-planned-anew",
                                new Subject.Cloth(spread.name()),
                                Level.NOTE,
                                "What was spoilt is planned anew, and what is cut from it lies"
                                        + " inside its dashed line.",
                                "Write what is damaged as a flaw of the cloth, if it is not told"
                                        + " yet."));
            }
        }
    }

    private String helps() {
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
                                + " another design"
                                + (mayTryMore() ? "; or try `effort: thorough`." : ".")
                        : "It fits with " + String.join(", or with ", helps) + ".";
        return kept() + tried;
    }

    /** Where there is sound cloth, and not all is tried yet. */
    private boolean mayTryMore() {
        return !stock.spreads().isEmpty() && result.plan().effortOrSteady() != Effort.THOROUGH;
    }

    /** A piece with an edge on a feature has few places, and none if it has an allowance there. */
    private String kept() {
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

    private void noRoom() {
        String pieces = String.join(", ", LayWords.counted(stock.leftOver()));
        if (stock.spreads().isEmpty()) {
            stop("lay-no-sound-cloth", "There is no sound cloth for " + pieces + ".");
        } else if (stock.isFinished()) {
            stop("lay-no-room", "There is no room found for " + pieces + lacks() + ".");
        } else {
            stop(
                    "lay-search-stopped-early",
                    "The search was stopped before these had their place: " + pieces + ".");
        }
    }

    private void stop(String code, String text) {
        add(code, Level.STOP, text, helps());
    }

    private String lacks() {
        String lack = new LayWords(tape).lack(result, stock);
        return lack.isEmpty() ? "" : "; " + lack;
    }
}
