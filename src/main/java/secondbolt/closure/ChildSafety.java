package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Length;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/**
 * The usual cautions on a child's closures. What is allowed, local rules and their offices say.
 *
 * @param result the closure
 * @param age of the wearer, if told; never taken as adult when it is not
 */
record ChildSafety(ClosureResult result, Optional<Wearer.Age> age) {
    private static final int SMALL_PARTS_UNDER = 3;
    private static final int NO_CORDS_UNDER = 8;
    private static final int CHILD_UNDER = 14;

    /**
     * What is as wide as the test cylinder still fits in.
     *
     * <p>Source: the United States Consumer Product Safety Commission's page on small parts: a
     * cylinder 1.25 in wide (16 CFR 1501.4).
     */
    private static final Length CYLINDER = Length.ofInches(5, 4);

    private static final String ASK = "What is allowed on children's clothes your local rules say.";

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (result.closure().fastening().kind() == Fastening.Kind.TIES) {
            cords().ifPresent(findings::add);
        } else {
            smallParts().ifPresent(findings::add);
        }
        return findings;
    }

    private boolean isUnder(int years) {
        return age.filter(a -> a.isUnder(years)).isPresent();
    }

    private Optional<Finding> told(String code, Level level, String text, String remedy) {
        return Optional.of(ClosureFindings.found(result, code, level, text, remedy + " " + ASK));
    }

    private Optional<Finding> smallParts() {
        String many = PageWords.capital(result.closure().fastening().kind().word());
        if (isUnder(SMALL_PARTS_UNDER)) {
            boolean fits =
                    result.closure()
                            .fastening()
                            .width()
                            .filter(w -> w.isLongerThan(CYLINDER))
                            .isEmpty();
            return told(
                    "fastener-swallowed",
                    Level.WARNING,
                    many
                            + " come off and can be swallowed; the wearer is under three."
                            + (fits
                                    ? " These fit into the cylinder of the public test for small"
                                            + " parts (16 CFR 1501.4)."
                                    : ""),
                    "Choose a closing without loose parts: an overlapped neck, elastic, a slip-on"
                            + " cut.");
        }
        if (isUnder(CHILD_UNDER)) {
            return told(
                    "fastener-swallowed",
                    Level.CAUTION,
                    many + " come off and can be swallowed.",
                    "Sew each on with strong thread through all layers, fasten off, pull hard, and"
                            + " look again after each wash; not where a child under three may wear"
                            + " it.");
        }
        return age.isPresent()
                ? Optional.empty()
                : told(
                        "fastener-swallowed",
                        Level.NOTE,
                        many + " come off and can be swallowed.",
                        "For a child under three, or one who mouths things, choose another closing;"
                                + " `wearer: {age: …}` says who wears it.");
    }

    /**
     * Source: the Finnish Safety and Chemicals Agency on EN 14682: none at hood, head or neck of
     * children of seven and younger, no free ends there up to fourteen; 16 CFR 1120 for hood and
     * neck, and at most 3 in free at the waist.
     */
    private Optional<Finding> cords() {
        if (isUnder(NO_CORDS_UNDER)) {
            return told(
                    "ties-catch",
                    Level.WARNING,
                    "Ties catch, and a child can be strangled or dragged by them: at hood and neck"
                            + " none are allowed for children of seven and younger (EN 14682), nor"
                            + " on outerwear in the United States (16 CFR 1120).",
                    "Keep them away from neck and hood, never tied behind the neck; at waist and"
                            + " back short, at most 3 in (76 mm) free, without knots or toggles, and"
                            + " sewn fast in the middle.");
        }
        if (isUnder(CHILD_UNDER)) {
            return told(
                    "ties-catch",
                    Level.WARNING,
                    "Ties catch: at hood and neck of children up to fourteen they may have no free"
                            + " ends (EN 14682).",
                    "Keep them short and away from the neck.");
        }
        return age.isPresent()
                ? Optional.empty()
                : told(
                        "ties-catch",
                        Level.NOTE,
                        "Ties at the neck of a child can strangle.",
                        "`wearer: {age: …}` says who wears it.");
    }
}
