package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cuts the pieces out of the print, as it were: glues the tiles by their join marks on the pixels,
 * finds each piece by moving it only, and measures its lines. Then the pieces must meet along every
 * seam the maker wrote, by what was measured and not by what was worked out.
 *
 * <p>What was measured is written to {@code target/printed-pieces}, to be read.
 */
class PrintedPiecesTest {
    /** About two pixels, and less than the width of a sharp pencil's line. */
    private static final double WITHIN_MM = 0.2;

    /**
     * What an edge's measured length may be off. Derived: each of its ends by half a pixel of 0.085
     * mm, and as much at every join of two tiles it runs across, of which there are three at most.
     */
    private static final double EDGE_WITHIN_MM = 0.2;

    /** Letters, notches and join marks hide some of the cutting line, never more than this. */
    private static final double CUT_SHARE = 0.95;

    /** Of the sewing line also what runs into the outline before the alterations. */
    private static final double SEWN_SHARE = 0.9;

    private static final Path TOLD = Path.of("target", "printed-pieces");

    private static final String SHAPES =
            """
            title: Shapes
            units: cm
            paper: %s
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                half ring: {cut: 1, ring: {inner: 26, outer: 42, turn: 180}}
                gore: {cut: 6, panel: {top: 9.7, bottom: 31.3, along: 52}}
                yoke:
                  cut: 1
                  outline:
                    - {start: [0, 2]}
                    - {edge: neck, to: [13, 0], through: [[5, 3.1], [10, 2.2]]}
                    - {edge: shoulder, to: [27, 4.5]}
                    - {edge: lower, to: [-1, 15], through: [[22, 16.5], [11, 13]]}
                    - {edge: end, to: start}
                  allowance: {neck: 0.6}
                pouch: {cut: 2, svg: pouch.svg}
            """;

    private static final String POUCH =
            """
            <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="260mm" viewBox="0 0 400 520">
            <path id="mouth" d="M40 60 L360 80"/>
            <path id="bowl" d="M360 80 C420 320 300 480 190 470 S20 300 40 60"/>
            </svg>
            """;

    private static final Map<String, PrintedProject> MEASURED = new HashMap<>();

    @TempDir static Path folder;

    private static PrintedProject demo(String name) throws IOException {
        if (!MEASURED.containsKey(name)) {
            MEASURED.put(name, PrintedProject.demo(name));
        }
        return MEASURED.get(name);
    }

    private static void tell(String name, String words) throws IOException {
        Files.createDirectories(TOLD);
        Files.writeString(TOLD.resolve(name + ".txt"), words + "\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "porch-shirt",
                "blanket-waistcoat",
                "gore-skirt",
                "duvet-smock",
                "check-apron"
            })
    void printsEveryLineOfTheDemosWhereTheWorkingsSay(String name) throws IOException {
        PrintedProject project = demo(name);
        tell(name + "-lines", project.told());
        assertTrue(project.pieces().size() >= 5, project.told());
        project.pieces().forEach(PrintedPiecesTest::assertWhereTheWorkingsSay);
    }

    /**
     * In tiles with gaps between them, where nothing is drawn, and on pages turned by a quarter.
     */
    @ParameterizedTest
    @ValueSource(strings = {"letter", "a3"})
    void printsShapesOfEveryKindWhereTheWorkingsSay(String paper) throws IOException {
        PrintedProject project = PrintedProject.of(shapes(paper), "shapes");
        tell("shapes-" + paper, project.told());
        assertEquals(4, project.pieces().size());
        project.pieces().forEach(PrintedPiecesTest::assertWhereTheWorkingsSay);
    }

    private static Desktop shapes(String paper) {
        return new Desktop(folder.resolve("shapes-" + paper))
                .with("projects/shapes/project.yaml", SHAPES.formatted(paper))
                .with("projects/shapes/pouch.svg", POUCH);
    }

    /** The measuring itself: a print that is off by two in a thousand must not pass. */
    @Test
    void noticesAPrintThatIsOffByTwoInAThousand() throws IOException {
        Desktop desktop = shapes("a4");
        assertThrows(
                AssertionError.class,
                () ->
                        PrintedProject.of(desktop, "shapes", 1.002)
                                .pieces()
                                .forEach(PrintedPiecesTest::assertWhereTheWorkingsSay));
    }

