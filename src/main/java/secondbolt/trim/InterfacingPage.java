package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.block.Table.Cell;
import secondbolt.garment.Role;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.plan.Interfacing;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.fused.PreShrinking;
import secondbolt.trim.fused.StiffenedPiece;
import secondbolt.trim.guide.FusingWords;
import secondbolt.worksheet.Sentence;

/**
 * What the page shows of the interfacing.
 *
 * @param result worked out
 * @param tape to print with
 */
record InterfacingPage(InterfacingResult result, Tape tape) {
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Interfacing"));
        blocks.add(new Block.Facts(facts()));
        if (result.pieces().isEmpty()) {
            return blocks;
        }
        blocks.add(new Block.Rows(pieces("Pieces of interfacing")));
        if (!result.bolts().isEmpty() && result.own().isEmpty()) {
            blocks.add(new Block.Rows(lengths()));
        }
        if (isShrinkingOpen()) {
            blocks.add(new Block.Rows(shrinking()));
        }
        if (result.isFused()) {
            blocks.add(new Block.Steps(FusingWords.steps(result)));
        }
        return blocks;
    }

    /**
     * Whether what is published on shrinking it matters: nobody has shrunk it, and no leaflet says.
     */
    boolean isShrinkingOpen() {
        Interfacing told = result.interfacing();
        boolean mayBeFusible = told.kind().isEmpty() || told.isFusible();
        return mayBeFusible
                && !told.isPreShrunk().orElse(false)
                && told.leaflet().preShrink().isEmpty()
                && !result.pieces().isEmpty();
    }

    List<Fact> facts() {
        Interfacing told = result.interfacing();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("Kind", told.kind().map(Interfacing.Kind::word).orElse("not told yet")));
        told.weight().ifPresent(weight -> facts.add(new Fact("Weight", Both.of(tape, weight))));
        if (!result.own().isEmpty()) {
            facts.add(Fact.of("Cut of your own cloth", String.join(", ", result.own())));
        }
        if (result.isFused()) {
            facts.add(
                    Fact.of(
                            "The cloth bears at most",
                            result.heat()
                                    .map(
                                            heat ->
                                                    heat.ironWords()
                                                            + " (by "
                                                            + heat.ironBy()
                                                            + "; ISO 3758:2012)")
                                    .orElse(
                                            "not known: no heat is told until its fibre is known")));
            facts.add(Fact.of("Pressed", FusingWords.pressed(result)));
        }
        shrunk().ifPresent(facts::add);
        facts.add(
                Fact.of(
                        "Grain",
                        told.isNonwoven()
                                ? "none: pieces lie any way"
                                : "as the piece's own; a kind that stretches across, only across"
                                        + " (American Sewing Guild, fusing facts)"));
        return facts;
    }

    private Optional<Fact> shrunk() {
        Interfacing told = result.interfacing();
        if (told.isPreShrunk().orElse(false)) {
            return Optional.of(Fact.of("Shrunk first", "done already"));
        }
        Optional<Fact> leaflet =
                told.leaflet()
                        .preShrink()
                        .map(
                                first ->
                                        Fact.of(
                                                "Shrunk first",
                                                first
                                                        ? "yes, as its leaflet says"
                                                        : "no, as its leaflet says"));
        boolean isSewnIn = told.kind().filter(Interfacing.Kind.SEWN_IN::equals).isPresent();
        return leaflet.or(
                () ->
                        isSewnIn
                                ? Optional.of(
                                        Fact.of(
                                                "Shrunk first",
                                                "yes, washed as the garment will be (from"
                                                        + " memory)"))
                                : Optional.empty());
    }

    /** The pieces, with what a stiff kind is cut back by. */
    Table pieces(String name) {
        boolean isStiff = result.interfacing().isStiff();
        List<String> head = new ArrayList<>(List.of("Piece", "Cut", "As cut"));
        if (isStiff) {
            head.add("Cut back");
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (StiffenedPiece piece : result.pieces()) {
            List<Cell> row =
                    new ArrayList<>(
                            List.of(
                                    Cell.of(Sentence.capital(piece.name())),
                                    Cell.of(
                                            piece.piece().cuts().get(Role.INTERFACING).amount()
                                                    + piece.piece()
                                                            .fold()
                                                            .map(fold -> ", on the fold")
                                                            .orElse("")),
                                    Cell.of(Both.of(tape, t -> size(piece, t)))));
            if (isStiff) {
                row.add(Cell.of(Both.of(tape, t -> cutBack(piece, t))));
            }
            rows.add(row);
        }
        return new Table(name, "", head, rows);
    }

    private static String size(StiffenedPiece piece, Tape tape) {
        return tape.print(Length.ofComputedMillimetres(piece.box().widthMm()))
                + " × "
                + tape.print(Length.ofComputedMillimetres(piece.box().heightMm()));
    }

    /** What is cut off a piece of a stiff kind: {@code 1 cm all round}, or edge by edge. */
    static String cutBack(StiffenedPiece piece, Tape tape) {
        Map<String, Length> back = piece.cutBack();
        if (back.isEmpty()) {
            return "nothing";
        }
        return piece.cutBackAllRound()
                .map(
                        width ->
                                tape.print(width)
                                        + piece.piece()
                                                .fold()
                                                .map(fold -> " all round but on the fold")
                                                .orElse(" all round"))
                .orElseGet(
                        () ->
                                back.entrySet().stream()
                                        .map(e -> tape.print(e.getValue()) + " at " + e.getKey())
                                        .collect(Collectors.joining(", ")));
    }

    private Table lengths() {
        List<List<Cell>> rows = new ArrayList<>();
        for (BoltLength bolt : result.bolts()) {
            rows.add(
                    List.of(
                            Cell.of(tape, bolt.width()),
                            Cell.of(Both.of(tape, bolt.length(), "too narrow for a piece")),
                            Cell.of(
                                    bolt.toBuy()
                                            .map(buy -> Both.of(tape, t -> t.printToBuy(buy)))
                                            .orElse(Both.words("–")))));
        }
        return new Table(
                "Interfacing by its width",
                "",
                List.of("Width", "The pieces take", "To buy"),
                rows);
    }

    private Table shrinking() {
        return new Table(
                "Shrinking fusible interfacing first",
                "Whether fusible interfacing is shrunk first, its sources dispute; its own leaflet"
                        + " comes before them all. Shrink the cloth in any case, try both on a"
                        + " scrap, and let it cool.",
                List.of("Advice", "Source"),
                PreShrinking.SIDES.stream()
                        .map(side -> List.of(Cell.of(side.advice()), Cell.of(side.sources())))
                        .toList());
    }
}
