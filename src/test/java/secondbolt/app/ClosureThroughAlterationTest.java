package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A front of 20 cm that takes its closure only with what alters it: what follows from the
 * alteration is asked of the garment without it, too, where nothing can be fastened.
 */
class ClosureThroughAlterationTest {
    @TempDir Path folder;

    private static final String FRONT =
            """
            title: Vest
            units: cm
            pattern:
              rights: mine
              seam allowance: {of: 1, included: no}
              pieces:
                front:
                  cut: pair
                  lines: {body: 12}
                  outline:
                    - {start: [0, 0]}
                    - {edge: shoulder, to: [20, 0]}
                    - {edge: side, to: [20, 20]}
                    - {edge: hem, to: [0, 20]}
                    - {edge: centre front, to: start}
                back:
                  cut: pair
                  lines: {body: 12}
                  outline:
                    - {start: [0, 0]}
                    - {edge: shoulder, to: [20, 0]}
                    - {edge: side, to: [20, 20]}
                    - {edge: hem, to: [0, 20]}
                    - {edge: centre back, to: start}
                band:
                  cut: 2
                  lines: {body: 12}
                  rectangle: [4, 20]
              seams: [[front.side, back.side]]
            alterations: [%s]
            closures:
            """;

    private static String closure(String name, String on, String spread) {
        return """
                  %s:
                    on: %s
                    extension: 1.8
                    button: {across: 2, thick: 3 mm}
                    holes: upright
                    laps: right over left
                    %s
                """
                .formatted(name, on, spread.replace("; ", "\n    "));
    }

    private Desktop checked(String alterations, String closures, int code) {
        Desktop desktop =
                new Desktop(folder)
                        .with(
                                "projects/vest/project.yaml",
                                FRONT.formatted(alterations) + closures);
        assertEquals(code, desktop.run("check", "projects/vest"), desktop.err());
        return desktop;
    }

    /** Everything that the notebook's pages say. */
    private String pages(Desktop desktop) {
        assertEquals(0, desktop.run("notebook"), desktop.err());
        try (Stream<Path> files = Files.walk(folder.resolve("site"))) {
            StringBuilder all = new StringBuilder();
            for (Path page : files.filter(f -> f.toString().endsWith(".html")).sorted().toList()) {
                all.append(Files.readString(page));
            }
            return all.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest(name = "{2} with {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "{lengthen: body, by: 8} | front.centre front | buttons: 8; first: 2; last: 3",
                "{lengthen: body, by: 8} | front.centre front"
                        + " | buttons: 10; first: {between: [1, 3]}; last: {between: [2, 4]}",
                "{lengthen: body, by: 8} | band.left | buttons: 3; first: 2; last: 19",
                "{lengthen: body, by: 8} | front.centre front | buttons: 1; first: 24",
                "{lengthen: body, by: 8} | front.centre front"
                        + " | largest gap: 2.2; first: 2; last: {between: [19, 25]}",
                "{lengthen: body, by: 4}, {lengthen: body, by: 4}"
                        + " | front.centre front | buttons: 8; first: 2; last: 3",
                "{widen: side, by: 40} | front.hem | buttons: 10; first: 2; last: 3",
                "{lengthen: body, by: 8}, {shorten: body, by: 7}, {lengthen: body, by: 7}"
                        + " | front.centre front | buttons: 8; first: 2; last: 3"
            })
    void fitsWithTheAlterationAndIsAMistakeWithout(String alterations, String on, String spread) {
        String closure = closure("front", on, spread);
        Desktop without = checked("", closure, Secondbolt.REFUSED);
        assertTrue(without.err().contains("mistake: found "), without.err());
        String pages = pages(checked(alterations, closure, 0));
        assertTrue(pages.contains("What follows from the alterations"));
        assertTrue(pages.contains("; without them its buttons do not fit."), pages);
    }

    /** Neither fits without; each has the row it has by itself. */
    @Test
    void keepsTwoClosuresOfWhichNeitherFitsWithout() {
        String both =
                closure("front", "front.centre front", "buttons: 8; first: 2; last: 3")
                        + closure("band", "band.left", "buttons: 3; first: 2; last: 3");
        checked("", both, Secondbolt.REFUSED);
        pages(checked("{lengthen: body, by: 8}", both, 0));
    }
}
