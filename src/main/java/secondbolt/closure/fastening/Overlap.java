package secondbolt.closure.fastening;

import java.util.Optional;
import secondbolt.garment.WornSide;
import secondbolt.measure.Length;

/**
 * How the two sides of a closure lie over each other, as the maker wrote it.
 *
 * @param extension from the line its fasteners lie on, the centre line of a front or back, to the
 *     finished edge
 * @param laps which side lies over
 * @param worn where on the garment it is
 * @param rowsApart from one row to the other, if there are two
 * @param isHidden whether the holes are worked in a layer below the one that is seen
 * @param drawnTo how far the piece is drawn on whose edge it lies, if that is told
 */
public record Overlap(
        Length extension,
        Laps laps,
        Worn worn,
        Optional<Length> rowsApart,
        boolean isHidden,
        Optional<DrawnTo> drawnTo) {
    /** How far a piece is drawn on whose edge a closure lies. */
    public enum DrawnTo {
        /** All of the extension is part of it. */
        FINISHED_EDGE("finished edge"),
        /** It ends at the line of the fasteners, and the extension is on no piece. */
        CENTRE_LINE("centre line"),
        /** It ends at the seam of a band that is sewn on and has the extension. */
        BAND("band");

        private final String word;

        DrawnTo(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Which side lies over the other, named from the wearer. */
    public enum Laps {
        /** The wearer's right side has the holes. */
        RIGHT_OVER_LEFT("right over left", WornSide.RIGHT, WornSide.LEFT),
        /** The wearer's left side has the holes. */
        LEFT_OVER_RIGHT("left over right", WornSide.LEFT, WornSide.RIGHT),
        /** On a shoulder, a side or a cuff: the front has the holes. */
        FRONT_OVER_BACK("front over back", WornSide.FRONT, WornSide.BACK),
        /** There the back has them. */
        BACK_OVER_FRONT("back over front", WornSide.BACK, WornSide.FRONT);

        private final String word;
        private final WornSide over;
        private final WornSide under;

        Laps(String word, WornSide over, WornSide under) {
            this.word = word;
            this.over = over;
            this.under = under;
        }

        /** As written. */
        public String word() {
            return word;
        }

        /** The side that lies over. */
        public WornSide over() {
            return over;
        }

        /** The side that lies under. */
        public WornSide under() {
            return under;
        }
    }

    /** Where on the garment a closure is. */
    public enum Worn {
        /** Down the front. */
        FRONT("front"),
        /** Down the back. */
        BACK("back"),
        /** At the side. */
        SIDE("side"),
        /** On a cuff or a sleeve's slit. */
        CUFF("cuff"),
        /** On a shoulder, a strap or a tab. */
        SHOULDER("shoulder");

        private final String word;

        Worn(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** How far the working row lies from the centre line toward the edge of the side above. */
    public Length rowOut() {
        return rowsApart.map(apart -> apart.dividedBy(2)).orElse(Length.ZERO);
    }
}
