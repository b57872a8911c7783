package secondbolt.fit.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.fit.WrittenPattern;

/**
 * A fold takes half the amount to either side of its line (Central Washington University costume
 * text, chapter 17), so that what lies nearest decides how much can be folded away.
 */
class FoldObstacleTest {
    private static List<String> mistakes(String line, String by) {
        return WrittenPattern.cm(
                        """
                        pattern:
                          rights: mine
                          pieces:
                            front:
                              cut: pair
                              lines: {body: %s}
                              rectangle: [30, 60]
                              notches: [{edge: right, at: 25}]
                              marks: [{what: pocket top, at: [8, 30]}]
                              darts: [{edge: right, at: 8, takes: 3, long: 11}]
                        alterations: [{shorten: body, by: %s}]
                        """
                                .formatted(line, by))
                .mistakes();
    }

    /** Derived: the notch 5 cm above the line, at 20 cm, is in a fold of more than 10 cm. */
    @Test
    void tellsOnceHowMuchCanBeFoldedAway() {
        assertEquals(
                List.of(
                        "13 a fold of 32 cm at body of front that goes through the notch on right,"
                                + " the mark pocket top, the dart on right; a fold of at most 10 cm"
                                + " there, or the line where there is room"),
                mistakes("20", "32"));
        assertEquals(List.of(), mistakes("20", "10"));
    }

    @Test
    void asksForAnotherLineWhereNothingCanBeFolded() {
        assertEquals(
                List.of(
                        "13 a fold of 2 cm at body of front that goes through the dart on right;"
                                + " the line where there is room"),
                mistakes("8", "2"));
    }
}
