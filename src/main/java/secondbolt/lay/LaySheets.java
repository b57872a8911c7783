package secondbolt.lay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.draw.Drawing;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/** The sheets of the lay: a cutting plan for each cloth, and the yardage summary. */
final class LaySheets {
    private final LayResult result;
    private final Map<String, Drawing> plans;
    private final LayWords words;

    private LaySheets(LayResult result, Map<String, Drawing> plans, Tape tape) {
        this.result = result;
        this.plans = plans;
        this.words = new LayWords(tape);
    }

    /**
     * All of them.
     *
     * @param plans the drawings of the cutting plans, by the names of their pictures
     */
    static List<Sheet> of(LayResult result, Map<String, Drawing> plans, Tape tape) {
        LaySheets sheets = new LaySheets(result, plans, tape);
        List<Sheet> all = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (StockLay stock : result.made().stocks()) {
            stock.cloths().forEach(cloth -> names.add(cloth.name()));
        }
        List<String> plain = SheetName.forEach(names);
        int next = 0;
        for (StockLay stock : result.made().stocks()) {
            for (int i = 0; i < stock.cloths().size(); i++) {
                all.add(sheets.plan(stock, i, plain.get(next++)));
            }
        }
        if (!result.made().bolts().isEmpty()) {
            all.add(YardageSheet.of(result, tape));
        }
        return all;
    }

    private Sheet plan(StockLay stock, int cloth, String name) {
        String cloths = stock.cloths().get(cloth).name();
        return new Sheet(
                "cutting-plan-" + name,
                "Cutting plan of " + cloths,
                shown(stock, cloth),
                plans.get(LayPage.picture(stock.role(), cloth)),
                List.of(
                        new Block.Steps(instructions(stock, cloth)),
                        new Block.Warnings(words.ofPattern(stock, cloth, result.plan())),
                        new Block.Ticks(
                                NumberedPiece.on(stock, cloth).stream().map(this::item).toList())),
                Sheet.Size.PICTURE);
    }

    /** The cloth with its stock, the design, and every piece that lies there. */
    private Set<Subject> shown(StockLay stock, int cloth) {
        Set<Subject> shown = new HashSet<>();
        shown.add(new Subject.Cloth(stock.cloths().get(cloth).name()));
        shown.add(new Subject.Stock(stock.role()));
        shown.add(new Subject.Design(result.made().name()));
        NumberedPiece.on(stock, cloth)
                .forEach(
                        numbered ->
                                shown.add(
                                        new Subject.Piece(numbered.laid().piece().piece().name())));
        return shown;
    }

    private List<String> instructions(StockLay stock, int cloth) {
        if (NumberedPiece.on(stock, cloth).isEmpty()) {
            return List.of(
                    "Nothing is cut from this cloth.",
                    "In one piece there are " + words.over(stock, cloth) + ".");
        }
        List<String> steps = new ArrayList<>();
        steps.add(words.spread(stock.spreads().get(cloth)));
        steps.add(
                "Pin each paper piece at its two points first, then along its grain line; a piece"
                        + " with its pattern face down is a mirror image.");
        steps.add(
                "After each corner in the list stands how far it lies from the "
                        + (stock.spreads().get(cloth).fold().isPresent() ? "fold" : "left")
                        + ", and how far from the top. The picture is a guide and no measure.");
        steps.add("Pin every piece before you cut the first. Tick each off when it is cut.");
        steps.add("Stays over in one piece: " + words.over(stock, cloth) + ".");
        return steps;
    }

    /** A piece to tick off, with its pin points. */
    private Block.Ticks.Item item(NumberedPiece numbered) {
        LaidPiece laid = numbered.laid();
        List<PinPoint> pins = laid.pins();
        if (pins.isEmpty()) {
            Box box = laid.box();
            pins = List.of(PinPoint.corner("box round it", new Point(box.leftMm(), box.topMm())));
        }
        return new Block.Ticks.Item(
                numbered.number() + "  " + laid.piece().words(),
                List.of(LayWords.lies(laid)),
                pins.stream().map(this::row).toList());
    }

    private List<String> row(PinPoint pin) {
        return List.of(pin.where(), words.length(pin.at().xMm()), words.length(pin.at().yMm()));
    }
}
