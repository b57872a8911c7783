package secondbolt.hem.giving;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Tape;
import secondbolt.pattern.Seam;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;

/** What the hems of a garment contribute. */
public final class HemGiving {
    private HemGiving() {}

    /**
     * Of all hems.
     *
     * @param hems worked out, in the maker's order
     * @param seams of the pattern
     * @param tape to print with
     */
    public static Gives of(List<HemResult> hems, List<Seam> seams, Tape tape) {
        List<WorkStep> steps = new ArrayList<>();
        HangSteps.hang(hems.stream().filter(hem -> hem.hang().first()).toList())
                .ifPresent(steps::add);
        HangSteps.level(hems.stream().filter(HemGiving::isLevelled).toList(), tape)
                .ifPresent(steps::add);
        List<HemResult> last = turning(HemTurn.LAST, hems, seams);
        List<HemResult> flat = turning(HemTurn.BEFORE_GATHERING, hems, seams);
        HemSteps words = new HemSteps(tape);
        if (!flat.isEmpty()) {
            steps.add(words.flat(last.isEmpty() ? "hem" : "hem " + names(flat), flat));
        }
        List<HemResult> sewnOn = turning(HemTurn.BEFORE_SEWN_ON, hems, seams);
        if (!sewnOn.isEmpty()) {
            steps.add(words.sewnOn(sewnOn));
        }
        if (!last.isEmpty()) {
            steps.add(words.last(last));
        }
        return new Gives(steps, List.of(), HemTerms.of(hems));
    }

    private static boolean isLevelled(HemResult hem) {
        return hem.hang().first() || hem.level().isPresent();
    }

    private static List<HemResult> turning(HemTurn when, List<HemResult> hems, List<Seam> seams) {
        return hems.stream().filter(hem -> HemTurn.of(hem, seams, hems) == when).toList();
    }

    static String names(List<HemResult> hems) {
        return hems.stream().map(HemResult::name).collect(Collectors.joining(" and "));
    }
}
