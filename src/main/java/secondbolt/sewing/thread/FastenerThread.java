package secondbolt.sewing.thread;

import java.util.List;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.measure.Length;

/**
 * The thread of buttonholes and buttons.
 *
 * @param holes worked by machine
 * @param holesByHand those that must be worked by hand, of which no figure is published here
 * @param buttons sewn on
 * @param others snaps, hooks and ties, of which no figure is published here
 */
public record FastenerThread(int holes, int holesByHand, int buttons, int others) {
    /** None. */
    public static final FastenerThread NONE = new FastenerThread(0, 0, 0, 0);

    /** Of one buttonhole by machine. Source: thread use of a woven shirt, 2015. */
    public static final Length HOLE = Length.ofInches(6, 1);

    /** Of one button sewn on by machine. Source: thread use of a woven shirt, 2015. */
    public static final Length BUTTON = Length.ofInches(11, 2);

    /** Those of all closures. */
    public static FastenerThread of(List<ClosureResult> closures) {
        int holes = 0;
        int byHand = 0;
        int buttons = 0;
        int others = 0;
        for (ClosureResult closure : closures) {
            if (closure.closure().fastening().kind() == Fastening.Kind.BUTTONS) {
                int hands = (int) closure.marks().stream().filter(FastenerMark::byHand).count();
                byHand += hands;
                holes += closure.marks().size() - hands;
                buttons += closure.toBuy();
            } else {
                others += closure.toBuy();
            }
        }
        return new FastenerThread(holes, byHand, buttons, others);
    }

    /** What holes by machine and buttons take together. */
    public Length thread() {
        return HOLE.times(holes).plus(BUTTON.times(buttons));
    }

    /** Whether it leaves any out. */
    public boolean leavesOut() {
        return holesByHand + others > 0;
    }
}
