package secondbolt.hem.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.hem.Written;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

class HemSectionTest {
    private static final String PATTERN =
            "pattern: {pieces: {skirt: {cut: 2, rectangle: [50, 60]}, inner: {cut: {lining: 2},"
                    + " rectangle: [50, 58]}}}";

    private static Hem read(String hem) {
        return Written.of("cm", PATTERN, "hems: {h: " + hem + "}").hems().get("h");
    }

    @Test
    void readsAllItsKeys() {
        Hem hem =
                read(
                        "{on: [inner.bottom], depth: 2, turned: blind, for: coat, from floor: 48,"
                                + " hang: {for: 36 h}, jump: 2.5}");
        assertEquals(Hem.Turned.BLIND, hem.turned());
        assertEquals(Optional.of(Garment.COAT), hem.garment());
        assertEquals(Optional.of(Length.ofMillimetres(480)), hem.fromFloor());
        assertEquals(Optional.of(Hem.Hang.told(36)), hem.hang());
        assertEquals(Optional.of(Length.ofMillimetres(25)), hem.jump());
        assertEquals(Length.ofMillimetres(20), hem.turnedUp(Tape.CENTIMETRE));
    }

    /** 4-H bulletin L-87: the raw edge is turned by a quarter inch before the depth. */
    @Test
    void pressesTheRawEdgeOfAHemTurnedTwiceFirst() {
        assertEquals(
                List.of(Length.ofMillimetres(6), Length.ofMillimetres(20)),
                read("{on: [skirt.bottom], depth: 2, turned: twice}")
                        .pressingDepths(Tape.CENTIMETRE));
        assertEquals(
                List.of(Length.ofInches(1, 4), Length.ofMillimetres(20)),
                read("{on: [skirt.bottom], depth: 2, turned: twice}").pressingDepths(Tape.INCH));
        assertEquals(
                List.of(Length.ofMillimetres(5)),
                read("{on: [skirt.bottom], depth: 0.5, turned: narrow}")
                        .pressingDepths(Tape.CENTIMETRE));
    }

    /** One message each, at the place of the slip: the hem stands on line 3. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "depth: 2, turned: thrice | turned | `once`",
                "depth: 2, turned: twise | turned | `twice`",
                "depth: 1 mm, turned: once | depth | 2 mm to 30 cm",
                "turned: once | {on | from the fold",
                "depth: 2, turned: once, for: skrt | for | `skirt`",
                "depth: 2, turned: once, from floor: 0 | from floor | 5 mm",
                "depth: 2, turned: once, hang: maybe | hang | `yes`, `no`",
                "depth: 2, turned: once, hang: {for: a day} | hang: {for | 24 h",
                "depth: 2, turned: once, hang: {for: 0 h} | hang: {for | 1 h",
                "depth: 2, turned: once, jump: 2 | jump | cut of lining",
                "depth: 2, turned: once, jmp: 2 | jmp | `jump`",
            })
    void tellsASlipOnceAtItsPlace(String slip, String key, String right) {
        String hem = "hems: {h: {on: [skirt.bottom], " + slip + "}}";
        List<String> mistakes = Written.mistakes(PATTERN, hem);
        assertEquals(1, mistakes.size(), mistakes.toString());
        String told = mistakes.get(0);
        assertTrue(told.contains(right), told);
        int column = Integer.parseInt(told.replaceFirst("3:(\\d+) .*", "$1"));
        int at = hem.indexOf(key.startsWith("{") ? key : " " + key) + 1;
        assertTrue(column >= at && column <= at + key.length() + 4, told + " for " + at);
    }

    @Test
    void refusesAHemDeeperThanItsPiece() {
        List<String> mistakes =
                Written.mistakes(
                        "pattern: {pieces: {band: {cut: 1, rectangle: [20, 12]}}}",
                        "hems: {h: {on: [band.bottom], depth: 11.9, turned: once}}");
        assertEquals(List.of(), mistakes);
        mistakes =
                Written.mistakes(
                        "pattern: {pieces: {band: {cut: 1, rectangle: [20, 12]}}}",
                        "hems: {h: {on: [band.bottom, band.top], depth: 25, turned: once}}");
        assertEquals(1, mistakes.size(), mistakes.toString());
        assertTrue(mistakes.get(0).startsWith("3:48 a hem of 25 cm"), mistakes.toString());
        assertTrue(mistakes.get(0).contains("| a depth of less than 12 cm"), mistakes.toString());
    }

    @Test
    void refusesAnEdgeWithoutAName() {
        for (String on : List.of("skirt", "skirt.", "'skirt. '", "skirt.bottom.left")) {
            List<String> mistakes =
                    Written.mistakes(
                            PATTERN, "hems: {h: {on: [" + on + "], depth: 2, turned: once}}");
            assertEquals(1, mistakes.size(), mistakes.toString());
            assertTrue(mistakes.get(0).startsWith("3:17 "), mistakes.toString());
            assertTrue(
                    mistakes.get(0).contains("an edge of a piece, such as front.hem"),
                    mistakes.toString());
        }
    }
}
