package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.design.Remnants;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.kept.LayStore;
import secondbolt.lay.search.SearchObserver;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;

/** What stays over in one piece, worked out once and stored beside the lays. */
class RemnantsTest {
    private static final String ROOMY =
            """
            cloth: {sheet: {size: [100, 80], prewash: done}}
            pattern:
              seam allowance: {of: 0, included: true}
              pieces: {panel: {cut: 1, rectangle: [40, 79]}}
            """;

    /** Two panels of 40 by 79 cm on a sheet that has room for one; remedies are tried. */
    private static final String TIGHT =
            ROOMY.replace("[100, 80]", "[70, 80]").replace("cut: 1", "cut: 2");

    /** Keeps everything in memory, where a test can look at it. */
    private record OpenStore(Map<String, String> kept) implements LayStore {
        static OpenStore empty() {
            return new OpenStore(new TreeMap<>());
        }

        @Override
        public Optional<String> find(String key) {
            return Optional.ofNullable(kept.get(key));
        }

        @Override
        public void keep(String key, String value) {
            kept.put(key, value);
        }

        private static boolean isRemnant(String text) {
            return text.endsWith(" end\n");
        }

        long remnants() {
            return kept.values().stream().filter(OpenStore::isRemnant).count();
        }

        void changeRemnants(UnaryOperator<String> change) {
            kept.replaceAll((key, text) -> isRemnant(text) ? change.apply(text) : text);
        }
    }

    private static LayResult result(String text, OpenStore store) {
        LayDesk desk = new LayDesk(store, 2, SearchObserver.NONE);
        return LayText.result(text, desk, Tape.CENTIMETRE);
    }

    private static Box sheet(Remnants remnants) {
        assertEquals(1, remnants.byCloth().size());
        return remnants.byCloth().get("sheet");
    }

    /** Beside one upright rectangle the largest is one of four strips, over all of the cloth. */
    @Test
    void theRemnantIsTheLargestClearRectangle() {
        LayResult result = result(ROOMY, OpenStore.empty());
        Box panel = result.made().stocks().get(0).laid().get(0).box();
        double acrossMm = Math.max(panel.leftMm(), 1000 - panel.rightMm());
        double alongMm = Math.max(panel.topMm(), 800 - panel.bottomMm());
        double mostMm2 = Math.max(acrossMm * 800, alongMm * 1000);
        assertEquals(mostMm2, sheet(result.made().remnants()).areaMm2(), 0.1);
    }

    @Test
    void onlyWhatIsShownHasARemnant() {
        OpenStore store = OpenStore.empty();
        LayResult result = result(TIGHT, store);
        assertFalse(result.made().fits());
        assertFalse(result.remedies().isEmpty());
        assertEquals(1, store.remnants(), "of the one cloth as it is laid, not of the remedies");
    }

    @Test
    void aStoredRemnantIsTheSame() {
        OpenStore store = OpenStore.empty();
        LayResult first = result(ROOMY, store);
        assertEquals(1, store.remnants());
        assertEquals(first, result(ROOMY, store));
    }

    /** A box on free cloth is believed: that is what shows that it is not worked out again. */
    @Test
    void aStoredRemnantIsTaken() {
        OpenStore store = OpenStore.empty();
        Box over = sheet(result(ROOMY, store).made().remnants());
        double leftMm = over.middle().xMm();
        store.changeRemnants(text -> leftMm + " 100.0 10.0 20.0 end\n");
        assertEquals(new Box(leftMm, 100, 10, 20), sheet(result(ROOMY, store).made().remnants()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.0 0.0 1000.0 800.0 end\n",
                "0.0 700.0 1000.0 200.0 end\n",
                "2000.0 2000.0 10.0 10.0 end\n",
                "100.0 100.0 0.0 0.0 end\n",
                "100.0 100.0 -5.0 10.0 end\n",
                "100.0 100.0 NaN 10.0 end\n",
                "100.0 100.0 Infinity 10.0 end\n",
                "a b c d end\n",
                "100.0 100.0 10.0\n",
                ""
            })
    void aStoredRemnantThatIsNotOnFreeClothIsWorkedOutAnew(String spoilt) {
        OpenStore store = OpenStore.empty();
        LayResult first = result(ROOMY, store);
        store.changeRemnants(text -> spoilt);
        assertEquals(first, result(ROOMY, store));
        assertEquals(1, store.remnants(), "and stored anew");
    }
}
