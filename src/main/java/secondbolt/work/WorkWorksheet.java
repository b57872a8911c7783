package secondbolt.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import secondbolt.work.order.WorkDays;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/**
 * The order of work, to be shown.
 *
 * @param result the work in its order
 * @param isChild whether a child wears it
 */
record WorkWorksheet(WorkResult result, boolean isChild) {
    /** Up to which age the cautions for children hold. */
    static final int CHILD_UNDER = 14;

    static final Subject ABOUT = new Subject.Whole("order of work");

    private static final String TITLE = "Order of work";

    Worksheet worksheet() {
        return Worksheet.of("work", TITLE, this::notes)
                .showing(() -> new WorkPage(result, isChild).blocks())
                .printing(this::sheets)
                .telling(() -> WorkFigures.of(result));
    }

    private Notes notes() {
        return new Notes(WorkFindings.of(result), assumed(), List.<Open>of());
    }

    private List<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>();
        boolean isWaiting =
                result.steps().stream()
                        .anyMatch(step -> step.pause().isPresent() && !result.isDone(step));
        if (isWaiting) {
            assumed.add(
                    new Assumed(
                            "a working day",
                            WorkDays.LONGEST_DAY_H
                                    + " h at most; what rests longer is taken up the next morning",
                            "common practice, no source"));
        }
        boolean isRested =
                result.steps().stream()
                        .filter(step -> step.pause().isPresent())
                        .anyMatch(
                                step ->
                                        result.isDone(step)
                                                && (result.begins().isEmpty()
                                                        || result.done()
                                                                .get(step.name())
                                                                .isEmpty()));
        if (isRested) {
            assumed.add(
                    new Assumed(
                            "what rests after a step that is ticked",
                            "is over",
                            "its day, or the day you go on, is not told"));
        }
        if (result.isThreadTaken()) {
            assumed.add(
                    new Assumed(
                            "the thread of the seams",
                            "polyester, sewn after the dye bath",
                            "common practice, no source: most thread is"));
        }
        return assumed;
    }

    private List<Sheet> sheets() {
        return List.of(
                Sheet.ofWords(
                        SheetName.of(TITLE),
                        TITLE,
                        Set.of(ABOUT),
                        new WorkPage(result, isChild).ticks()));
    }
}
