package secondbolt.closure.row;

import secondbolt.closure.fastening.Fastening;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * How much level cloth a fastener needs above and below its centre.
 *
 * @param fastening what it is
 * @param footRoom what the buttonhole foot needs beyond both ends of a hole
 * @param tape the maker's
 */
record HoleRoom(Fastening fastening, Length footRoom, Tape tape) {
    /** How wide a level hole is worked, with its stitches: common practice, no source. */
    private static final Length LEVEL_WIDTH = Length.ofMillimetres(5);

    /** How far up, of the one with this number. */
    Length above(int number) {
        if (!fastening.hasHoles()) {
            return halfWidth();
        }
        return fastening.holes(number) == Fastening.Holes.UPRIGHT
                ? Fastening.Holes.UPRIGHT.reach().on(tape).plus(footRoom)
                : LEVEL_WIDTH.dividedBy(2).plus(footRoom);
    }

    /** How far down. */
    Length below(int number) {
        if (!fastening.hasHoles()) {
            return halfWidth();
        }
        return fastening.holes(number) == Fastening.Holes.UPRIGHT
                ? fastening.hole().minus(Fastening.Holes.UPRIGHT.reach().on(tape)).plus(footRoom)
                : LEVEL_WIDTH.dividedBy(2).plus(footRoom);
    }

    private Length halfWidth() {
        return fastening.width().map(w -> w.dividedBy(2)).orElse(Length.ZERO);
    }
}
