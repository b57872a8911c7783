package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.textile.state.CameWith;
import secondbolt.worksheet.Finding;

/**
 * What came with a cloth, and is still to be dealt with.
 *
 * @param cloth the cloth
 */
record StateFindings(PreparedCloth cloth) {
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (CameWith thing : CameWith.values()) {
            if (cloth.has(thing)) {
                findings.add(
                        switch (thing) {
                            case MOTHS -> moths();
                            case MILDEW -> mildew();
                            case OLD_SEAMS -> oldSeams();
                            case SOFTENER -> softener();
                            case CAMPHOR -> camphor();
                        });
            }
        }
        return findings;
    }

    private Finding finding(String code, Finding.Level level, String text, String remedy) {
        return new Finding(code, cloth.subject(), level, text, remedy);
    }

    /** What to write once it is dealt with, beside what it is rid of already. */
    private String once(CameWith thing) {
        List<String> rid = new ArrayList<>();
        cloth.state().ridOf().forEach(other -> rid.add(other.word()));
        rid.add(thing.word());
        return " Then write `rid of: [" + String.join(", ", rid) + "]`.";
    }

    private Finding moths() {
        return finding(
                        "prepare-moths",
                        Finding.Level.WARNING,
                        "It came with moths. What lives in it goes over to all wool, hair and silk"
                                + " in the house, and new holes open until it is dead.",
                        "Keep it closed in its bag, freeze it for 7 days at −20 °C (−4 °F) or"
                                + " colder, thaw it closed, and brush or vacuum it outdoors; once"
                                + " more if in doubt (The Textile Museum, Washington, pest"
                                + " brochure)."
                                + once(CameWith.MOTHS))
                .citing(
                        List.of(
                                "government textile advice of Canada, a copy: one week at −20 °C,"
                                        + " and then again",
                                "a museum's note of 2021: 24 hours, thawed for 12, and 12 hours"
                                        + " more; the longer is taken here",
                                "Canadian Conservation Institute, Notes 3/3: near 0 °C insects are"
                                        + " only made torpid",
                                "from memory: a household freezer at −18 °C is barely cold enough,"
                                        + " and needs 2 weeks"));
    }

    private Finding mildew() {
        return finding(
                        "prepare-mildew",
                        Finding.Level.WARNING,
                        "It came with mildew, which eats the fibres, and spreads while it is damp;"
                                + " what it has stained may stay so (University of Illinois"
                                + " Extension).",
                        "Dry it first, in sun and wind and not in an oven, and brush it outdoors."
                                + " Then pull at the spots with both hands, along and across: where"
                                + " it gives, mark a flaw."
                                + once(CameWith.MILDEW))
                .citing(
                        List.of(
                                "Smithsonian Museum Conservation Institute, Mold and mildew on"
                                        + " textiles: it grows in still air, on cotton and linen"
                                        + " over 80 % humidity, on wool and silk over 92 %",
                                "an extension text: over 70 % humidity suits it best, at 25 °C to"
                                        + " 30 °C (77 °F to 86 °F)",
                                "common practice, no source: the pull before the cloth is used"));
    }

    private Finding oldSeams() {
        return finding(
                "prepare-old-seams",
                Finding.Level.CAUTION,
                "It still has its old seams. A seam that is washed in draws up and tears, and under"
                        + " it lie needle holes and cloth that never faded.",
                "Unpick all of it before the first wash, mend and mark it, and look along each seam:"
                        + " holes that do not close and a line of another colour are flaws."
                        + once(CameWith.OLD_SEAMS));
    }

    private Finding softener() {
        return finding(
                "prepare-softener",
                Finding.Level.CAUTION,
                "It was washed with softener, which keeps dye, water and glue of interfacing off"
                        + " the fibre (common practice, no source).",
                "Wash it without, until water no longer beads on it, and use none until it is sewn."
                        + once(CameWith.SOFTENER));
    }

    private Finding camphor() {
        return finding(
                "prepare-camphor",
                Finding.Level.CAUTION,
                "It smells of camphor or mothballs, and heat drives the vapour out of the cloth"
                        + " (common practice, no source).",
                "Air it outdoors in the shade until the smell is gone, away from children and pets,"
                        + " before you wash, steam or iron it."
                        + once(CameWith.CAMPHOR));
    }
}
