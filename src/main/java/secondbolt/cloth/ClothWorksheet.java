package secondbolt.cloth;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.block.Block;
import secondbolt.draw.Drawing;
import secondbolt.figure.Figures;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** The cloths of a project, worked out. */
public final class ClothWorksheet {
    private final List<ClothResult> results;
    private final Tape tape;

    private ClothWorksheet(List<ClothResult> results, Tape tape) {
        this.results = results;
        this.tape = tape;
    }

    /** Works out the cloths of a project that is measured with this tape. */
    public static ClothWorksheet of(Map<String, Cloth> cloths, Tape tape) {
        return new ClothWorksheet(
                cloths.entrySet().stream()
                        .map(e -> ClothCalculation.work(e.getKey(), e.getValue()))
                        .toList(),
                tape);
    }

    /** Each cloth worked out, in the order written; other topics go on from here. */
    public List<ClothResult> results() {
        return results;
    }

    /** Its page, sheets and figures. */
    public Worksheet worksheet() {
        return Worksheet.of("cloth", "The cloth", new Notes(findings(), assumed(), open()))
                .showing(() -> List.of(new Block.Own("cloth", view(), pictures())))
                .printing(this::sheets)
                .telling(this::figures);
    }

    Object view() {
        return ClothPage.view(results, tape);
    }

    Map<String, Drawing> pictures() {
        Map<String, Drawing> pictures = new LinkedHashMap<>();
        for (int i = 0; i < results.size(); i++) {
            String name = ClothPage.picture(i);
            ClothDrawing.of(results.get(i), tape).ifPresent(d -> pictures.put(name, d));
        }
        return pictures;
    }

    List<Sheet> sheets() {
        return List.of();
    }

    List<Finding> findings() {
        return results.stream().flatMap(r -> ClothFindings.of(r, tape).stream()).toList();
    }

    List<Assumed> assumed() {
        return results.stream().flatMap(r -> ClothGaps.assumed(r, tape).stream()).toList();
    }

    List<Open> open() {
        return results.stream().flatMap(r -> ClothGaps.open(r, tape).stream()).toList();
    }

    Figures figures() {
        Figures figures = new Figures();
        for (ClothResult result : results) {
            figures.inside(result.name(), ClothFigures.of(result, results));
        }
        return figures;
    }
}
