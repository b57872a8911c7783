package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;

/** A name that is spelt amiss is told where it is, whether it is given there or spoken of. */
class MisnamedTest {
    private static final String SOUND =
            """
            # A frock in three tongues.
            title: Kittel
            units: cm
            cloth:
              Bettlaken: {role: main, size: [140, 240], prewash: done}
            designs:
              kort kjole: {uses: [Vorderteil, dos, lomme]}
              lang kjole: {uses: [Vorderteil, dos]}
            make: kort kjole
            cut so far:
              - {piece: lomme, cloth: Bettlaken, at: [20, 20]}
              - {piece: lomme, cloth: Bettlaken, at: [40, 20]}
            pattern:
              sizes: {size: [38, 40], bust: [92, 96]}
              size: 40
              seam allowance: {of: 1, included: false}
              pieces:
                Vorderteil:
                  cut: 1
                  box: [50, 70]
                  edges: {Seitennaht: 60, Armloch: 25}
                  lines: {taille: 40}
                dos:
                  cut: 1
                  box: [50, 70]
                  edges: {côté: 60, emmanchure: 25}
                lomme: {cut: 2, rectangle: [12, 14]}
              seams:
                - [Vorderteil.Seitennaht, dos.côté]
                - [Vorderteil.Seitennaht, dos.côté]
                - [Vorderteil.Armloch, dos.emmanchure]
            alterations:
              - {lengthen: taille, by: 2}
              - {shorten: taille, by: 1}
            closures:
              knapper: {on: Vorderteil.Armloch, buttons: 3, first: 1.5, last: 3, extension: 1.8, button: unknown, holes: upright, laps: right over left}
            """;

    /**
     * A name spelt amiss at one place.
     *
     * @param line where that is
     * @param right how it should be
     * @param amiss how it is spelt there
     */
    private record Slip(int line, String right, String amiss) {
        Mistakes told() {
            List<String> lines = new ArrayList<>(SOUND.lines().toList());
            String was = lines.get(line - 1);
            assertEquals(2, was.split(Pattern.quote(right), 2).length, right);
            lines.set(line - 1, was.replaceFirst(Pattern.quote(right), amiss));
            return read(String.join("\n", lines));
        }
    }

    private static final List<Slip> GIVEN =
            List.of(
                    new Slip(5, "Bettlaken", "Bettlakken"),
                    new Slip(5, "Bettlaken:", "Bettlaken::"),
                    new Slip(18, "Vorderteil", "Vordertiel"),
                    new Slip(18, "Vorderteil", "Vor\"derteil"),
                    new Slip(23, "dos:", "dos::"),
                    new Slip(23, "dos", "ddos"),
                    new Slip(27, "lomme", "lome"),
                    new Slip(21, "Seitennaht", "Seitenaht"),
                    new Slip(21, "Armloch", "Arm\"loch"),
                    new Slip(26, "côté", "cöté"),
                    new Slip(22, "taille", "taile"),
                    new Slip(14, "40", "4O"));

    private static final List<Slip> SPOKEN =
            List.of(
                    new Slip(11, "Bettlaken", "Bettlakken"),
                    new Slip(7, "Vorderteil", "Vordertiel"),
                    new Slip(29, "Vorderteil", "Vorderteill"),
                    new Slip(7, "dos", "ddos"),
                    new Slip(12, "lomme", "lome"),
                    new Slip(29, "Seitennaht", "Seitenaht"),
                    new Slip(30, "côté", "cöté"),
                    new Slip(36, "Armloch", "Armlohc"),
                    new Slip(33, "taille", "tailel"));

    private static Mistakes read(String text) {
        Mistakes mistakes = new Mistakes();
        WrittenProject.read(SourceFile.of("f", text), mistakes);
        return mistakes;
    }

    private static List<Integer> lines(Mistakes mistakes) {
        return mistakes.inOrder().stream().map(m -> m.place().line()).distinct().toList();
    }

    @Test
    void theFrockIsSound() {
        assertEquals(List.of(), WrittenProject.words(read(SOUND)));
    }

    @TestFactory
    Stream<DynamicTest> isToldWhereItIs() {
        return Stream.concat(GIVEN.stream(), SPOKEN.stream())
                .map(
                        slip ->
                                DynamicTest.dynamicTest(
                                        slip.toString(),
                                        () ->
                                                assertEquals(
                                                        List.of(slip.line()),
                                                        lines(slip.told()),
                                                        () ->
                                                                WrittenProject.words(slip.told())
                                                                        .toString())));
    }

    @Test
    void saysWhatSpeaksOfTheOther() {
        assertEquals(
                List.of(
                        "27:5 `lome`, of which nothing speaks, while `lomme` is spoken of in lines 7,"
                                + " 11, 12; one spelling in all places"),
                WrittenProject.words(new Slip(27, "lomme", "lome").told()));
    }

    /** Of two that stand once each nobody knows which is meant: both are told, where one speaks. */
    @Test
    void tellsBothIfEachStandsOnce() {
        assertEquals(
                List.of(
                        "31:28 `dos.emanchure`, which is no edge of dos, while nothing speaks of"
                                + " `emmanchure` in line 26; one spelling in both places"),
                WrittenProject.words(new Slip(31, "emmanchure", "emanchure").told()));
    }

    /** What differs in a figure is another name, not a slip. */
    @Test
    void anotherFigureIsAnotherName() {
        String two = SOUND.replace("    lomme:", "    lomme 1:").replace("lomme", "lomme 2");
        assertEquals(
                List.of(7, 11, 12), lines(read(two.replace("    lomme 2 1:", "    lomme 1:"))));
    }

    /** A note that the next line was joined to hides its key. */
    @ParameterizedTest
    @CsvSource({
        "# A frock in three tongues., title: Kittel",
        "# A frock, title: Kittel",
        "# Three tongues: a frock, title: Kittel"
    })
    void aKeyInANoteIsToldThere(String note, String key) {
        String joined = SOUND.replace("# A frock in three tongues.\ntitle: Kittel", note + key);
        assertEquals(
                List.of(
                        "1:"
                                + (note.length() + 1)
                                + " a key in a note of your own, which is not read; the key on a line"
                                + " of its own"),
                WrittenProject.words(read(joined)));
    }
}
