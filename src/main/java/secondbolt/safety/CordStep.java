package secondbolt.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;

/**
 * Fixing the cords of a child's garment; sources as at {@link CordRule}. A cord that must not be is
 * not sewn on: it has no step.
 */
final class CordStep {
    private CordStep() {}

    /**
     * What cords contribute; nothing where no child is told of, or none may stay.
     *
     * @param cords all there are
     * @param rule what is told of them
     */
    static Gives of(List<Cord> cords, CordRule rule) {
        List<Cord> allowed =
                cords.stream()
                        .filter(cord -> rule.of(cord).filter(f -> !f.isStop()).isPresent())
                        .toList();
        if (!rule.isForAChild() || allowed.isEmpty()) {
            return Gives.NOTHING;
        }
        return new Gives(List.of(step(allowed, rule)), List.of(), List.of());
    }

    private static WorkStep step(List<Cord> cords, CordRule rule) {
        return WorkStep.of(
                        "cords",
                        Stage.FINISHING,
                        "Sew fast in the middle with a bar: "
                                + cords.stream().map(Cord::name).collect(Collectors.joining(", "))
                                + ". No knots and no toggles at free ends; nothing ties behind the"
                                + " back or hangs below the lower edge. What holds for each stands"
                                + " under Safe for a child; your local rules come first.")
                .after("hem", "Where the lower edge ends is known once it is hemmed.")
                .after("ties", "What is not sewn on yet cannot be measured.")
                .after("elastic", "A cord in a casing runs free until its casing is closed.")
                .checking(checks(cords, rule).toArray(String[]::new));
    }

    private static List<String> checks(List<Cord> cords, CordRule rule) {
        List<String> checks = new ArrayList<>();
        checks.add(
                "Laid flat and open at its widest, each free end is at most "
                        + rule.longestFree()
                        + " long (16 CFR 1120).");
        if (cords.stream().anyMatch(Cord::isAtTheNeck)) {
            checks.add(
                    "At neck and hood no end hangs free, and the cord lies flat (EN 14682:2007).");
        }
        checks.add("Pull hard at every end: nothing comes out on one side.");
        return checks;
    }
}
