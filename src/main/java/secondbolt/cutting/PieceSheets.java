package secondbolt.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.cutting.line.EdgeAllowance;
import secondbolt.cutting.sketch.PieceSketch;
import secondbolt.cutting.sketch.SketchStyle;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.QuarterTurn;
import secondbolt.draw.Sketch;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.shape.Box;
import secondbolt.worksheet.Sentence;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/** The full-size sheets: one for each large piece, small ones together, all for a plotter. */
final class PieceSheets {
    private final CuttingResult result;
    private final Tape tape;
    private final Map<String, Drawing> drawings = new HashMap<>();

    private PieceSheets(CuttingResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
        result.pieces()
                .forEach(
                        piece ->
                                drawings.put(
                                        piece.name(),
                                        PieceSketch.of(
                                                piece, words(piece), SketchStyle.FULL_SIZE)));
    }

    /** All sheets, in her order; the shared ones last, then one of all pieces. */
    static List<Sheet> of(CuttingResult result, Tape tape) {
        return new PieceSheets(result, tape).sheets();
    }

    private List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        List<CutPiece> small = new ArrayList<>();
        for (CutPiece piece : result.pieces()) {
            if (PagePacking.fits(PieceSketch.frame(piece, SketchStyle.FULL_SIZE))) {
                small.add(piece);
            } else {
                String title = "Piece: " + piece.name();
                String name = SheetName.of("piece " + piece.name());
                sheets.add(sheet(name, title, drawings.get(piece.name()), List.of(piece)));
            }
        }
        sheets.addAll(shared(small));
        if (!result.pieces().isEmpty()) {
            sheets.add(all());
        }
        return sheets;
    }

    private List<Sheet> shared(List<CutPiece> small) {
        List<Sheet> sheets = new ArrayList<>();
        for (PagePacking.SharedPage page : PagePacking.small(frames(small))) {
            List<CutPiece> pieces = page.pieces().stream().map(p -> small.get(p.number())).toList();
            String title =
                    "Small pieces: "
                            + pieces.stream().map(CutPiece::name).collect(Collectors.joining(", "));
            String name = "small-pieces-" + (sheets.size() + 1);
            sheets.add(sheet(name, title, together(title, page, small), pieces));
        }
        return sheets;
    }

    private Sheet all() {
        List<CutPiece> pieces = result.pieces();
        String title = "All pieces on one large page";
        Drawing drawing = together(title, PagePacking.large(frames(pieces)), pieces);
        List<List<String>> rows =
                pieces.stream()
                        .map(p -> List.of(p.name(), Sentence.capital(p.instruction())))
                        .toList();
        return new Sheet(
                "all-pieces",
                title,
                shown(pieces),
                drawing,
                blocks(pieces, Table.of(List.of("Piece", "Cut"), rows)),
                Sheet.Size.LARGE);
    }

    private Drawing together(String title, PagePacking.SharedPage page, List<CutPiece> pieces) {
        Sketch sketch = new Sketch();
        for (PagePacking.Laid laid : page.pieces()) {
            Drawing one = drawings.get(pieces.get(laid.number()).name());
            Drawing lying = laid.spot().isTurned() ? QuarterTurn.of(one) : one;
            sketch.add(new Mark.Window(lying, lying.frame(), laid.spot().at()));
        }
        return sketch.drawing(title, new Box(0, 0, page.acrossMm(), page.alongMm()));
    }

    private static List<Box> frames(List<CutPiece> pieces) {
        return pieces.stream().map(p -> PieceSketch.frame(p, SketchStyle.FULL_SIZE)).toList();
    }

    private static List<String> words(CutPiece piece) {
        List<String> words = new ArrayList<>();
        words.add(Sentence.capital(piece.instruction()));
        if (piece.before().isPresent()) {
            words.add("altered");
        }
        return words;
    }

    private Sheet sheet(String name, String title, Drawing drawing, List<CutPiece> pieces) {
        return new Sheet(
                name,
                title,
                shown(pieces),
                drawing,
                blocks(pieces, table(pieces)),
                Sheet.Size.HOME);
    }

    private static Set<Subject> shown(List<CutPiece> pieces) {
        return pieces.stream()
                .map(piece -> new Subject.Piece(piece.name()))
                .collect(Collectors.toSet());
    }

    private List<Block> blocks(List<CutPiece> pieces, Table table) {
        return List.of(
                new Block.Steps(instructions(pieces)),
                new Block.Warnings(warnings(pieces)),
                new Block.Rows(table));
    }

    private static List<String> instructions(List<CutPiece> pieces) {
        List<String> steps = new ArrayList<>();
        steps.add(
                "Cut the paper along the heavy line; if there are several tiles, glue them first.");
        steps.add(
                "Lay it with the arrow along the straight grain, and a bracket's edge on a fold.");
        steps.add("Cut the cloth along the heavy line; the dashed line is sewn or turned.");
        if (pieces.stream().anyMatch(piece -> piece.before().isPresent())) {
            steps.add("The thin dotted line is the outline before the alterations.");
        }
        return steps;
    }

    private List<String> warnings(List<CutPiece> pieces) {
        List<String> warnings = new ArrayList<>();
        if (result.rights() == Pattern.Rights.BOUGHT) {
            warnings.add("For your own use: the pattern is a bought one.");
        }
        warnings.addAll(taken(pieces));
        return warnings;
    }

    /** What the cutting lines go by that the maker has not told, with the edges it is cut at. */
    private static List<String> taken(List<CutPiece> pieces) {
        Map<String, List<String>> edges = new LinkedHashMap<>();
        for (CutPiece piece : pieces) {
            for (EdgeAllowance edge : piece.edges()) {
                String words = new PieceEdge(piece.name(), edge.edge()).words();
                edge.taken()
                        .ifPresent(
                                t -> edges.computeIfAbsent(t, k -> new ArrayList<>()).add(words));
            }
        }
        return edges.entrySet().stream()
                .map(
                        e ->
                                "Not told, only taken meanwhile: "
                                        + e.getKey()
                                        + ". Make sure of it before you cut at "
                                        + String.join(", ", e.getValue())
                                        + ".")
                .toList();
    }

    private Table table(List<CutPiece> pieces) {
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (CutPiece piece : pieces) {
            for (EdgeAllowance edge : piece.edges()) {
                PieceEdge named = new PieceEdge(piece.name(), edge.edge());
                rows.add(edge.row(named.heading(), tape));
            }
        }
        return new Table("", "", List.of("Edge", "Allowance", ""), rows);
    }
}
