package secondbolt.measure.kitchen;

import java.util.ArrayList;
import java.util.List;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/**
 * A volume in cups and spoons, the largest first.
 *
 * @param cups in twelfths: whole ones, quarters, thirds and halves
 * @param tablespoons whole ones
 * @param teaspoons in eighths
 */
record KitchenMeasure(int cups, int tablespoons, int teaspoons) {
    private static final int TWELFTHS = 12;
    private static final int EIGHTHS = 8;

    /** What measuring cups are marked with, in twelfths, the largest first. */
    private static final List<Integer> MARKS = List.of(9, 8, 6, 4, 3, 0);

    private static final Share HALF = Share.ofRatio(1, 2);
    private static final Share QUARTER = Share.ofRatio(1, 4);
    private static final Share TWO = Share.ofRatio(2, 1);
    private static final Share SIXTEEN = Share.ofRatio(16, 1);

    static KitchenMeasure of(Volume volume, Kitchen kitchen) {
        Share perCup = volume.of(kitchen.cup());
        if (perCup.compareTo(SIXTEEN) >= 0) {
            return new KitchenMeasure(3 * Parts.nearest(perCup, QUARTER), 0, 0);
        }
        Volume step = step(volume, perCup, kitchen);
        int cups = cups(volume.plus(step.times(HALF)).of(kitchen.cup()));
        Share told = Share.ofRatio(cups, TWELFTHS).times(kitchen.cup().of(step));
        int steps = Parts.nearest(Parts.less(volume.of(step), told), Share.WHOLE);
        int eighths = steps * inEighths(step, kitchen);
        int inATablespoon = inEighths(kitchen.tablespoon(), kitchen);
        return new KitchenMeasure(cups, eighths / inATablespoon, eighths % inATablespoon);
    }

    /** How finely so much is measured. */
    private static Volume step(Volume volume, Share perCup, Kitchen kitchen) {
        if (volume.compareTo(kitchen.teaspoon()) < 0) {
            return kitchen.teaspoon().times(Share.ofRatio(1, EIGHTHS));
        }
        if (perCup.compareTo(QUARTER) < 0) {
            return kitchen.teaspoon().times(QUARTER);
        }
        return perCup.compareTo(TWO) < 0 ? kitchen.teaspoon() : kitchen.tablespoon();
    }

    /** Eighths of a teaspoon in a spoon, or in a part of one. */
    private static int inEighths(Volume spoon, Kitchen kitchen) {
        return Parts.whole(spoon.of(kitchen.teaspoon()).times(Share.ofRatio(EIGHTHS, 1)));
    }

    /** The most twelfths that a cup is marked with and that are no more than this. */
    private static int cups(Share perCup) {
        int whole = Parts.whole(perCup);
        int twelfths = Parts.whole(perCup.times(Share.ofRatio(TWELFTHS, 1))) - TWELFTHS * whole;
        int marked = MARKS.stream().filter(mark -> mark <= twelfths).findFirst().orElse(0);
        return TWELFTHS * whole + marked;
    }

    String words() {
        List<String> parts = new ArrayList<>();
        if (cups > 0) {
            parts.add(Parts.print(cups, TWELFTHS) + (cups > TWELFTHS ? " cups" : " cup"));
        }
        if (tablespoons > 0) {
            parts.add(tablespoons + " tbsp");
        }
        if (teaspoons > 0) {
            parts.add(Parts.print(teaspoons, EIGHTHS) + " tsp");
        }
        return parts.isEmpty() ? "less than ⅛ tsp" : String.join(", ", parts);
    }
}
