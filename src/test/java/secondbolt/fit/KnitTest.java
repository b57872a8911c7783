package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Finding;

/** Openings, bands and ease of cloth that stretches. */
class KnitTest {
    private static List<Finding> findings(String text) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(SourceFile.of("project.yaml", "title: Top\n" + text), mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                .workings("top")
                .worksheets()
                .stream()
                .filter(sheet -> sheet.name().equals("fit"))
                .flatMap(sheet -> sheet.findings().stream())
                .toList();
    }

    private static List<String> codes(String text) {
        return findings(text).stream()
                .map(f -> f.level() + " " + f.code())
                .filter(c -> c.contains("seam") || c.contains("opening") || c.contains("ease"))
                .toList();
    }

    /** A front with a neckline of two straight halves, 17.5 cm each: 35 in all. */
    private static String band(String stretch, String band) {
        return "units: cm\ncloth: {knit: {size: [150, 150], prewash: done"
                + stretch
                + "}}\n"
                + """
                pattern:
                  seam allowance: {of: 0.6, included: false}
                  pieces:
                    front:
                      cut: 2
                      outline:
                        - {start: [0, 0]}
                        - {edge: neckline, to: [17.5, 0]}
                        - {edge: shoulder, to: [25, 4]}
                        - {edge: side, to: [25, 60]}
                        - {edge: hem, to: [0, 60]}
                        - {edge: centre front, to: start}
                """
                + "    neckband: {cut: 1, "
                + band
                + "}\n  seams: [[neckband.seam, 2 front.neckline]]\n";
    }

