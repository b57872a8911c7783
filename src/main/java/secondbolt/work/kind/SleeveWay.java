package secondbolt.work.kind;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import secondbolt.garment.GarmentKind;

/** How sleeves come into a garment: one way or the other, never half of both. */
public enum SleeveWay {
    /** Sewn to the armhole while all is flat; then sleeve and side in one run. From memory. */
    FLAT(
            "Sew the sleeves in flat, before the side and sleeve seams, which are then one run (modern"
                    + " shirts; from memory). To set them in round instead, write `order: ["
                    + "%s, sleeves]` under `work`."),
    /** Made up, and then set in. Source: K. H. Watson, Textiles and Clothing, 1907. */
    ROUND(
            "Make up each sleeve, then set it into the closed armhole (K. H. Watson, Textiles and"
                    + " Clothing, 1907). To sew them in flat instead, write `order: [sleeves, %s]`"
                    + " under `work`.");

    private static final String SLEEVES = Part.SLEEVES.word();
    private static final List<String> SEAMS =
            List.of(Part.SLEEVE_SEAMS.word(), Part.SIDE_SEAMS.word());

    private final String words;

    SleeveWay(String words) {
        this.words = words;
    }

    /**
     * What to do, and how the other way is chosen.
     *
     * @param seams the step of the sleeve or side seams
     */
    String words(String seams) {
        return String.format(Locale.ROOT, words, seams);
    }

    /** The way her own order goes, else the one that is usual for the kind. */
    static SleeveWay of(Optional<GarmentKind> kind, List<String> order) {
        int sleeves = order.indexOf(SLEEVES);
        if (sleeves >= 0 && order.stream().anyMatch(SEAMS::contains)) {
            return order.subList(0, sleeves).stream().anyMatch(SEAMS::contains) ? ROUND : FLAT;
        }
        boolean isFlat =
                kind.filter(k -> k == GarmentKind.SHIRT || k == GarmentKind.SMOCK).isPresent();
        return isFlat ? FLAT : ROUND;
    }
}
