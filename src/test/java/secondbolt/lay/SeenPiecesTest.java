package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/** What a maker is not advised, and what is not laid. */
class SeenPiecesTest {
    /** Of 100 cm 50 are stained; a panel of 62 seen has no room, and no remedy puts it there. */
    @Test
    void areNeverAdvisedToLieOnAStain() {
        LayResult result =
                LayText.result(
                        """
                        cloth:
                          sheet:
                            size: [100, 70]
                            prewash: done
                            flaws: [{what: rust, at: [75, 35], size: [50, 70], hidden use: yes}]
                        pattern:
                          seam allowance: {of: 1, included: false}
                          pieces: {panel: {cut: 1, rectangle: [60, 60]}}
                        """);
        assertFalse(result.made().fits());
        assertFalse(result.remedies().isEmpty());
        assertTrue(
                result.remedies().stream().noneMatch(r -> r.leftOver().isEmpty()),
                result.remedies().toString());
    }

    @Test
    void areToldWhenNoDesignUsesThem() {
        List<Finding> told =
                LayText.project(
                                """
                                cloth: {sheet: {size: [100, 70], prewash: done}}
                                designs:
                                  plain: {uses: [front]}
                                  with pocket: {uses: [front, pocket]}
                                make: plain
                                pattern:
                                  seam allowance: {of: 1, included: false}
                                  pieces:
                                    front: {cut: 1, rectangle: [40, 50]}
                                    pocket: {cut: 1, rectangle: [10, 10]}
                                    collar: {cut: 1, box: [30, 8]}
                                """,
                                Tape.CENTIMETRE)
                        .workings("shirt")
                        .worksheets()
                        .stream()
                        .flatMap(sheet -> sheet.findings().stream())
                        .filter(f -> f.code().equals("piece-in-no-design"))
                        .toList();
        assertEquals(
                List.of(new Subject.Piece("collar")), told.stream().map(Finding::about).toList());
    }
}
