package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import secondbolt.block.Block;
import secondbolt.garment.Role;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/** Every role a piece is cut of has its cloth, and no cloth is laid with pieces of another role. */
class RolesOfClothTest {
    private static final String COLLAR =
            """
            pattern:
              seam allowance: {of: 0, included: true}
              pieces:
                collar: {cut: {main: 2, interfacing: 1}, rectangle: [40, 10]}
            lay: {gap: 0}
            """;
    private static final String MAIN = "sheet: {size: [100, 80], prewash: done}";
    private static final String SCRAP =
            "scrap: {role: interfacing, size: [50, 30], prewash: done%s}";

    private static List<String> texts(LayResult result) {
        return LayFindings.of(result, Tape.CENTIMETRE).stream().map(Finding::text).toList();
    }

    @Test
    void piecesCutOfInterfacingAreLaidOnTheClothOfThatRole() {
        String cloth = "cloth: {" + MAIN + ", " + SCRAP.formatted("") + "}\n";
        LayResult result = LayText.result(cloth + COLLAR);
        List<StockLay> stocks = result.made().stocks();
        assertEquals(
                List.of(Role.MAIN, Role.INTERFACING), stocks.stream().map(StockLay::role).toList());
        assertEquals("scrap", stocks.get(1).cloths().get(0).name());
        assertEquals(2, stocks.get(0).laid().size());
        assertEquals(1, stocks.get(1).laid().size());
        assertTrue(result.made().fits());
        assertEquals(List.of(), LaidOnCloth.faults(stocks.get(1)));
        assertFalse(texts(result).toString().contains("No cloth"), texts(result).toString());
    }

    @Test
    void interfacingTooSmallForItsPiecesStopsTheMaker() {
        String cloth = "cloth: {" + MAIN + ", " + SCRAP.formatted("").replace("50", "30") + "}\n";
        LayResult result = LayText.result(cloth + COLLAR);
        assertFalse(result.made().fits());
        Finding told = LayText.told(result, "lay-no-room");
        assertTrue(told.text().startsWith("There is no room found for"), told.text());
        assertEquals(Finding.Level.STOP, told.level());
        assertEquals(new Subject.Stock(Role.INTERFACING), told.about());
    }

    @Test
    void piecesMayLieAnyWayOnNonwovenInterfacingAlone() {
        String narrow = SCRAP.formatted("").replace("[50, 30]", "[12, 45]");
        String cloth = "cloth: {" + MAIN + ", " + narrow + "}\n";
        assertFalse(LayText.result(cloth + COLLAR).made().fits(), "a collar across the grain");
        String nonwoven = "interfacing: {width: 90, nonwoven: yes}\n";
        LayResult result = LayText.result(cloth + COLLAR + nonwoven);
        assertTrue(result.made().fits());
        String swapped = cloth.replace("[100, 80]", "[30, 80]");
        assertFalse(LayText.result(swapped + COLLAR + nonwoven).made().stocks().get(0).fits());
    }

    @Test
    void interfacingIsBoughtByItsOwnWidthsWhetherItsClothIsToldOrNot() {
        String cloth = "cloth: {" + MAIN + ", " + SCRAP.formatted("") + "}\n";
        for (String text : List.of("cloth: {" + MAIN + "}\n", cloth)) {
            Set<Length> widths =
                    LayText.result(text + COLLAR).made().bolts().stream()
                            .filter(bolt -> bolt.role() == Role.INTERFACING)
                            .map(BoltLength::width)
                            .collect(Collectors.toSet());
            assertEquals(Set.of(Length.ofMillimetres(500), Length.ofMillimetres(900)), widths);
        }
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void theRoleARemedyAsksForIsOneAClothMayHave(Role role) {
        String other = role == Role.MAIN ? "lining" : "main";
        String pattern = COLLAR.replace("{main: 2, interfacing: 1}", "{" + role + ": 1}");
        LayResult without =
                LayText.result(
                        "cloth: {sheet: {role: " + other + ", size: [100, 80]}}\n" + pattern);
        String remedy = LayText.told(without, "lay-role-without-cloth").remedy();
        String asked = "role: " + role;
        assertTrue(remedy.endsWith("`" + asked + "`."), remedy);
        LayResult with =
                LayText.result(
                        "cloth: {sheet: {"
                                + asked
                                + ", size: [100, 80], prewash: done}}\n"
                                + pattern);
        assertEquals(role, with.made().stocks().get(0).role());
        assertEquals(1, with.made().stocks().get(0).laid().size());
        assertTrue(with.made().bolts().stream().allMatch(bolt -> bolt.role() == role));
    }

    @Test
    void aDesignIsNotWeighedAgainstWhatLiesBetween() {
        String cloth =
                "cloth: {"
                        + MAIN.replace("}", ", weight: 150 g/m2}")
                        + ", "
                        + SCRAP.formatted(", weight: 40 g/m2")
                        + "}\n";
        String designs =
                "designs: {one: {uses: [collar], suits: {weight: [120 g/m2, 220 g/m2]}},"
                        + " two: {uses: [collar]}}\n";
        LayResult result = LayText.result(cloth + COLLAR + designs);
        List<Block> blocks = new DesignRows(result, Tape.CENTIMETRE).blocks();
        String told = blocks.get(1).toString();
        assertTrue(told.contains("own=suits: "), () -> "the main cloth alone: " + told);
    }
}
