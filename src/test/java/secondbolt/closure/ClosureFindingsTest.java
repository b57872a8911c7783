package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;

/**
 * How near an edge a hole may end. A quarter of an inch: K. H. Watson, Textiles and Clothing,
 * American School of Home Economics, 1907. Flat buttons of half an inch by an eighth: holes of five
 * eighths (Extension Bulletin 576, 1965), upright ones from an eighth above the centre.
 */
class ClosureFindingsTest {
    private static final List<String> EDGES =
            List.of("buttonhole-near-edge", "buttonhole-past-edge", "placket-too-short");

    private static Length eighths(int count) {
        return Length.ofInches(count, 8);
    }

    private static List<String> ends(Fastening.Holes holes, int extension, int first, int last) {
        ClosureResult result =
                new Written(eighths(80))
                        .of(Written.buttons(eighths(4), eighths(1), holes))
                        .overlap(Written.overlap(eighths(extension), Overlap.Laps.RIGHT_OVER_LEFT))
                        .count(5)
                        .from(eighths(first), eighths(last))
                        .result(Tape.INCH);
        return ClosureFindings.of(result, Optional.empty()).stream()
                .filter(f -> EDGES.contains(f.code()))
                .map(f -> f.level() + " " + f.text() + " " + f.remedy())
                .toList();
    }

    @Test
    void acceptsUprightHolesAQuarterInchInside() {
        assertEquals(List.of(), ends(Fastening.Holes.UPRIGHT, 6, 3, 6));
    }

    @Test
    void stopsUprightHolesThatCutTheEnds() {
        assertEquals(
                List.of(
                        "STOP The first hole would cut into the top edge. Set the button lower:"
                                + " a `first` larger by ¼ in leaves the usual ¼ in.",
                        "STOP The last hole would run ⅜ in past the bottom edge. Set the last"
                                + " button higher: a `last` larger by ⅝ in leaves the usual ¼ in."),
                ends(Fastening.Holes.UPRIGHT, 6, 1, 1));
    }

    private static List<String> told(Written written) {
        return ClosureFindings.of(written.result(Tape.INCH), Optional.empty()).stream()
                .filter(
                        f ->
                                f.level() == Finding.Level.WARNING
                                        || f.code().equals("placket-too-short"))
                .map(f -> f.level() + " " + f.text() + " " + f.remedy())
                .toList();
    }

    /**
     * Derived: five eighths and a quarter inch twice are nine eighths, three more than there are.
     */
    @Test
    void tellsOnceThatAPlacketIsTooShortForItsHole() {
        assertEquals(
                List.of(
                        "STOP The hole of ⅝ in does not fit between the ends of a placket of ¾"
                                + " in: with the usual ¼ in of cloth to each end ⅜ in are lacking."
                                + " Work a level hole, take a smaller button, or make the placket ⅜"
                                + " in longer."),
                told(
                        new Written(eighths(6))
                                .of(
                                        Written.buttons(
                                                eighths(4), eighths(1), Fastening.Holes.UPRIGHT))
                                .count(1)
                                .firstOnly(eighths(3))));
    }

    @Test
    void tellsAPlaceToMeetThatLiesOnBulk() {
        assertEquals(
                List.of(
                        "WARNING A button must come at waist, 5 in from the top, but pocket seam, 5"
                                + " in from the top, leaves no room there to stitch its hole. Move"
                                + " or trim the bulk of pocket seam, or leave waist out of `meet`"
                                + " and let the buttons keep clear of it; or work number 3 by"
                                + " hand."),
                told(
                        new Written(eighths(80))
                                .of(
                                        Written.buttons(
                                                eighths(4), eighths(1), Fastening.Holes.UPRIGHT))
                                .count(5)
                                .from(eighths(8), eighths(8))
                                .meet(new PlacketSpot(eighths(40), "waist", eighths(2)))
                                .bulk(new PlacketSpot(eighths(40), "pocket seam", eighths(2)))));
    }

    @Test
    void cautionsOfUprightHolesNearTheEnds() {
        assertEquals(
                List.of(
                        "CAUTION The first hole leaves only ⅛ in of cloth to the top edge. Set the"
                                + " button lower: a `first` larger by ⅛ in leaves the usual ¼ in."),
                ends(Fastening.Holes.UPRIGHT, 6, 2, 8));
    }

    @Test
    void stopsLevelHolesOnTheEdges() {
        assertEquals(
                List.of(
                        "STOP The first hole would cut into the top edge. Set the button lower:"
                                + " a `first` larger by ¼ in leaves the usual ¼ in.",
                        "STOP Each level hole would run ⅛ in past the finished edge. Widen the"
                                + " extension on both sides, and the facing with it: an extension"
                                + " larger by ⅜ in leaves the usual ¼ in."),
                ends(Fastening.Holes.LEVEL, 0, 0, 8));
        assertEquals(List.of(), ends(Fastening.Holes.LEVEL, 6, 2, 2));
    }
}
