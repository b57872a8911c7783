package secondbolt.lay.kept;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.lay.placement.AllowedPositions;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.placement.Goal;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * What a store gives back is held to the rules of a fresh lay: here two panels of 20 by 30 cm on
 * cloth 50 by 80 cm, the first upright only, the second at steps of 10 cm along, with a hole and a
 * gap of 5 mm.
 */
class KeptLayTest {
    private static final Outline PANEL = Outline.of(new Box(0, 0, 200, 300));
    private static final List<Container> CLOTH =
            List.of(
                    Container.of(
                            Region.of(new Box(0, 0, 500, 800))
                                    .minus(Region.of(new Box(240, 100, 20, 20)))));
    private static final List<PackingItem> ITEMS =
            List.of(
                    new PackingItem(PANEL, PlacementRule.turned(List.of(0)), 0, 1),
                    new PackingItem(
                            PANEL,
                            List.of(
                                    PlacementRule.turned(0)
                                            .at(
                                                    AllowedPositions.ANY,
                                                    AllowedPositions.steps(0, 100))),
                            0,
                            1));
    private static final String SOUND =
            "0 0 false 0 0.0000000 0.0000000\n1 0 false 0 260.0000000 200.0000000\nend\n";

    private static boolean isTaken(String text) {
        return WrittenLay.read(text, ITEMS.size())
                .filter(new LayProof(ITEMS, CLOTH, 5)::holds)
                .isPresent();
    }

    @Test
    void takesALayThatCouldBeCut() {
        assertTrue(isTaken(SOUND));
        assertTrue(
                isTaken(
                        "1 0 false 0 205.0000000 400.0000000\n0 0 false 0 0.0000000 0.0000000\nend\n"));
        assertTrue(isTaken("end\n"), "whether more would fit is not for this to prove");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                // On the hole, over each edge of the cloth, and far off.
                "0 0 false 0 100.0000000 0.0000000\nend\n",
                "0 0 false 0 -1.0000000 300.0000000\nend\n",
                "0 0 false 0 301.0000000 300.0000000\nend\n",
                "0 0 false 0 0.0000000 501.0000000\nend\n",
                "0 0 false 0 90000000.0000000 0.0000000\nend\n",
                "0 0 false 0 NaN 0.0000000\nend\n",
                "0 0 false 0 0.0000000 Infinity\nend\n",
                "0 0 false 0 1e308 0.0000000\nend\n",
                // On each other, and nearer than the gap.
                "0 0 false 0 0.0000000 350.0000000\n1 0 false 0 100.0000000 400.0000000\nend\n",
                "0 0 false 0 0.0000000 400.0000000\n1 0 false 0 204.0000000 400.0000000\nend\n",
                // Turned, mirrored, off its step.
                "0 0 false 180 200.0000000 300.0000000\nend\n",
                "0 0 false 360 0.0000000 0.0000000\nend\n",
                "0 0 true 0 200.0000000 0.0000000\nend\n",
                "1 0 false 0 0.0000000 250.0000000\nend\n",
                // No such item or cloth, or one item twice.
                "2 0 false 0 0.0000000 0.0000000\nend\n",
                "-1 0 false 0 0.0000000 0.0000000\nend\n",
                "0 1 false 0 0.0000000 0.0000000\nend\n",
                "0 -1 false 0 0.0000000 0.0000000\nend\n",
                "4294967296 0 false 0 0.0000000 0.0000000\nend\n",
                "0 0 false 0 0.0000000 0.0000000\n0 0 false 0 0.0000000 400.0000000\nend\n",
                // Not as it is written.
                "",
                "end",
                "0 0 false 0 0.0000000 0.0000000\n",
                "0 0 false 0 0.0000000 0.0000000\nend\nend\n",
                "0 0 false 0 0.0000000 0.0000000\nend\nmore\n",
                "0 0 false 0 0.0 0.0\nend\n",
                "0 0 no 0 0.0000000 0.0000000\nend\n",
                "+0 0 false 0 0.0000000 0.0000000\nend\n",
                "0 0 false 0 0.0000000\nend\n",
                "0 0 false 0 0.0000000 0.0000000 0\nend\n",
                "0 0 false 0 0.0000000 0.0000000\r\nend\r\n",
                "\u0000",
            })
    void takesNoOther(String text) {
        assertFalse(isTaken(text));
    }

    @Test
    void takesNoTextThatIsTooLongForItsItems() {
        assertFalse(isTaken("0 0 false 0 0.0000000 0.0000000\n".repeat(1_000_000) + "end\n"));
        assertFalse(isTaken(" ".repeat(10_000_000)));
    }

    /** A place that is nearly nothing is written without a sign, and read back as it is. */
    @Test
    void writesWhatItReads() {
        Lay lay = WrittenLay.read(SOUND, 2).orElseThrow();
        assertEquals(SOUND, WrittenLay.of(lay));
        assertEquals("0.0000000", WrittenLay.number(-1e-9));
        assertEquals("0.0000000", WrittenLay.number(-0.0));
    }

    /** A search tells its observer at its end: none is run for what was kept. */
    @Test
    void searchesAnewOnlyWhatCouldNotBeCut() {
        Map<String, String> kept = new TreeMap<>();
        LayStore store =
                new LayStore() {
                    @Override
                    public Optional<String> find(String key) {
                        return Optional.ofNullable(kept.get(key));
                    }

                    @Override
                    public void keep(String key, String value) {
                        kept.put(key, value);
                    }
                };
        AtomicInteger searches = new AtomicInteger();
        LayDesk desk =
                new LayDesk(
                        store,
                        2,
                        (share, bestMm) -> {
                            searches.addAndGet(share == 1 ? 1 : 0);
                            return true;
                        });
        Lay found = lay(desk);
        assertEquals(found, lay(desk));
        assertEquals(1, searches.get());
        kept.replaceAll(
                (key, text) ->
                        text.replaceFirst(
                                "(?m)^0 0 false 0 .*", "0 0 false 0 230.0000000 50.0000000"));
        assertEquals(found, lay(desk));
        assertEquals(2, searches.get());
    }

    private static Lay lay(LayDesk desk) {
        return new LayCache(desk).lay(ITEMS, CLOTH, 5, Effort.QUICK, Goal.SHORT);
    }
}
