package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.task.Amount;
import secondbolt.task.Need;
import secondbolt.textile.state.CameWith;
import secondbolt.worksheet.Term;

/** What is needed to prepare the cloths, and the words of it. */
final class PrepareNeeds {
    private PrepareNeeds() {}

    /** Source of the bags: The Textile Museum (Washington), pest brochure, 3 to 4 mil. */
    static List<Need> of(Preparation all) {
        List<Need> needs = new ArrayList<>();
        int frozen = all.those(c -> c.has(CameWith.MOTHS)).size();
        if (frozen > 0) {
            needs.add(
                    Need.of(
                            "clear polyethylene bags, 0.08 to 0.1 mm (3 to 4 mil) thick",
                            new Amount.Pieces(frozen, ""),
                            "freezing " + all.names(c -> c.has(CameWith.MOTHS))));
        }
        return needs;
    }

    /** The words that the page uses. */
    static List<Term> words(Preparation all) {
        List<Term> words = new ArrayList<>();
        if (all.hasAny(PreparedCloth::felts)) {
            words.add(
                    new Term(
                            "felt",
                            "What wool does when heat, motion and soap lock its hairs: it gets"
                                    + " smaller and thicker for good."));
            words.add(
                    new Term(
                            "relax",
                            "What cloth does when it gets wet: it goes back from having been"
                                    + " stretched, and so gets smaller."));
        }
        return words;
    }
}