    private static void assertWhereTheWorkingsSay(PrintedPiece piece) {
        assertEquals(List.of(), piece.light(), () -> piece.told());
        assertTrue(piece.cutShare() >= CUT_SHARE, () -> piece.told());
        assertTrue(piece.sewnShare() >= SEWN_SHARE, () -> piece.told());
        assertTrue(piece.cutOffMm().allMatch(off -> off <= WITHIN_MM), () -> piece.told());
        assertTrue(piece.sewnOffMm().allMatch(off -> off <= WITHIN_MM), () -> piece.told());
        piece.cornersOffMm()
                .forEach((corner, off) -> assertEquals(0, off, WITHIN_MM, () -> piece.told()));
        for (String edge : piece.edges()) {
            assertEquals(
                    piece.workedMm(edge),
                    piece.edgeMm(edge),
                    EDGE_WITHIN_MM,
                    piece.name() + "." + edge);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "porch-shirt",
                "blanket-waistcoat",
                "gore-skirt",
                "duvet-smock",
                "check-apron"
            })
    void meetsAlongEverySeam(String name) throws IOException {
        PrintedProject project = demo(name);
        WrittenSeams written = written(name);
        StringBuilder told = new StringBuilder();
        boolean allMeet = true;
        for (WrittenSeams.Seam seam : written.seams()) {
            double first = lengthMm(seam.first(), project, written);
            double second = lengthMm(seam.second(), project, written);
            double over = first - seam.gather() * (second - seam.lapsMm()) - seam.easeMm();
            double within = written.toleranceMm() + seam.edges() * EDGE_WITHIN_MM;
            boolean meets = Math.abs(over) <= within;
            allMeet &= meets;
            told.append(
                    String.format(
                            Locale.ROOT,
                            "%s to %s: %.2f and %.2f mm, %.2f mm over, within %.2f mm: %s%n",
                            words(seam.first()),
                            words(seam.second()),
                            first,
                            second,
                            over,
                            within,
                            meets ? "meets" : "DOES NOT MEET"));
        }
        tell(name + "-seams", told.toString());
        assertTrue(allMeet, told.toString());
        assertTrue(!written.seams().isEmpty(), told.toString());
    }

    private static WrittenSeams written(String name) throws IOException {
        return WrittenSeams.of(Files.readString(Path.of("projects", name, "project.yaml")));
    }

    /** Darts and pleats are sewn up before the seam. */
    private static double lengthMm(
            List<WrittenSeams.Term> side, PrintedProject project, WrittenSeams written) {
        double lengthMm = 0;
        for (WrittenSeams.Term term : side) {
            double takenMm = written.takenMm().getOrDefault(term.key(), 0.0);
            double edgeMm = project.piece(term.piece()).edgeMm(term.edge());
            lengthMm += term.times() * (edgeMm - takenMm);
        }
        return lengthMm;
    }

    private static String words(List<WrittenSeams.Term> side) {
        return String.join(
                " + ", side.stream().map(term -> term.times() + " " + term.key()).toList());
    }

    /** Laid edge on edge, the two sides of a plain seam are sewn equally far from where cut. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "porch-shirt",
                "blanket-waistcoat",
                "gore-skirt",
                "duvet-smock",
                "check-apron"
            })
    void givesBothSidesOfAPlainSeamTheAllowanceThatIsWritten(String name) throws IOException {
        PrintedProject project = demo(name);
        WrittenSeams written = written(name);
        int measured = 0;
        for (WrittenSeams.Seam seam : written.seams()) {
            for (WrittenSeams.Term term : seam.plain().orElse(List.of())) {
                List<Double> widths = project.piece(term.piece()).widthsMm(term.edge());
                assertTrue(!widths.isEmpty(), () -> term.key() + " was nowhere measured");
                for (double width : widths) {
                    assertEquals(written.allowanceMm(term), width, WITHIN_MM, term.key());
                }
                measured += widths.size();
            }
            seam.plain()
                    .ifPresent(
                            sides ->
                                    assertEquals(
                                            written.allowanceMm(sides.get(0)),
                                            written.allowanceMm(sides.get(1)),
                                            1e-9,
                                            () -> "the sides of " + seam + " differ"));
        }
        assertTrue(measured > 1000, "widths measured: " + measured);
    }
}
