package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.worksheet.Finding;

/** The pattern or the cloth is changed after pinning: what no longer fits is named, no more. */
class ChangedAfterPinningTest {
    private static final String SKIRT =
            """
            title: Try
            units: cm
            cloth:
              sheet: {size: [150, 160], prewash: done, flaws: [{what: stain, at: [70, 60], round: 4}]}
              scrap: {size: [60, 70], prewash: done}
              shade: {role: lining, size: [120, 90], prewash: done}
            lay: {effort: quick}
            designs: {full: {uses: [front, back, sleeve, pocket]}, plain: {uses: [front, back]}}
            make: full
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                front:
                  cut: {main: pair, lining: pair}
                  lines: {body: 30}
                  outline:
                    - {start: [0, 6]}
                    - {edge: neckline, to: [8, 0], through: [[5, 4]]}
                    - {edge: shoulder, to: [20, 4]}
                    - {edge: side, to: [28, 60]}
                    - {edge: hem, to: [0, 60]}
                    - {edge: centre front, to: start}
                back: {cut: 1, fold: left, lines: {body: 30}, rectangle: [27, 60]}
                sleeve: {cut: 2, panel: {top: 30, bottom: 22, along: 40}}
                pocket: {cut: 2, rectangle: [14, 16]}
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nothing | make: full | make: full",
                "longer | make: full | make: full\\nalterations: [{lengthen: body, by: 6}]",
                "shorter | make: full | make: full\\nalterations: [{shorten: body, by: 6}]",
                "wider | make: full | make: full\\nalterations: [{widen: side, by: 4}]",
                "narrower | make: full | make: full\\nalterations: [{narrow: side, by: 2}]",
                "renamed | pocket | Tasche",
                "dropped | pocket: {cut: 2, rectangle: [14, 16]} |",
                "fewer | pocket: {cut: 2 | pocket: {cut: 1",
                "more | pocket: {cut: 2 | pocket: {cut: 5",
                "a pair now | sleeve: {cut: 2 | sleeve: {cut: pair",
                "no lining | {main: pair, lining: pair} | pair",
                "of lining | pocket: {cut: 2 | pocket: {cut: {lining: 2}",
                "another design | make: full | make: plain",
                "cloth renamed | sheet: | Laken:",
                "cloth gone | scrap: {size: [60, 70], prewash: done} |",
                "cloth shorter | [150, 160] | [150, 120]",
                "cloth of unknown size | scrap: {size: [60, 70], prewash: done} | scrap: {size: unknown}",
                "cloth wholly worn | scrap: {size: [60, 70], prewash: done} | scrap: {size: [60, 70], prewash: done, flaws: [{what: worn, at: [30, 35], size: [60, 70]}]}",
                "stain larger | round: 4 | round: 30",
                "folded | effort: quick | effort: quick, layers: folded lengthwise",
                "wide gap | effort: quick | effort: quick, gap: 2",
                "no gap | effort: quick | effort: quick, gap: 0",
                "across | effort: quick | effort: quick, pieces: {sleeve: {grain: across}}",
                "nap | sheet: { | sheet: {nap: one-way,",
                "no allowance | of: 1, included: false | of: 0, included: true",
                "inches | units: cm | units: in",
            })
    void whatNoLongerFitsIsNamedAndTheRestStays(String change, String from, String to) {
        PinnedWork before = PinnedWork.of(SKIRT);
        assertTrue(before.stock().fits(), "the sheet and the scrap are enough");
        String plan = before.written();
        String text = changed(from, to == null ? "" : to);
        PinnedWork after = PinnedWork.of(text, plan);
        after.lay().made().stocks().forEach(s -> assertEquals(List.of(), LaidOnCloth.faults(s)));
        Set<String> told = new TreeSet<>();
        after.told().forEach(f -> told.add(f.code()));
        Map<String, Integer> was = places(before);
        Map<String, Integer> is = places(after);
        int gone =
                was.entrySet().stream()
                        .mapToInt(e -> Math.max(0, e.getValue() - is.getOrDefault(e.getKey(), 0)))
                        .sum();
        if (!change.equals("another design")) {
            int named = (int) after.told().stream().filter(f -> isOfAPlace(f)).count();
            assertEquals(gone, named, change + is + after.told());
        }
        String written = after.written();
        PinnedWork again = PinnedWork.of(text, written);
        // Two that lie near each other still fit with a wider gap, and are only told.
        if (!change.equals("wide gap")) {
            assertEquals(List.of(), again.told(), change + written);
        }
        assertEquals(places(after), places(again), change);
        assertEquals(written, again.written());
        if (change.equals("another design")) {
            assertEquals(before.places(), PinnedWork.of(SKIRT, written).places());
        }
    }

    private static boolean isOfAPlace(Finding finding) {
        return Set.of("pin-let-go", "pin-not-needed", "pin-names-nothing").contains(finding.code());
    }

    private static String changed(String from, String to) {
        String text = SKIRT.replace(from, to.replace("\\n", "\n"));
        if (to.isEmpty()) {
            text = text.replace(", " + from.replaceFirst(":.*", "") + "]", "]");
        }
        if (from.equals("units: cm")) {
            text =
                    text.replaceAll("(?<![0-9.\\w])(\\d+)(?=[],}])", "$1 cm")
                            .replaceAll("cut: (\\d) cm", "cut: $1")
                            .replaceAll(
                                    "(top|bottom|along|round|of): (\\d+)(?= *[,}])", "$1: $2 cm");
        }
        return text;
    }

    /** How many copies of a piece lie at a place; of copies that are alike any may lie there. */
    private static Map<String, Integer> places(PinnedWork work) {
        Map<String, Integer> places = new HashMap<>();
        work.lay()
                .made()
                .stocks()
                .forEach(
                        stock ->
                                stock.laid()
                                        .forEach(
                                                l ->
                                                        places.merge(
                                                                stock.role()
                                                                        + l.piece().piece().name()
                                                                        + stock.spreads()
                                                                                .get(l.cloth())
                                                                                .name()
                                                                        + l.lies().layer()
                                                                        + l.lies().turnDegrees()
                                                                        + " "
                                                                        + Math.rint(
                                                                                l.box().leftMm()
                                                                                        * 100)
                                                                        + " "
                                                                        + Math.rint(
                                                                                l.box().topMm()
                                                                                        * 100),
                                                                1,
                                                                Integer::sum)));
        return places;
    }

    /** A number that is wrong or stands twice is told; the place is kept by another copy. */
    @Test
    void aCopyThatIsNotThereIsTold() {
        String plan = PinnedWork.of(SKIRT).written();
        assertEquals(
                List.of("pin-no-such-copy"),
                PinnedWork.of(SKIRT, plan.replace("pocket 2", "pocket 3")).codes());
        assertEquals(
                List.of("pin-no-such-copy"),
                PinnedWork.of(SKIRT, plan.replace("pocket 2", "pocket 0")).codes());
        for (String tick : List.of("cut: no", "cut: yes")) {
            PinnedWork twice =
                    PinnedWork.of(
                            SKIRT,
                            plan.replace("pocket 2", "pocket 1").replaceFirst("cut: no", tick));
            assertEquals(
                    List.of("pin-copy-twice"),
                    twice.codes().stream().distinct().collect(Collectors.toList()));
        }
    }
}
