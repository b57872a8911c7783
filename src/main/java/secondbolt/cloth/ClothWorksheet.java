package secondbolt.cloth;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.draw.Drawing;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Figures;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** The cloths of a project, worked out. */
public final class ClothWorksheet implements Worksheet {
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

    @Override
    public String name() {
        return "cloth";
    }

    @Override
    public String title() {
        return "The cloth";
    }

    @Override
    public Object view() {
        return ClothPage.view(results, tape);
    }

    @Override
    public Map<String, Drawing> pictures() {
        Map<String, Drawing> pictures = new LinkedHashMap<>();
        for (int i = 0; i < results.size(); i++) {
            String name = ClothPage.picture(i);
            ClothDrawing.of(results.get(i), tape).ifPresent(d -> pictures.put(name, d));
        }
        return pictures;
    }

    @Override
    public List<Sheet> sheets() {
        return List.of();
    }

    @Override
    public List<Finding> findings() {
        return results.stream().flatMap(r -> ClothFindings.of(r, tape).stream()).toList();
    }

    @Override
    public List<Assumed> assumed() {
        return results.stream().flatMap(r -> ClothGaps.assumed(r, tape).stream()).toList();
    }

    @Override
    public List<Open> open() {
        return results.stream().flatMap(r -> ClothGaps.open(r, tape).stream()).toList();
    }

    @Override
    public Figures figures() {
        Figures figures = new Figures();
        for (ClothResult result : results) {
            figures.inside(result.name(), ClothFigures.of(result, results));
        }
        return figures;
    }
}
