package secondbolt.dye.take;

import secondbolt.measure.Share;

/**
 * What the colour comes to for the eye where only a share of the fibres takes it: a rough word and
 * no promise.
 *
 * <p>Source: common practice, no source; above nine tenths our own choice.
 */
public enum SeenColour {
    /** Nearly all takes. */
    FULL("near the colour of the dye", 90),
    /** 65 % or more. */
    MEDIUM("a medium tone at most, lighter than on cotton or wool alone", 65),
    /** Above a half. */
    BETWEEN("between pale and medium, heathered", 51),
    /** 35 to 50 %. */
    HEATHERED("pale and heathered", 35),
    /** Less. */
    TINT("a tint only", 0);

    private final String words;
    private final int fromPercent;

    SeenColour(String words, int fromPercent) {
        this.words = words;
        this.fromPercent = fromPercent;
    }

    /** By the share of the fibre that takes. */
    public static SeenColour of(Share taking) {
        for (SeenColour seen : values()) {
            if (taking.compareTo(Share.ofPercent(seen.fromPercent)) >= 0) {
                return seen;
            }
        }
        return TINT;
    }

    /** As a page says it. */
    public String words() {
        return words;
    }

    /** Whether no dark colour comes of it. */
    public boolean isNeverDark() {
        return this == HEATHERED || this == TINT;
    }
}
