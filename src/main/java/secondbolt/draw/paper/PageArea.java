package secondbolt.draw.paper;

import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.shape.Box;

/**
 * Where things may stand on a page, in true millimetres.
 *
 * @param widthMm of the page as it is read
 * @param heightMm of the page as it is read
 * @param scaleAcross what the correction makes of a millimetre across the page as it is read
 * @param scaleAlong the same along
 */
public record PageArea(double widthMm, double heightMm, double scaleAcross, double scaleAlong) {
    /** Printers reach up to here: a quarter inch. Source: common practice of printer makers. */
    static final double SAFE_MM = Length.ofInches(1, 4).millimetres();

    /** The drawing begins here; the band up to the safe edge holds bars and words. */
    static final double MARGIN_MM = 10;

    /** Whether it is drawn for a printer that is off. */
    public boolean isCorrected() {
        return scaleAcross != 1 || scaleAlong != 1;
    }

    /** Which way a page is read. */
    public enum Way {
        /** Upright, as the printer takes it in. */
        UPRIGHT,
        /** Turned by a quarter. */
        TURNED
    }

    /** The page of a paper, held this way. */
    public static PageArea of(Paper paper, PrintCorrection correction, Way way) {
        double across = paper.across().millimetres();
        double along = paper.along().millimetres();
        return switch (way) {
            case UPRIGHT ->
                    new PageArea(
                            across, along, correction.factorAcross(), correction.factorAlong());
            // The printer takes a turned page in upright: what is read across runs along there.
            case TURNED ->
                    new PageArea(
                            along, across, correction.factorAlong(), correction.factorAcross());
        };
    }

    /** The same; paper from a roll is cut to what a drawing takes. */
    static PageArea of(Paper paper, PrintCorrection correction, Way way, Box frame) {
        double scaledMm =
                switch (way) {
                    case UPRIGHT -> frame.heightMm() * correction.factorAlong();
                    case TURNED -> frame.widthMm() * correction.factorAlong();
                };
        double wholeMm = Math.ceil(scaledMm + 2 * MARGIN_MM);
        return of(paper.cutTo(Length.ofComputedMillimetres(wholeMm)), correction, way);
    }

    double paperMm2() {
        return widthMm * heightMm;
    }

    /** The whole page. */
    Box whole() {
        return inside(0);
    }

    /** What every printer reaches. */
    public Box safe() {
        return inside(SAFE_MM);
    }

    /** What the drawing has to itself. */
    public Box live() {
        return inside(MARGIN_MM);
    }

    private Box inside(double paperMm) {
        return new Box(
                paperMm / scaleAcross,
                paperMm / scaleAlong,
                (widthMm - 2 * paperMm) / scaleAcross,
                (heightMm - 2 * paperMm) / scaleAlong);
    }

    /** A page with this drawn on it. */
    public Page page(String title, Sketch sketch) {
        return new Page(widthMm, heightMm, scaleAcross, scaleAlong, sketch.drawing(title, whole()));
    }
}
