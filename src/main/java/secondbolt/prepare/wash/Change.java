package secondbolt.prepare.wash;

import secondbolt.measure.Length;
import secondbolt.measure.Share;

/**
 * How a length of cloth changed from one measuring to the next.
 *
 * <p>Source: ISO 5077:2007, dimensional change (B − A) / A, A before and B after, as a test house
 * tells it; less than nothing is shrinkage.
 *
 * @param before longer than nothing
 * @param after the same after the wash, dry
 */
public record Change(Length before, Length after) {
    /**
     * A change that matters on a garment: 1 % (our own proposal; "pre-shrunk" as a trade term has
     * meant at most 1 % left, from memory, and under 3 % in an encyclopaedia).
     */
    private static final Share MARK = Share.ofPercent(1);

    /** What a tape can miss between two readings (our own proposal: 2 mm in 250 mm is 0.8 %). */
    public static final Length READING = Length.ofMillimetres(2);

    /** What share is left. */
    public Share left() {
        return Share.left(after, before);
    }

    /** Whether it is more than the mark and more than a tape can miss. */
    public boolean isMoving() {
        Length moved = before.minus(after).size();
        return moved.isLongerThan(before.times(MARK)) && moved.isLongerThan(READING);
    }

    /** Whether what a tape can miss is more than the mark, so that the square cannot tell. */
    public boolean isTooSmallToTell() {
        return READING.isLongerThan(before.times(MARK));
    }

    /** As {@code −4 %}, {@code +2 %} or {@code no change}. */
    public String words() {
        Share change = left().plus(Share.ofPercent(-100));
        int sign = change.compareTo(Share.ofPercent(0));
        return sign == 0
                ? "no change"
                : sign < 0 ? "−" + left().lost().percent(2) : "+" + change.percent(2);
    }
}
