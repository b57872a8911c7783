package secondbolt.measure.kitchen;

import java.util.Map;
import secondbolt.measure.Share;

/** Whole numbers of the parts that cups and spoons are marked with. */
final class Parts {
    /** Of twenty-four. */
    private static final Map<Integer, String> SIGNS =
            Map.of(
                    0, "", 3, "⅛", 6, "¼", 8, "⅓", 9, "⅜", 12, "½", 15, "⅝", 16, "⅔", 18, "¾", 21,
                    "⅞");

    private static final int ALL_SIGNS = 24;
    private static final Share HALF = Share.ofRatio(1, 2);
    private static final Share TURNED = Share.ofRatio(-1, 1);

    private Parts() {}

    /** The number of whole steps nearest to a share, halves up. */
    static int nearest(Share share, Share step) {
        return whole(share.dividedBy(step).plus(HALF));
    }

    /** The greatest whole number that is no larger. */
    static int whole(Share share) {
        return -share.times(TURNED).roundedUp();
    }

    /** What is left of a share when another is taken away. */
    static Share less(Share share, Share other) {
        return share.plus(other.times(TURNED));
    }

    /**
     * So many halves, thirds, quarters or eighths: {@code ½}, {@code 1¾}, {@code 2}.
     *
     * @param count of the parts
     * @param ofOne how many of them make one
     */
    static String print(int count, int ofOne) {
        int whole = count / ofOne;
        String sign = SIGNS.get(count % ofOne * ALL_SIGNS / ofOne);
        return whole == 0 && !sign.isEmpty() ? sign : whole + sign;
    }
}
