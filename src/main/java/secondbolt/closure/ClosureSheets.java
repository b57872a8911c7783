package secondbolt.closure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.closure.fastening.Button;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.strip.LapSides;
import secondbolt.closure.strip.StripDrawing;
import secondbolt.closure.strip.TestCard;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/**
 * The sheets of closures: strips for both sides of each, and a card to try its holes.
 *
 * @param results the closures worked out
 * @param findings what a maker should know of them
 */
record ClosureSheets(List<ClosureResult> results, List<Finding> findings) {
    List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        for (ClosureResult result : results) {
            sheets.add(strips(result));
            if (result.closure().fastening().hasHoles()) {
                sheets.add(card(result));
            }
        }
        return sheets;
    }

    private Sheet strips(ClosureResult result) {
        List<String> warnings =
                findings.stream()
                        .filter(f -> f.about().equals(new Subject.Closure(result.name())))
                        .filter(Finding::isWarning)
                        .map(f -> f.text() + " " + f.remedy())
                        .toList();
        boolean hasHoles = result.closure().fastening().hasHoles();
        return new Sheet(
                SheetName.of(result.name()),
                (hasHoles ? "Buttonhole strips: " : "Strips: ") + result.name(),
                shown(result),
                StripDrawing.of(result),
                List.of(
                        new Block.Steps(instructions(result)),
                        new Block.Warnings(warnings),
                        new Block.Rows(new MarkTable(result).onSheet())),
                Sheet.Size.HOME);
    }

    /** The closure, and the edges its strips are laid on. */
    private static Set<Subject> shown(ClosureResult result) {
        Set<Subject> shown = new HashSet<>();
        shown.add(new Subject.Closure(result.name()));
        result.closure()
                .placket()
                .edges()
                .ifPresent(
                        edges ->
                                edges.value()
                                        .terms()
                                        .forEach(term -> shown.add(new Subject.Edge(term.edge()))));
        return shown;
    }

    private List<String> instructions(ClosureResult result) {
        Fastening fastening = result.closure().fastening();
        LapSides sides = new LapSides(result.closure().overlap());
        List<String> steps = new ArrayList<>();
        steps.add("The marks printed on the pattern no longer hold: use these.");
        steps.add("Cut both strips out along the heavy lines.");
        steps.add(
                "Lay the strip "
                        + LapSides.overHeading(fastening.kind())
                        + " on the "
                        + sides.over()
                        + ", right side of the cloth up: heavy long edge on the finished edge,"
                        + " top line on the finished top edge.");
        steps.add(
                fastening.hasHoles()
                        ? "Prick through both ends of each hole and each cross; mark with chalk or"
                                + " thread."
                        : "Prick through each cross; mark with chalk or thread.");
        steps.add(
                "Lay the strip "
                        + LapSides.underHeading(fastening.kind())
                        + " on the "
                        + sides.under()
                        + " in the same way; "
                        + (fastening.hasHoles()
                                ? "a button's centre comes on each cross."
                                : "its half comes on each cross."));
        steps.add(sewingOn(fastening));
        if (isDrawnAsOnTheLeft(result)) {
            steps.add(
                    "Drawn as on the wearer's left; for her right turn both strips face down and"
                            + " trace the marks through.");
        }
        if (fastening.hasHoles()) {
            steps.add(
                    "Work and open a trial hole with the test card first. Stitch all holes, then"
                            + " open them: a pin across each bar, cut from both ends to the middle.");
        }
        return steps;
    }

    /** Common practice, no source. */
    private static String sewingOn(Fastening fastening) {
        return switch (fastening.kind()) {
            case BUTTONS ->
                    fastening.button().orElseThrow().attached() == Button.Attached.SHANK
                            ? "The shank lies across the line of a level hole, along that of an"
                                    + " upright one; it must be as long as the cloth with the hole is"
                                    + " thick."
                            : "Sew each button on a thread shank as long as the cloth with the hole"
                                    + " is thick.";
            case SNAPS ->
                    "Sew the ball halves on the wrong side of the side above, through one layer"
                            + " only; the socket halves on the right side of the other.";
            case HOOKS -> "Sew hooks and eyes inside, so that the edges just meet.";
            case TIES -> "Catch each tie in the seam, or fold its end under and sew it.";
        };
    }

    private static boolean isDrawnAsOnTheLeft(ClosureResult result) {
        Overlap.Laps laps = result.closure().overlap().laps();
        return laps == Overlap.Laps.FRONT_OVER_BACK || laps == Overlap.Laps.BACK_OVER_FRONT;
    }

    private Sheet card(ClosureResult result) {
        Tape tape = result.tape();
        List<List<String>> rows =
                TestCard.holes(result.hole(), tape).stream()
                        .map(hole -> List.of(tape.printSmall(hole), tape.other().printSmall(hole)))
                        .toList();
        return new Sheet(
                SheetName.of(result.name() + " test"),
                "Test card: " + result.name(),
                Set.of(new Subject.Closure(result.name())),
                TestCard.of(result),
                List.of(
                        new Block.Steps(trial()),
                        new Block.Warnings(
                                List.of(
                                        "Blades: cut away from your fingers, and keep the seam"
                                                + " ripper from children.")),
                        new Block.Rows(Table.of(List.of("Hole", ""), rows))),
                Sheet.Size.HOME);
    }

    private static List<String> trial() {
        return List.of(
                "Layer a scrap as the garment will be there: cloth, interfacing, cloth, the"
                        + " hole running the same way to the grain.",
                "Prick through the ends of the three holes and mark them.",
                "Stitch all three with thread, needle and foot of the garment; fasten off.",
                "Pin across each bar and cut from both ends to the middle.",
                "Button and unbutton each five times. Take the shortest that lets the button"
                        + " pass without force.",
                "Is it not the middle one? Write the difference as `working ease`, and make"
                        + " the sheets again.");
    }
}
