package secondbolt.lay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.picture.CuttingPlan;
import secondbolt.lay.picture.NumberedPiece;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/**
 * The sheets of the lay: a cutting plan for each cloth, and the yardage summary.
 *
 * @param result the designs
 * @param plans the cutting plans of the chosen one
 * @param tape to print with
 */
record LaySheets(LayResult result, List<CuttingPlan> plans, Tape tape) {
    List<Sheet> sheets() {
        List<Sheet> all = new ArrayList<>();
        plans.forEach(plan -> all.add(sheet(plan)));
        if (!result.made().bolts().isEmpty()) {
            all.add(YardageSheet.of(result, tape));
        }
        return all;
    }

    private Sheet sheet(CuttingPlan plan) {
        return new Sheet(
                SheetName.of("cutting plan " + plan.name()),
                "Cutting plan of " + plan.name(),
                shown(plan),
                plan.drawing(),
                List.of(
                        new Block.Steps(instructions(plan)),
                        new Block.Warnings(
                                new UnmatchedPattern(result.plan(), tape)
                                        .of(plan.stock(), plan.spread()).stream()
                                                .map(Finding::text)
                                                .toList()),
                        new Block.Ticks(plan.pieces().stream().map(this::item).toList())),
                Sheet.Size.PICTURE);
    }

    private LayWords words() {
        return new LayWords(tape);
    }

    /** The cloth with its stock, the design, and every piece that lies there. */
    private Set<Subject> shown(CuttingPlan plan) {
        Set<Subject> shown = new HashSet<>();
        shown.add(new Subject.Cloth(plan.name()));
        shown.add(new Subject.Stock(plan.stock().role()));
        shown.add(new Subject.Design(result.made().name()));
        for (NumberedPiece numbered : plan.pieces()) {
            numbered.laid().ifPresent(l -> shown.add(new Subject.Piece(l.piece().piece().name())));
        }
        return shown;
    }

    private List<String> instructions(CuttingPlan plan) {
        if (plan.pieces().stream().allMatch(piece -> piece.laid().isEmpty())) {
            return List.of(
                    plan.pieces().isEmpty()
                            ? "Nothing is cut from this cloth."
                            : "All pieces of this cloth are cut.",
                    "In one piece there are " + words().over(plan) + ".");
        }
        List<String> steps = new ArrayList<>();
        steps.add(words().spread(plan.spread()));
        steps.add(
                "Pin each paper piece at its two points first, then along its grain line; a piece"
                        + " with its pattern face down is a mirror image.");
        steps.add(
                "After each corner in the list stands how far it lies from the "
                        + (plan.spread().fold().isPresent() ? "fold" : "left")
                        + ", and how far from the top. The picture is a guide and no measure.");
        steps.add("Pin every piece before you cut the first. Tick each off when it is cut.");
        steps.add("Stays over in one piece: " + words().over(plan) + ".");
        return steps;
    }

    /** A piece to tick off, with its pin points; ticked if it is cut. */
    private Block.Ticks.Item item(NumberedPiece numbered) {
        String title = numbered.number() + "  " + numbered.words();
        return numbered.laid()
                .map(
                        laid ->
                                Block.Ticks.Item.open(
                                        title,
                                        List.of(laid.lies().words()),
                                        pins(laid).stream().map(words()::row).toList()))
                .orElseGet(() -> Block.Ticks.Item.done(title, List.of("cut already")));
    }

    private static List<PinPoint> pins(LaidPiece laid) {
        Box box = laid.box();
        return laid.pins().isEmpty()
                ? List.of(PinPoint.corner("box round it", new Point(box.leftMm(), box.topMm())))
                : laid.pins();
    }
}
