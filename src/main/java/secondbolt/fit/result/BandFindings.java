package secondbolt.fit.result;

import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Sentence;

/**
 * What a maker should know of a band of a knit that is sewn to a longer edge.
 *
 * @param check the seam; one side of it is such a band
 * @param tape to print with
 */
public record BandFindings(SeamCheck check, Tape tape) {
    /** One that is shorter, and reaches. */
    public Finding stretchedOn() {
        boolean isFirst = check.after().isFirstShortBand();
        SeamCheck.Sides sides = check.after();
        Length band = isFirst ? sides.first() : sides.second();
        Length edge = isFirst ? sides.second() : sides.first();
        Length reach = isFirst ? sides.firstReach() : sides.secondReach();
        EdgeSum strip = (isFirst ? check.seam().first() : check.seam().second()).value();
        EdgeSum other = (isFirst ? check.seam().second() : check.seam().first()).value();
        return new SeamWords(check, tape)
                .told(
                        "seam-stretched-on",
                        Level.NOTE,
                        Sentence.capital(strip.words())
                                + ", "
                                + tape.printBoth(band)
                                + ", is stretched on to "
                                + other.words()
                                + ", "
                                + tape.printBoth(edge)
                                + "; it stretches as far as "
                                + tape.printBoth(reach)
                                + ".",
                        "Mark both in quarters, pin quarter to quarter, and stretch the band only.");
    }

    /** A band of a knit that does not reach. */
    public Finding tooShort() {
        boolean isFirst = check.after().isFirstShortBand();
        SeamCheck.Sides sides = check.after();
        EdgeSum band = (isFirst ? check.seam().first() : check.seam().second()).value();
        Length edge = isFirst ? sides.second() : sides.first();
        Length reach = isFirst ? sides.firstReach() : sides.secondReach();
        return new SeamWords(check, tape)
                .told(
                        "seam-band-too-short",
                        Level.STOP,
                        Sentence.capital(band.words())
                                + ", "
                                + tape.printBoth(isFirst ? sides.first() : sides.second())
                                + ", is to be stretched on to "
                                + tape.printBoth(edge)
                                + ", but stretches only as far as "
                                + tape.printBoth(reach)
                                + ".",
                        "Cut it longer, or of a cloth that stretches farther.");
    }
}