    /**
     * 35 on 27 is 29.6 % more: 27 × 1.4 = 37.8 reaches, 27 × 1.25 = 33.75 does not. Cut along the
     * grain it is the lengthwise stretch that counts, and interfacing holds it.
     */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "across: 40 %, along: 10 % | box: [27, 5], edges: {seam: 27} | NOTE"
                        + " seam-stretched-on",
                "across: 25 %, along: 10 % | box: [27, 5], edges: {seam: 27} | STOP"
                        + " seam-band-too-short",
                "across: 40 %, along: 10 % | box: [5, 27], edges: {seam: 27} | STOP"
                        + " seam-band-too-short",
                "across: 10 %, along: 40 % | box: [5, 27], edges: {seam: 27} | NOTE"
                        + " seam-stretched-on",
                "across: 10 %, along: 40 % | grain: across, box: [27, 5], edges: {seam: 27} | NOTE"
                        + " seam-stretched-on",
                "across: 40 %, along: 10 % | grain: bias, box: [27, 5], edges: {seam: 27} | STOP"
                        + " seam-band-too-short",
                "across: 40 %, along: 10 % | box: [34.4, 5], edges: {seam: 34.4} | WARNING"
                        + " seam-off-a-little",
                "across: none, along: none | box: [27, 5], edges: {seam: 27} | STOP"
                        + " seam-apart-as-drawn",
            })
    void isJudgedByHowFarTheBandStretches(String stretch, String band, String told) {
        assertEquals(List.of(told), codes(band(", stretch: {" + stretch + "}", band)));
    }

    @Test
    void saysBothLengthsAndTheReach() {
        String text =
                findings(
                                band(
                                        ", stretch: {across: 40 %, along: 10 %}",
                                        "box: [27, 5], edges: {seam: 27}"))
                        .stream()
                        .filter(f -> f.code().equals("seam-stretched-on"))
                        .findFirst()
                        .orElseThrow()
                        .text();
        assertTrue(text.contains("27 cm") && text.contains("35 cm"), text);
        assertTrue(text.contains("37.8 cm"), text);
    }

    @Test
    void doesNotStretchAWovenOrAnInterfacedBand() {
        String drawn = "box: [27, 5], edges: {seam: 27}";
        assertEquals(List.of("STOP seam-apart-as-drawn"), codes(band("", drawn)));
        String interfaced =
                band(", stretch: {across: 40 %}", drawn)
                        .replace("neckband: {cut: 1", "neckband: {cut: {main: 1, interfacing: 1}");
        assertEquals(List.of("STOP seam-apart-as-drawn"), codes(interfaced));
    }

    /** A band left behind by an alteration met as drawn: it is not meant to be stretched. */
    @Test
    void doesNotExcuseABandThatAnAlterationLeftBehind() {
        String text =
                """
                units: cm
                cloth: {knit: {size: [150, 150], prewash: done, stretch: {across: 40 %, along: 40 %}}}
                pattern:
                  seam allowance: {of: 0.6, included: false}
                  pieces:
                    front: {cut: pair, lines: {body: 30}, panel: {top: 20, bottom: 24, along: 60}}
                    band: {cut: 2, rectangle: [4, 60.0333]}
                  seams: [[band.left, front.right]]
                alterations: [{lengthen: body, by: 6}]
                """;
        assertEquals(List.of("STOP seam-apart"), codes(text));
    }

    /** 2 × 23 = 46; stretched by 25 % 57.5, by 20 % 55.2, over a head of 56. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "25 %,NOTE opening-stretches",
        "20 %,STOP opening-too-small",
        "none,STOP opening-too-small"
    })
    void opensAsFarAsItStretches(String across, String told) {
        assertEquals(
                List.of(told),
                codes(
                        """
                        units: cm
                        wearer: {age: adult, measurements: {head: 56}}
                        cloth: {knit: {size: [150, 150], prewash: done, stretch: {across: %s}}}
                        pattern:
                          seam allowance: {of: 0.6, included: false}
                          pieces:
                            front: {cut: 1, rectangle: [23, 60]}
                            back: {cut: 1, rectangle: [23, 60]}
                          openings: [{what: neck, edges: front.top + back.top, over: head}]
                        """
                                .formatted(across)));
    }

    /** 92 - 100 = -8; 92 × 1.4 = 128.8 reaches, 92 × 1.05 = 96.6 does not. No ease is no fault. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "40 %,92,NOTE ease-of-a-knit",
        "5 %,92,WARNING ease-past-the-stretch",
        "40 %,100,",
        "none,100,WARNING ease-too-little"
    })
    void mayBeSmallerThanTheBodyAsFarAsItStretches(String across, int bust, String told) {
        assertEquals(
                told == null ? List.of() : List.of(told),
                codes(
                        """
                        units: cm
                        wearer: {age: adult, measurements: {bust: 100}}
                        cloth: {knit: {size: [150, 150], prewash: done, stretch: {across: %s}}}
                        pattern:
                          finished: {bust: %d}
                          pieces: {front: {cut: 2, rectangle: [23, 60]}}
                        """
                                .formatted(across, bust)));
    }

    /**
     * 100 / 1.05 - 92 = 3.238, 3.25 on the tape: 95.25 × 1.05 = 100.01 goes round 100, 95.2 × 1.05
     * = 99.96 does not. What lacks when it is stretched, 100 - 92 × 1.05 = 3.4, is more than must
     * be added. The rule: finished × (1 + stretch) is at least the widest part it passes.
     */
    @Test
    void asksForNoMoreThanTheLeastThatReachesRoundTheBody() {
        String told =
                findings(
                                """
                                units: cm
                                wearer: {age: adult, measurements: {bust: 100}}
                                cloth: {knit: {size: [150, 150], prewash: done, stretch: {across: 5 %}}}
                                pattern:
                                  finished: {bust: 92}
                                  pieces: {front: {cut: 2, rectangle: [23, 60]}}
                                """)
                        .stream()
                        .filter(f -> f.code().equals("ease-past-the-stretch"))
                        .findFirst()
                        .orElseThrow()
                        .remedy();
        assertTrue(told.contains("at least 3.25 cm"), told);
    }
}
