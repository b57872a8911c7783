package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import secondbolt.worksheet.Finding;

/** The lengthen line is taken off each piece in turn; that piece must be named. */
class LeftOutTest {
    private static final Pattern PIECE = Pattern.compile("^    ([a-z][a-z ]*):(?: \\{.*)?$");
    private static final Pattern LINES = Pattern.compile("(?:lines: \\{[^}]*\\},? ?)");

    private static final String SKIRT =
            """
            title: Skirt with facing and placket
            units: cm
            pattern:
              pieces:
                front: {cut: 1, lines: {skirt: 30}, panel: {top: 36, bottom: 60, along: 62}}
                back: {cut: pair, lines: {skirt: 30}, rectangle: [24, 63.15]}
                facing: {cut: pair, lines: {skirt: 30}, rectangle: [4, 63.15]}
                placket: {cut: 1, lines: {skirt: 30}, rectangle: [3, 63.15]}
              seams:
                - [front.right, back.left]
                - [back.right, facing.left]
                - [facing.right, placket.left]
            alterations: [{lengthen: skirt, by: 3}]
            """;
    private static final String TROUSERS =
            """
            title: Trousers with waistband
            units: cm
            pattern:
              pieces:
                front: {cut: pair, lines: {leg: 60}, rectangle: [30, 104]}
                back: {cut: pair, lines: {leg: 61}, rectangle: [34, 104]}
                side strip: {cut: pair, lines: {leg: 60}, rectangle: [3, 104]}
                waistband: {cut: 1, rectangle: [128, 4]}
              seams:
                - [front.right, side strip.left]
                - [side strip.right, back.left]
                - [back.right, front.left]
                - [waistband.top, 2 front.top + 2 back.top]
            alterations: [{shorten: leg, by: 4}]
            """;
    private static final String JACKET =
            """
            title: Jacket with facing and lining
            units: in
            pattern:
              pieces:
                front: {cut: pair, lines: {body: 18}, rectangle: [11, 24]}
                back: {cut: 1, fold: left, lines: {body: 18}, rectangle: [10, 24]}
                collar end: {cut: pair, rectangle: [3, 2]}
                facing: {cut: pair, lines: {body: 20}, rectangle: [4, 26]}
                front lining: {cut: {lining: pair}, lines: {body: 18}, rectangle: [7, 26]}
                back lining: {cut: {lining: 1}, fold: left, lines: {body: 18}, rectangle: [10, 26]}
              seams:
                - [front.left + collar end.right, facing.left]
                - [front.right, back.right]
                - [facing.right, front lining.left]
                - [front lining.right, back lining.right]
            alterations: [{lengthen: body, by: 1 1/4}]
            """;
    private static final String PINAFORE =
            """
            title: Pinafore
            units: cm
            pattern:
              pieces:
                bib: {cut: 1, lines: {bodice: 10}, rectangle: [24, 22]}
                back: {cut: pair, lines: {bodice: 15, skirt: 50}, rectangle: [26, 80]}
                skirt: {cut: 1, lines: {skirt: 20}, rectangle: [40, 58]}
                bib lining: {cut: 1, lines: {bodice: 10}, rectangle: [24, 22]}
              seams:
                - [bib.right + skirt.right, back.left]
                - [bib.left, bib lining.left]
            alterations:
              - {lengthen: bodice, by: 1.5}
              - {lengthen: skirt, by: 4}
            """;
    private static final String BODICE =
            """
            title: Bodice with peplum
            units: in
            pattern:
              pieces:
                front: {cut: pair, lines: {waist: 10}, panel: {top: 10, bottom: 9, along: 16}}
                side panel: {cut: pair, lines: {waist: 10}, panel: {top: 6, bottom: 5, along: 16}}
                back: {cut: 1, lines: {waist: 10}, panel: {top: 18, bottom: 17, along: 16}}
                peplum: {cut: 1, lines: {peplum: 3}, rectangle: [45, 6]}
                peplum end: {cut: pair, lines: {peplum: 3}, rectangle: [3, 6]}
              seams:
                - [front.right, side panel.left]
                - [side panel.right, back.left]
                - [peplum.right, peplum end.left]
                - [peplum.top, 2 front.hem + 2 side panel.hem + back.hem]
            alterations:
              - {shorten: waist, by: 3/4}
              - {lengthen: peplum, by: 1/2}
            """;

    static Stream<String> projects() throws IOException {
        return Stream.of(
                Files.readString(Path.of("projects/porch-shirt/project.yaml")),
                Files.readString(Path.of("projects/blanket-waistcoat/project.yaml")),
                Files.readString(Path.of("projects/gore-skirt/project.yaml")),
                Files.readString(Path.of("projects/duvet-smock/project.yaml")),
                SKIRT,
                TROUSERS,
                JACKET,
                PINAFORE,
                BODICE);
    }

