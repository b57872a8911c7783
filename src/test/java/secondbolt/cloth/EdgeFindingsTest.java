package secondbolt.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;

/** Edges that pieces would be laid on though they are more than cloth. */
class EdgeFindingsTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "edges: {top: satin binding} | top",
                "edges: {bottom: snaps} | bottom",
                "edges: {bottom: torn buttonholes, top: heading tape} | top, bottom",
                "edges: {left: Knopfleiste} | left",
                "edges: {left: hem}, trim: {left: 2} | ''",
                "edges: {left: hem}, trim: {left: none} | ''",
                "edges: {left: hem}, trim: none | ''",
                "edges: {left: hem}, trim: {right: 2} | left",
                "edges: {left: selvage, right: Webkante, top: cut, bottom: fold} | ''",
                "edges: {top: hem}, features: [{what: hem, at: [50, 2], size: [100, 4]}] | ''",
                "edges: {top: hem}, flaws: [{what: hole, at: [50, 2], size: [4, 4]}] | top",
            })
    void areAskedAbout(String written, String sides) {
        List<Finding> found =
                ClothFindings.of(
                                Written.result("cm", "  it: {size: [100, 200], " + written + "}"),
                                Tape.CENTIMETRE)
                        .stream()
                        .filter(f -> f.code().equals("cloth-edge-not-trimmed"))
                        .toList();
        List<String> told = sides.isEmpty() ? List.of() : List.of(sides.split(", ", -1));
        assertEquals(told, found.stream().map(f -> f.text().split(" ", -1)[1]).toList());
    }
}
