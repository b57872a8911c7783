package secondbolt.hem;

import java.util.List;
import java.util.Map;
import secondbolt.block.Block;
import secondbolt.hem.giving.HemGiving;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Tape;
import secondbolt.pattern.Seam;
import secondbolt.textile.Cloth;
import secondbolt.worksheet.Once;
import secondbolt.worksheet.Worksheet;

/**
 * The hems of a garment, to be shown.
 *
 * @param results each hem worked out, in the maker's order
 * @param seams of its pieces
 * @param cloths by name; none if they are not told
 * @param tape to print with
 */
record HemWorksheet(
        List<HemResult> results, List<Seam> seams, Map<String, Cloth> cloths, Tape tape) {
    Worksheet worksheet() {
        Once<List<ShownHem>> hems = new Once<>(() -> results.stream().map(this::shown).toList());
        return Worksheet.of("hems", "Hems", () -> HemNotes.of(hems.get(), tape))
                .showing(() -> blocks(hems.get()))
                .printing(() -> HemSheets.of(hems.get(), tape))
                .telling(() -> HemFigures.of(results))
                .giving(HemGiving.of(results, seams, tape));
    }

    private ShownHem shown(HemResult result) {
        return new ShownHem(result, HemFindings.of(result, cloths, tape), tape);
    }

    private List<Block> blocks(List<ShownHem> hems) {
        return hems.stream().flatMap(hem -> HemPage.of(hem, tape).stream()).toList();
    }
}