    @ParameterizedTest
    @MethodSource("projects")
    void meetsWithAllItsLines(String project) {
        WrittenPattern whole = WrittenPattern.of(project);
        assertEquals(List.of(), whole.mistakes());
        assertEquals(List.of(), whole.told(Finding.Level.STOP));
        assertEquals(List.of(), whole.told(Finding.Level.WARNING));
    }

    @ParameterizedTest
    @MethodSource("projects")
    void namesThePieceWhoseLineIsGone(String project) {
        List<String> lines = project.lines().toList();
        String piece = "";
        int taken = 0;
        for (int i = 0; i < lines.size(); i++) {
            Matcher named = PIECE.matcher(lines.get(i));
            piece = named.matches() ? named.group(1) : piece;
            if (LINES.matcher(lines.get(i)).find()) {
                List<String> without = new ArrayList<>(lines);
                without.set(i, LINES.matcher(lines.get(i)).replaceFirst(""));
                isNamed(piece, WrittenPattern.of(String.join("\n", without) + "\n"));
                taken++;
            }
        }
        assertTrue(taken >= 1, "lines taken off: " + taken);
    }

    /** The only piece with a line is told as a mistake of the alteration. */
    private static void isNamed(String piece, WrittenPattern found) {
        boolean stopped =
                found.coded("seam-apart").stream()
                        .anyMatch(text -> text.contains(" " + piece + " was left out"));
        boolean mistaken =
                found.mistakes().stream()
                        .anyMatch(
                                text ->
                                        text.contains("no piece carries")
                                                && text.contains("`" + piece + "`"));
        assertTrue(stopped || mistaken, piece + ": " + found.findings() + found.mistakes());
    }

    @Test
    void saysWhereTheLineBelongs() {
        WrittenPattern found =
                WrittenPattern.of(
                        SKIRT.replace(
                                "placket: {cut: 1, lines: {skirt: 30},", "placket: {cut: 1,"));
        assertTrue(
                found.coded("seam-apart").get(0).contains("`lines: {skirt: 30}` to placket"),
                found.coded("seam-apart").toString());
    }

    @Test
    void namesTheFacingAndNotTheCollarThatNeverCarriedTheLine() {
        WrittenPattern found =
                WrittenPattern.of(
                        JACKET.replace(
                                "facing: {cut: pair, lines: {body: 20},", "facing: {cut: pair,"));
        assertTrue(
                found.coded("seam-apart").get(0).contains(" facing was left out"),
                found.coded("seam-apart").toString());
    }

    /** The back has 2.5 of its own where the front has 1.5: 1 cm of difference, and no `widen`. */
    @Test
    void namesThePieceThatHasAnAmountOfItsOwn() {
        String coat =
                """
                title: Coat
                units: cm
                pattern:
                  pieces:
                    front: {cut: pair, lines: {body: 30}, rectangle: [26, 70]}
                    back: {cut: 1, fold: left, lines: {body: 30}, rectangle: [26, 70]}
                  seams: [[front.right, back.right]]
                alterations:
                  - {widen: right, by: 4}
                  - {lengthen: body, by: 1.5, pieces: {back: 2.5}}
                """;
        String told = WrittenPattern.of(coat).coded("seam-apart").get(0);
        assertTrue(told.contains("gives back 2.5 cm of its own"), told);
        assertFalse(told.contains("widen"), told);
        // The longer side first, with 1 cm of ease: then it meets.
        String join = "{join: [back.right, front.right], ease: 1}";
        assertTrue(told.contains("`" + join + "`"), told);
        WrittenPattern mended = WrittenPattern.of(coat.replace("[front.right, back.right]", join));
        assertEquals(List.of(), mended.coded("seam-apart"));
        assertEquals(
                List.of(),
                WrittenPattern.of(coat.replace(", pieces: {back: 2.5}", "")).coded("seam-apart"));
    }

    /** 4 cm over two sleeves: 2 cm round each wrist; the cuff lacks them, and no line helps. */
    @Test
    void aCuffIsNotToldToCarryALine() {
        WrittenPattern shirt =
                WrittenPattern.of(
                        """
                        title: Shirt
                        units: cm
                        pattern:
                          pieces:
                            sleeve:
                              cut: pair
                              lines: {sleeve: 20}
                              outline:
                                - {start: [0, 0]}
                                - {edge: top, to: [36, 0]}
                                - {edge: front seam, to: [36, 45]}
                                - {edge: wrist, to: [0, 45]}
                                - {edge: back seam, to: start}
                            cuff: {cut: 2, rectangle: [36, 6]}
                          seams: [[sleeve.wrist, cuff.top], [sleeve.front seam, sleeve.back seam]]
                        alterations:
                          - {lengthen: sleeve, by: 2}
                          - {widen: [front seam, back seam], by: 4}
                        """);
        String told = String.join("", shirt.coded("seam-apart"));
        assertTrue(told.contains("followed `widen front seam and back seam`; cuff was"), told);
        assertFalse(told.contains("line"), told);
    }
}
