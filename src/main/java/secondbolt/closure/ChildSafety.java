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
import secondbolt.worksheet.Sentence;

/**
 * The usual cautions on the fasteners of a child's closures; what ties is told in {@code safety}.
 * What is allowed, local rules and their offices say.
 *
 * @param result the closure
 * @param age of the wearer, if told; never taken as adult when it is not
 */
record ChildSafety(ClosureResult result, Optional<Wearer.Age> age) {
    private static final int SMALL_PARTS_UNDER = 3;
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
        if (result.closure().fastening().kind() != Fastening.Kind.TIES) {
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
        String many = Sentence.capital(result.closure().fastening().kind().word());
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
}
