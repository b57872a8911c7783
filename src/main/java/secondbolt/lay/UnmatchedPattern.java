package secondbolt.lay;

import java.util.List;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.stock.Matching.UnmetMatch;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/**
 * What of a cloth's stripes or checks does not match.
 *
 * @param plan as the maker wrote it
 * @param tape to print with
 */
record UnmatchedPattern(LayPlan plan, Tape tape) {
    /** On one cloth of a stock; nothing if all matches. */
    List<Finding> of(StockLay stock, SpreadCloth cloth) {
        Subject about = new Subject.Cloth(cloth.name());
        if (!cloth.repeat().isAny()) {
            return List.of();
        }
        if (plan.rules().matches().isEmpty()) {
            return List.of(
                    new Finding(
                            "lay-repeat-not-matched",
                            about,
                            Finding.Level.WARNING,
                            "The cutting plan does not match stripes or checks: the repeat of this"
                                    + " cloth is not heeded.",
                            "Write under `lay` which edges match that are sewn together:"
                                    + " `match: [[…, …]]`."));
        }
        return stock.unmetMatches().stream().map(unmet -> unmet(unmet, about)).toList();
    }

    private Finding unmet(UnmetMatch unmet, Subject about) {
        return new Finding(
                "lay-match-unmet",
                about,
                Finding.Level.WARNING,
                "No match of "
                        + unmet.match().words()
                        + " "
                        + unmet.axis()
                        + ": the matches before it rule it out by "
                        + tape.printSmall(unmet.off())
                        + ".",
                "Write the matches that matter most first.");
    }
}
