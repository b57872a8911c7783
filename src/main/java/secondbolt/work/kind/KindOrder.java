package secondbolt.work.kind;

import static secondbolt.work.kind.Part.ASSEMBLE;
import static secondbolt.work.kind.Part.BAND;
import static secondbolt.work.kind.Part.BASTE;
import static secondbolt.work.kind.Part.BIB;
import static secondbolt.work.kind.Part.CENTRE_BACK;
import static secondbolt.work.kind.Part.COLLAR;
import static secondbolt.work.kind.Part.CUFFS;
import static secondbolt.work.kind.Part.FIT_ON;
import static secondbolt.work.kind.Part.FRONT_EDGES;
import static secondbolt.work.kind.Part.GATHER;
import static secondbolt.work.kind.Part.GORES;
import static secondbolt.work.kind.Part.INSIDE_LEGS;
import static secondbolt.work.kind.Part.LINING;
import static secondbolt.work.kind.Part.LINING_IN;
import static secondbolt.work.kind.Part.NECKLINE;
import static secondbolt.work.kind.Part.OUTSIDE_LEGS;
import static secondbolt.work.kind.Part.POCKETS;
import static secondbolt.work.kind.Part.SEAT;
import static secondbolt.work.kind.Part.SHOULDERS;
import static secondbolt.work.kind.Part.SIDE_SEAMS;
import static secondbolt.work.kind.Part.SLEEVES;
import static secondbolt.work.kind.Part.SLEEVE_SEAMS;
import static secondbolt.work.kind.Part.SLITS;
import static secondbolt.work.kind.Part.STRAPS;
import static secondbolt.work.kind.Part.TURN;
import static secondbolt.work.kind.Part.WIDTHS;
import static secondbolt.work.kind.Part.WRISTS;

import java.util.ArrayList;
import java.util.List;
import secondbolt.garment.GarmentKind;

/**
 * A published order of making.
 *
 * @param parts in order; between two of which neither needs the other it is advice, not a rule
 * @param source where the order comes from
 */
public record KindOrder(List<Part> parts, String source) {
    private static final String WATSON = "K. H. Watson, Textiles and Clothing, 1907";
    private static final String MEMORY = "from memory; no public text was found";

    /** Copies the parts. */
    public KindOrder {
        parts = List.copyOf(parts);
    }

    /** Where no kind is told: what is cut is sewn. */
    static final KindOrder PLAIN = new KindOrder(List.of(ASSEMBLE), "");

    /**
     * The order for a kind of garment.
     *
     * @param isLined whether it has pieces of lining
     * @param hasBib whether it has a bib, of an apron
     */
    static KindOrder of(GarmentKind kind, boolean isLined, boolean hasBib) {
        return switch (kind) {
            case SHIRT, BLOUSE ->
                    order(
                            WATSON
                                    + ", a shirt waist; Text-Book on Domestic Art: try on before"
                                    + " stitching",
                            POCKETS,
                            SLITS,
                            COLLAR,
                            CUFFS,
                            FRONT_EDGES,
                            BASTE,
                            FIT_ON,
                            CENTRE_BACK,
                            SHOULDERS,
                            NECKLINE,
                            SLEEVES,
                            SIDE_SEAMS,
                            SLEEVE_SEAMS,
                            WRISTS);
            case SKIRT ->
                    order(
                            WATSON + ", a gored skirt",
                            BASTE,
                            FIT_ON,
                            POCKETS,
                            GORES,
                            CENTRE_BACK,
                            SIDE_SEAMS,
                            FRONT_EDGES,
                            LINING,
                            GATHER,
                            BAND,
                            LINING_IN);
            case DRESS -> isLined ? linedBodice() : dress();
            case TROUSERS ->
                    order(
                            "The New Dressmaker, 1921, boys' trousers; from the inside legs on from"
                                    + " memory",
                            FRONT_EDGES,
                            POCKETS,
                            BASTE,
                            FIT_ON,
                            OUTSIDE_LEGS,
                            SIDE_SEAMS,
                            INSIDE_LEGS,
                            SEAT,
                            LINING,
                            GATHER,
                            BAND,
                            LINING_IN);
            case WAISTCOAT ->
                    order(
                            MEMORY,
                            POCKETS,
                            BASTE,
                            FIT_ON,
                            CENTRE_BACK,
                            SHOULDERS,
                            FRONT_EDGES,
                            NECKLINE,
                            LINING,
                            LINING_IN,
                            TURN,
                            SIDE_SEAMS);
            case COAT ->
                    order(
                            MEMORY,
                            POCKETS,
                            COLLAR,
                            CUFFS,
                            BASTE,
                            FIT_ON,
                            CENTRE_BACK,
                            SHOULDERS,
                            SIDE_SEAMS,
                            FRONT_EDGES,
                            NECKLINE,
                            SLEEVE_SEAMS,
                            SLEEVES,
                            WRISTS,
                            LINING,
                            LINING_IN);
            case APRON -> hasBib ? apronWithBib() : apron();
            case SMOCK ->
                    order(
                            MEMORY,
                            POCKETS,
                            COLLAR,
                            CUFFS,
                            BASTE,
                            FIT_ON,
                            GATHER,
                            FRONT_EDGES,
                            CENTRE_BACK,
                            SHOULDERS,
                            NECKLINE,
                            SLEEVES,
                            SIDE_SEAMS,
                            SLEEVE_SEAMS,
                            WRISTS);
            case BAG ->
                    order(
                            MEMORY,
                            POCKETS,
                            STRAPS,
                            CENTRE_BACK,
                            SIDE_SEAMS,
                            LINING,
                            LINING_IN,
                            TURN);
            case OTHER -> PLAIN;
        };
    }

    private static KindOrder linedBodice() {
        return order(
                WATSON + ", a lined bodice: the lining is fitted first, the shoulder sewn last",
                LINING,
                POCKETS,
                COLLAR,
                CUFFS,
                BASTE,
                FIT_ON,
                CENTRE_BACK,
                SIDE_SEAMS,
                LINING_IN,
                FRONT_EDGES,
                SHOULDERS,
                NECKLINE,
                SLEEVE_SEAMS,
                SLEEVES,
                WRISTS,
                GATHER,
                BAND);
    }

    private static KindOrder dress() {
        return order(
                WATSON + ", the shirt waist and the skirt; their joining at the waist from memory",
                POCKETS,
                SLITS,
                COLLAR,
                CUFFS,
                FRONT_EDGES,
                BASTE,
                FIT_ON,
                CENTRE_BACK,
                SHOULDERS,
                NECKLINE,
                GORES,
                SIDE_SEAMS,
                SLEEVE_SEAMS,
                SLEEVES,
                WRISTS,
                GATHER,
                BAND);
    }

    private static KindOrder apron() {
        return order(
                "Text-Book on Domestic Art, a gathered apron; pockets and straps from memory",
                POCKETS,
                WIDTHS,
                SIDE_SEAMS,
                GATHER,
                BAND,
                STRAPS);
    }

    private static KindOrder apronWithBib() {
        return order(
                "Scientific Sewing and Garment Cutting, an apron with a bib; pockets from memory",
                POCKETS,
                WIDTHS,
                SIDE_SEAMS,
                GATHER,
                BAND,
                BIB,
                STRAPS);
    }

    private static KindOrder order(String source, Part... parts) {
        List<Part> all = new ArrayList<>(List.of(parts));
        all.add(ASSEMBLE);
        return new KindOrder(all, source);
    }
}
