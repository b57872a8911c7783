package secondbolt.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.cutting.sketch.PicturePiece;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.shape.Box;
import secondbolt.worksheet.Sentence;

/**
 * What the page of the pieces shows.
 *
 * @param result the pieces
 * @param tape to print with
 */
record CuttingPage(CuttingResult result, Tape tape) {
    private static final String PICTURES =
            "Each piece is drawn reduced, its points numbered in the order they are written.";

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (result.rights() == Pattern.Rights.BOUGHT) {
            blocks.add(
                    new Block.Prose(
                            "The pattern is a bought one: its outlines and sheets are for your own"
                                    + " use."));
        }
        blocks.add(new Block.Prose(allowance()));
        if (!result.pieces().isEmpty()) {
            blocks.add(new Block.Prose(PICTURES + dotted()));
        }
        result.pieces().forEach(piece -> blocks.addAll(blocks(piece)));
        if (!result.taped().isEmpty()) {
            blocks.add(new Block.Prose(taped()));
        }
        return blocks;
    }

    private String allowance() {
        boolean included = result.pieces().stream().anyMatch(CutPiece::isIncluded);
        return "Seam allowance "
                + tape.printBoth(result.allowance())
                + (included
                        ? ", included in the outlines as written."
                        : ", added outside the outlines as written.");
    }

    private String taped() {
        return "Known by tape only, so not printed full size: "
                + result.taped().stream()
                        .map(taped -> taped.piece().name())
                        .collect(Collectors.joining(", "))
                + ". Cut them from your own pattern.";
    }

    private List<Block> blocks(CutPiece piece) {
        return List.of(
                new Block.Heading(piece.name()),
                new Block.Picture(PicturePiece.of(piece), caption(piece)),
                new Block.Prose(cut(piece)),
                new Block.Rows(edges(piece)));
    }

    private String dotted() {
        return result.pieces().stream().anyMatch(piece -> piece.before().isPresent())
                ? " Dotted, where a piece is altered: its outline before the alterations."
                : "";
    }

    /** What the first words of the page do not tell of every picture. */
    private static String caption(CutPiece piece) {
        return piece.before().isPresent() ? "Altered, reduced." : "Reduced.";
    }

    private String cut(CutPiece piece) {
        Box box = piece.cut().box();
        return Sentence.capital(piece.instruction())
                + ". The cut piece is "
                + both(box.widthMm())
                + " by "
                + both(box.heightMm())
                + ".";
    }

    private String both(double lengthMm) {
        return tape.printBoth(Length.ofComputedMillimetres(lengthMm));
    }

    private Table edges(CutPiece piece) {
        return new Table(
                "Allowances of " + piece.name(),
                "Allowance along each edge, " + piece.name(),
                List.of("Edge", "Allowance", "What it is"),
                piece.edges().stream().map(edge -> edge.row(edge.edge(), tape)).toList());
    }
}
