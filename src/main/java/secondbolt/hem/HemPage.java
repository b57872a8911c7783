package secondbolt.hem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.hem.guide.FoldPicture;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Sentence;

/** What the page shows of a hem. */
final class HemPage {
    private HemPage() {}

    static List<Block> of(ShownHem hem, Tape tape) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(hem.name()));
        mostChanged(hem.result()).map(edge -> picture(hem.name(), edge)).ifPresent(blocks::add);
        blocks.add(new Block.Facts(new HemFacts(hem.result(), tape).all()));
        blocks.add(new Block.Rows(HemEdgeRow.onPage(hem.name(), hem.rows())));
        hem.steps().map(Block.Steps::new).ifPresent(blocks::add);
        return blocks;
    }

    /** The edge whose turned part differs most from its line. */
    private static Optional<HemEdge> mostChanged(HemResult result) {
        return result.edges().stream()
                .filter(edge -> edge.turned().isPresent())
                .max(
                        Comparator.comparing(
                                (HemEdge edge) -> edge.surplus().orElse(Length.ZERO).size()));
    }

    private static Block picture(String hem, HemEdge edge) {
        return new Block.Picture(
                FoldPicture.of(hem, edge),
                Sentence.capital(edge.edge().words())
                        + " with the piece above it, reduced: heavy the fold, thin the edge that is"
                        + " turned up with its mirrored ends, dashed the line it lands on. A"
                        + " picture, not for measuring.");
    }
}
