package secondbolt.work.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/** An order of a maker's own, held against the rules of the trade. */
class HerOrderTest {
    private static final String HEAT = "The bath undoes the fusing and shrinks it.";
    private static final String PALE = "Polyester thread stays pale.";
    private static final String SIZE = "The bath changes the size of the cloth.";

    private static final WorkStep DYE = WorkStep.of("dye", Stage.DYEING, "Dye it.").wet();
    private static final WorkStep WASH_OFF =
            WorkStep.of("wash off", Stage.DYEING, "Wash it off.")
                    .after("dye", "It is its wash.")
                    .wet();
    private static final WorkStep SURVEY =
            WorkStep.of("survey", Stage.PREPARING, "Look.").after("wash off", SIZE);
    private static final WorkStep CUT =
            WorkStep.of("cut", Stage.CUTTING, "Cut.").after("survey", "Flaws.");
    private static final WorkStep FUSE =
            WorkStep.of("fuse", Stage.SEWING, "Fuse.").after("wash off", HEAT);
    private static final WorkStep ASSEMBLE =
            WorkStep.of("assemble", Stage.SEWING, "Sew.").after("cut", "Pieces first.");

    private static List<String> reasons(HerOrder order) {
        return order.broken().stream().map(link -> link.rule().why()).toList();
    }

    private static List<String> names(HerOrder order) {
        return OrderOfWork.of(order.steps()).stream().map(WorkStep::name).toList();
    }

    /**
     * Check value: fuse, sew, then hot dye breaks two rules: refused, with both reasons; derived.
     */
    @Test
    void refusesToDyeHotWhatIsFusedAndSewnWithEachReason() {
        HerOrder order =
                HerOrder.of(
                        List.of(
                                DYE,
                                FUSE,
                                WorkStep.of("assemble", Stage.SEWING, "Sew.").after("dye", PALE),
                                WASH_OFF),
                        List.of("fuse", "assemble", "dye"));
        assertTrue(order.isRefused());
        assertEquals(List.of(HEAT, PALE), reasons(order));
        assertEquals(List.of("dye", "wash off", "fuse", "assemble"), names(order));
    }

    /** The reason is found behind other steps, and it is the one that says what goes wrong. */
    @Test
    void findsReasonsThroughOtherSteps() {
        HerOrder order =
                HerOrder.of(
                        List.of(DYE, WASH_OFF, SURVEY, CUT, FUSE, ASSEMBLE.after("dye", PALE)),
                        List.of("fuse", "assemble", "dye"));
        assertEquals(List.of(HEAT, SIZE, PALE), reasons(order));
    }

    /** Cotton thread and nothing fused: no step of those rules is there, so they do not bind. */
    @Test
    void followsDyeingAfterSewingWhereNothingIsFusedAndTheThreadTakesTheDye() {
        HerOrder order =
                HerOrder.of(
                        List.of(DYE, WASH_OFF, SURVEY, CUT, ASSEMBLE), List.of("assemble", "dye"));
        assertFalse(order.isRefused());
        assertEquals(List.of(SIZE), reasons(order));
        assertEquals(List.of("survey", "cut", "assemble", "dye", "wash off"), names(order));
    }

    @Test
    void saysNothingOfAnOrderThatBreaksNoRule() {
        HerOrder order =
                HerOrder.of(
                        List.of(DYE, WASH_OFF, SURVEY, CUT, FUSE), List.of("dye", "cut", "fuse"));
        assertEquals(List.of(), order.broken());
        assertFalse(order.isRefused());
        assertEquals(List.of("dye", "wash off", "survey", "cut", "fuse"), names(order));
    }

    /** Two steps of which neither needs the other go as she has them. */
    @Test
    void followsATasteOfHers() {
        WorkStep collar = WorkStep.of("collar", Stage.SEWING, "Collar.");
        WorkStep cuffs = WorkStep.of("cuffs", Stage.SEWING, "Cuffs.");
        assertEquals(
                List.of("cuffs", "collar"),
                names(HerOrder.of(List.of(collar, cuffs), List.of("cuffs", "collar"))));
    }
}
