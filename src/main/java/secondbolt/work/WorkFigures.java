package secondbolt.work;

import java.util.List;
import java.util.Optional;
import secondbolt.figure.Figures;
import secondbolt.task.WorkStep;

/** The order of work for other programs. */
final class WorkFigures {
    private WorkFigures() {}

    static Figures of(WorkResult result) {
        DayWords days = new DayWords(result);
        return new Figures()
                .text("begins", result.begins().map(Object::toString))
                .claim("own_order_refused", result.hers().isRefused())
                .list("steps", result.steps().stream().map(s -> step(s, result, days)).toList());
    }

    private static Figures step(WorkStep step, WorkResult result, DayWords days) {
        Figures figures =
                new Figures()
                        .text("name", step.name())
                        .text("stage", step.stage().word())
                        .text("text", step.text())
                        .claim("done", result.isDone(step))
                        .list("follows", follows(step, result));
        if (!result.isDone(step)) {
            figures.count("day_least", days.least(step)).count("day_most", days.most(step));
            days.onDay(days.least(step)).ifPresent(on -> figures.text("earliest", on.toString()));
        }
        result.done()
                .getOrDefault(step.name(), Optional.empty())
                .ifPresent(on -> figures.text("done_on", on.toString()));
        step.pause()
                .ifPresent(
                        pause ->
                                figures.count("wait_least_min", (int) pause.least().toMinutes())
                                        .count("wait_most_min", (int) pause.most().toMinutes()));
        return figures;
    }

    private static List<Figures> follows(WorkStep step, WorkResult result) {
        return result.follows(step).stream()
                .map(f -> new Figures().text("step", f.step()).text("why", f.why()))
                .toList();
    }
}
