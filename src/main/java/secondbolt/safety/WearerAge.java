package secondbolt.safety;

import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Wearer;

/**
 * How old the wearer is, as far as a caution goes by it.
 *
 * @param age if told; never taken as adult when it is not
 * @param isLarge whether the body is larger than that of a child of seven, by what was measured
 */
record WearerAge(Optional<Wearer.Age> age, boolean isLarge) {
    /**
     * The child of seven is at most so tall.
     *
     * <p>Source: EN 14682, as the Finnish Safety and Chemicals Agency states it: seven and younger,
     * or 134 cm and shorter.
     */
    private static final Length TALL = Length.ofMillimetres(1340);

    /**
     * No child's garment is wider round the chest.
     *
     * <p>Source: Nightwear (Safety) Regulations 1985, United Kingdom: a child's nightdress has a
     * chest of at most 91 cm.
     */
    private static final Length WIDE = Length.ofMillimetres(910);

    static WearerAge of(Optional<Wearer> wearer) {
        boolean isTall = isLonger(wearer, BodyMeasure.HEIGHT, TALL);
        boolean isWide =
                isLonger(wearer, BodyMeasure.BUST, WIDE)
                        || isLonger(wearer, BodyMeasure.CHEST, WIDE);
        return new WearerAge(wearer.flatMap(Wearer::age), isTall || isWide);
    }

    private static boolean isLonger(Optional<Wearer> wearer, BodyMeasure what, Length limit) {
        return wearer.flatMap(w -> w.measure(what)).filter(m -> m.isLongerThan(limit)).isPresent();
    }

    /** Whether fewer years are completed, as far as is told. */
    boolean isUnder(int years) {
        return age.filter(a -> a.isUnder(years)).isPresent();
    }

    /** Whether it is not told. */
    boolean isUntold() {
        return age.isEmpty();
    }

    /** Whether it may be a child of seven or less: told so, or not told of a small body. */
    boolean isSmallOrUntold() {
        return isUntold() && !isLarge;
    }
}
