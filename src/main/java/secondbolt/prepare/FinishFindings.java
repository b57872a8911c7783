package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.textile.state.Finish;
import secondbolt.worksheet.Finding;

/**
 * What the maker should know of how a cloth is finished, and of its care label.
 *
 * @param cloth the cloth
 */
record FinishFindings(PreparedCloth cloth) {
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Finish finish : cloth.state().finishes()) {
            findings.add(of(finish));
        }
        if (cloth.heat().isLabelHotter()) {
            findings.add(
                    finding(
                            "prepare-label-hotter",
                            Finding.Level.CAUTION,
                            "Its care label allows more heat than its fibre bears as a rule; the"
                                    + " label knows the cloth, if it belongs to it.",
                            "Try iron and wash on a scrap; if the scrap suffers, or the label may be"
                                    + " another's, write `care label: none`."));
        }
        if (cloth.isWashForbidden()) {
            findings.add(
                    finding(
                            "prepare-label-not-washed",
                            Finding.Level.WARNING,
                            "Its care label forbids a wash, and it is told that one is still to"
                                    + " come.",
                            "If the garment will be cleaned dry, write `prewash: never`, and steam it"
                                    + " before you measure; if you mean to wash it all the same,"
                                    + " wash a piece of it first, measured before and after."));
        }
        return findings;
    }

    private Finding of(Finish finish) {
        return switch (finish) {
            case EASY_CARE ->
                    finding(
                            "prepare-easy-care",
                            Finding.Level.NOTE,
                            "It is finished to shed creases: a fold ironed in wrong is hard to get"
                                    + " out, a seam hard to press flat, and the thread is weaker"
                                    + " than it would be without (common practice, no source).",
                            "");
            case FLAME_RETARDANT ->
                    finding(
                            "prepare-flame-retardant",
                            Finding.Level.CAUTION,
                            "It is finished not to catch fire. Softener spoils that, and soap does"
                                    + " in hard water (from memory), and how much of it is left in a"
                                    + " used cloth nobody can see.",
                            "Wash it only as its label says, without softener, and do not rely on"
                                    + " it: take it for cloth that burns.");
            case WATER_REPELLENT ->
                    finding(
                            "prepare-water-repellent",
                            Finding.Level.NOTE,
                            "It is finished to repel water: it wets and rinses slowly, and the glue"
                                    + " of interfacing holds badly on it (common practice, no"
                                    + " source).",
                            "");
            case STARCH ->
                    finding(
                            "prepare-starch",
                            Finding.Level.NOTE,
                            "It is starched or dressed: that adds to its weight, hides thin places,"
                                    + " and goes out in the wash (common practice, no source). Weigh"
                                    + " and look it over once it is out.",
                            "");
        };
    }

    private Finding finding(String code, Finding.Level level, String text, String remedy) {
        return new Finding(code, cloth.subject(), level, text, remedy);
    }
}
