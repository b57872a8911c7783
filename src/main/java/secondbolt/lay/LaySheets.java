package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Table;

/** The sheets of the lay: a cutting plan for each cloth, and the yardage summary. */
final class LaySheets {
    private static final String TICK = "[  ]";

    private final LayResult result;
    private final Map<String, Drawing> plans;
    private final LayWords words;
    private final Tape tape;

    private LaySheets(LayResult result, Map<String, Drawing> plans, Tape tape) {
        this.result = result;
        this.plans = plans;
        this.tape = tape;
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
            all.add(sheets.yardage());
        }
        return all;
    }

    private Sheet plan(StockLay stock, int cloth, String name) {
        String cloths = stock.cloths().get(cloth).name();
        return new Sheet(
                "cutting-plan-" + name,
                "Cutting plan of " + cloths,
                plans.get(LayPage.picture(stock.role(), cloth)),
                instructions(stock, cloth),
                warnings(stock, cloth),
                table(Numbered.on(stock, cloth)));
    }

    private List<String> warnings(StockLay stock, int cloth) {
        List<String> warnings = new ArrayList<>();
        if (!stock.fits()) {
            warnings.add("DO NOT CUT. " + LayFindings.noRoom(stock));
        }
        if (!result.made().crossed().isEmpty()) {
            warnings.add("DO NOT CUT. " + LayFindings.crossed(result.made()));
        }
        warnings.addAll(words.ofPattern(stock, cloth, result.plan()));
        return warnings;
    }

    private List<String> instructions(StockLay stock, int cloth) {
        List<String> steps = new ArrayList<>();
        steps.add(words.spread(stock.spreads().get(cloth)));
        steps.add(
                "Pin each paper piece at its two points first, then along its grain line; a piece"
                        + " with its pattern face down is a mirror image.");
        steps.add("Pin every piece before you cut the first. Tick each off when it is cut.");
        steps.add("Stays over in one piece: " + words.over(stock, cloth) + ".");
        return steps;
    }

    private Table table(List<Numbered> pieces) {
        List<List<String>> rows = new ArrayList<>();
        for (Numbered numbered : pieces) {
            LaidPiece laid = numbered.laid();
            String number = Integer.toString(numbered.number());
            List<PinPoint> pins = laid.pins();
            if (pins.isEmpty()) {
                Box box = laid.box();
                pins =
                        List.of(
                                PinPoint.corner(
                                        "box round it", new Point(box.leftMm(), box.topMm())));
            }
            for (int i = 0; i < pins.size(); i++) {
                PinPoint pin = pins.get(i);
                rows.add(
                        List.of(
                                i == 0 ? TICK : "",
                                i == 0 ? number : "",
                                i == 0 ? laid.piece().words() : "",
                                i == 0 ? LayWords.lies(laid) : "",
                                pin.where(),
                                words.length(pin.at().xMm()),
                                words.length(pin.at().yMm())));
            }
        }
        return new Table(
                List.of("Cut", "No.", "Piece", "Lies", "Corner of", "From left", "From top"), rows);
    }

    private Sheet yardage() {
        List<List<String>> rows = new ArrayList<>();
        for (DesignLay design : result.designs()) {
            for (BoltLength bolt : design.bolts()) {
                rows.add(
                        List.of(
                                design.name(),
                                bolt.role(),
                                tape.print(bolt.width()),
                                bolt.length().map(tape::print).orElse("too narrow"),
                                bolt.toBuy().map(tape::printShop).orElse("too narrow")));
            }
        }
        Table table = new Table(List.of("Design", "Cloth", "Width", "Lay", "Buy"), rows);
        return new Sheet(
                "yardage-summary",
                "Yardage summary",
                bars(),
                words.yardage(result),
                List.of(),
                table);
    }

    /** The lengths to buy as bars, to scale. */
    private Drawing bars() {
        Sketch sketch = new Sketch();
        double y = 0;
        double most = 1;
        for (BoltLength bolt : result.made().bolts()) {
            most = Math.max(most, bolt.toBuy().map(l -> l.millimetres()).orElse(0.0));
        }
        double scale = Math.ceil(most / 100 / 5) * 5;
        for (BoltLength bolt : result.made().bolts()) {
            double widthMm = bolt.width().millimetres() / scale;
            double lengthMm = bolt.toBuy().map(l -> l.millimetres() / scale).orElse(0.0);
            String label =
                    bolt.role()
                            + ", "
                            + tape.print(bolt.width())
                            + ": "
                            + bolt.toBuy().map(tape::printShop).orElse("too narrow");
            sketch.label(label, new Point(0, y + 3), Lettering.plain(3.2));
            if (lengthMm > 0) {
                sketch.box(new Box(0, y + 5, lengthMm, widthMm), Pen.PLAIN);
            }
            y += lengthMm > 0 ? widthMm + 11 : 8;
        }
        sketch.label(
                "Drawn 1 : " + Math.round(scale) + ", the length to buy across the page",
                new Point(0, y + 3),
                Lettering.plain(3));
        return sketch.drawing("Yardage summary", new Box(-2, -2, 160, y + 8));
    }
}
