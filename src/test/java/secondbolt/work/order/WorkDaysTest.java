package secondbolt.work.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;

/** The earliest day of a step, by what must pass before it. */
class WorkDaysTest {
    private static WorkStep step(String name, String after) {
        return WorkStep.of(name, Stage.SEWING, name + ".").after(after, "It must.");
    }

    private static WorkStep step(String name, String after, Duration least, Duration most) {
        return step(name, after).waiting(new Wait("it rests", least, most, "Common practice."));
    }

    private static WorkStep step(String name, String after, Duration wait) {
        return step(name, after, wait, wait);
    }

    private static WorkDays days(WorkStep... steps) {
        return WorkDays.of(OrderOfWork.of(List.of(steps)), Map.of());
    }

    /**
     * Check value: dye 45 min and rinse, dry overnight on the line, press, hang 48 h: the hem is on
     * day 4 at the earliest; derived.
     */
    @Test
    void hemsOnTheFourthDayWhatIsDyedOnTheFirst() {
        WorkDays days =
                days(
                        step("dye", "", Duration.ofMinutes(45), Duration.ofMinutes(60)),
                        step("rinse", "dye"),
                        step("dry", "rinse", Duration.ofHours(12), Duration.ofHours(24)),
                        step("press", "dry"),
                        step("hang", "press", Duration.ofHours(48)),
                        step("hem", "hang"),
                        step("buttons", "press"));
        assertEquals(1, days.least().get("rinse"));
        assertEquals(2, days.least().get("press"));
        assertEquals(4, days.least().get("hem"));
        assertEquals(2, days.least().get("buttons"));
    }

    /** A day for firm cloth, two or three for a circular skirt (The New Dressmaker, 1921). */
    @Test
    void tellsTheLeastAndTheMostOfWhatSourcesDisagreeOn() {
        WorkDays days =
                days(
                        step("hang", "", Duration.ofHours(24), Duration.ofDays(3)),
                        step("level", "hang"));
        assertEquals(2, days.least().get("level"));
        assertEquals(4, days.most().get("level"));
    }

    @Test
    void goesOnTheNextMorningWhereTheDayIsOver() {
        WorkDays days =
                days(
                        step("first", "", Duration.ofHours(8)),
                        step("second", "first", Duration.ofHours(8)),
                        step("third", "second", Duration.ofHours(8)),
                        step("fourth", "third"));
        assertEquals(
                List.of(1, 1, 2, 2),
                List.of("first", "second", "third", "fourth").stream()
                        .map(days.least()::get)
                        .toList());
    }

    /** Hung up the day before she goes on: two days of three are still to come. */
    @Test
    void countsFromTheDayThatIsTold() {
        List<WorkStep> steps = List.of(step("hang", "", Duration.ofDays(3)), step("level", "hang"));
        WorkDays told = WorkDays.of(steps, Map.of("hang", Optional.of(0L)));
        assertEquals(3, told.least().get("level"));
        WorkDays untold = WorkDays.of(steps, Map.of("hang", Optional.empty()));
        assertEquals(1, untold.least().get("level"));
    }
}
