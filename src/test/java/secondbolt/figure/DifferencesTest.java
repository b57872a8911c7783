package secondbolt.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

class DifferencesTest {
    private static Length mm(long mm) {
        return Length.ofMillimetres(mm);
    }

    private static Figures band(long edgeMm, String holes) {
        return new Figures()
                .inside(
                        "front band",
                        new Figures()
                                .toldLength("edge_length", mm(edgeMm), "front band: the placket")
                                .text("holes", holes));
    }

    private static List<String> lines(Figures before, Figures now, Tape tape) {
        return Differences.between(before, now).stream().map(new FigureWords(tape)::of).toList();
    }

    @Test
    void tellsALengthOnTheMakersTape() {
        assertEquals(
                List.of("front band › edge length: 84 cm -> 86 cm"),
                lines(band(840, "upright"), band(860, "upright"), Tape.CENTIMETRE));
        assertEquals(
                List.of("front band › edge length: 10 in -> 10½ in"),
                lines(
                        new Figures()
                                .inside(
                                        "front band",
                                        new Figures()
                                                .length("edge_length", Length.ofInches(10, 1))),
                        new Figures()
                                .inside(
                                        "front band",
                                        new Figures()
                                                .length("edge_length", Length.ofInches(21, 2))),
                        Tape.INCH));
    }

    @Test
    void knowsACopyOfAPieceAgainByItsNameWhereverItStandsInTheList() {
        Figures front1 = copy("front", 1, 0);
        Figures front2 = copy("front", 2, 180);
        assertEquals(
                List.of("placed › front 2 › turn: 180 -> 0"),
                lines(
                        new Figures().list("placed", List.of(front1, front2)),
                        new Figures()
                                .list("placed", List.of(copy("front", 2, 0), copy("front", 1, 0))),
                        Tape.CENTIMETRE));
    }

    private static Figures copy(String piece, int number, int turn) {
        return new Figures().text("piece", piece).count("copy", number).count("turn", turn);
    }

    @Test
    void tellsWhatIsNewAndWhatIsGone() {
        Figures both = new Figures().text("a", "one").text("b", "two");
        assertEquals(
                List.of("new: b: two"),
                lines(new Figures().text("a", "one"), both, Tape.CENTIMETRE));
        assertEquals(
                List.of("no longer: b: two"),
                lines(both, new Figures().text("a", "one"), Tape.CENTIMETRE));
    }

    @Test
    void tellsOnlyWhatAMakerCallsByAName() {
        List<Difference> told =
                Differences.ofTold(
                        Told.of(List.of(band(840, "upright"))),
                        Told.of(List.of(band(860, "level"))));
        assertEquals(
                List.of(List.of("front band: the placket")),
                told.stream().map(Difference::path).toList());
    }

    /** Two pieces of 1 m² and 2 m² of one cloth are 3 m² of it. */
    @Test
    void addsUpAreasThatAreCalledTheSame() {
        Figures before = new Figures().inside("front", cloth(1)).inside("back", cloth(2));
        Figures now = new Figures().inside("front", cloth(1)).inside("back", cloth(3));
        Difference sum = Differences.ofTold(Told.of(List.of(before)), Told.of(List.of(now))).get(0);
        assertEquals(Optional.of(new Figure.Surface(Optional.of(squareMetres(3)))), sum.before());
        assertEquals(Optional.of(new Figure.Surface(Optional.of(squareMetres(4)))), sum.after());
    }

    private static Figures cloth(int squareMetres) {
        return new Figures().toldArea("main", squareMetres(squareMetres), "cloth of main");
    }

    private static Area squareMetres(int count) {
        return Area.ofComputedSquareMillimetres(count * 1_000_000.0);
    }

    /** Such as two marks for one pocket: each is told when it moves. */
    @Test
    void numbersLengthsThatAreCalledTheSame() {
        Map<String, Figure> before = Told.of(List.of(corners(2)));
        Map<String, Figure> now = Told.of(List.of(corners(5)));
        assertEquals(List.of("the pocket", "the pocket (2)"), List.copyOf(before.keySet()));
        assertEquals(
                List.of(List.of("the pocket (2)")),
                Differences.ofTold(before, now).stream().map(Difference::path).toList());
    }

    private static Figures corners(int secondMm) {
        return new Figures()
                .toldLength("a", mm(1), "the pocket")
                .toldLength("b", mm(secondMm), "the pocket");
    }
}
