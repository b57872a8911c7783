package secondbolt.work.kind;

import static secondbolt.work.kind.Part.ASSEMBLE;
import static secondbolt.work.kind.Part.BAND;
import static secondbolt.work.kind.Part.BASTE;
import static secondbolt.work.kind.Part.COLLAR;
import static secondbolt.work.kind.Part.CUFFS;
import static secondbolt.work.kind.Part.FIT_ON;
import static secondbolt.work.kind.Part.GATHER;
import static secondbolt.work.kind.Part.GORES;
import static secondbolt.work.kind.Part.LINING;
import static secondbolt.work.kind.Part.LINING_IN;
import static secondbolt.work.kind.Part.NECKLINE;
import static secondbolt.work.kind.Part.SEAT;
import static secondbolt.work.kind.Part.SHOULDERS;
import static secondbolt.work.kind.Part.SIDE_SEAMS;
import static secondbolt.work.kind.Part.SLEEVES;
import static secondbolt.work.kind.Part.SLEEVE_SEAMS;
import static secondbolt.work.kind.Part.STRAPS;
import static secondbolt.work.kind.Part.TURN;
import static secondbolt.work.kind.Part.WIDTHS;
import static secondbolt.work.kind.Part.WRISTS;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import secondbolt.task.WorkStep;

/**
 * What a part of the sewing must follow, with what goes wrong otherwise. What stands in a published
 * order and hurts nothing the other way round is no rule.
 *
 * @param way how sleeves come in
 */
record PartRules(SleeveWay way) {
    private static final Set<Part> FITTED =
            EnumSet.of(
                    Part.CENTRE_BACK,
                    SHOULDERS,
                    SIDE_SEAMS,
                    GORES,
                    Part.OUTSIDE_LEGS,
                    Part.INSIDE_LEGS,
                    SEAT);
    private static final Set<Part> STIFFENED =
            EnumSet.of(
                    COLLAR,
                    CUFFS,
                    Part.OPENING_EDGES,
                    Part.POCKETS,
                    Part.STRAPS,
                    BASTE,
                    NECKLINE,
                    WRISTS,
                    BAND);

    /** Sewn onto others whole, with a hem of their own. */
    private static final Set<Part> SEWN_ON =
            EnumSet.of(Part.POCKETS, Part.STRAPS, Part.BIB, ASSEMBLE);

    /** The same step with what it follows, whether the others are there or not. */
    WorkStep on(WorkStep step, Part part) {
        WorkStep ruled = general(step, part);
        return switch (part) {
            case FIT_ON ->
                    after(
                            ruled,
                            "What is not basted falls off the body and cannot be pinned.",
                            BASTE);
            case NECKLINE ->
                    after(
                            ruled,
                            "The neck edge is whole only once the shoulders are sewn.",
                            SHOULDERS,
                            COLLAR);
            case WRISTS -> after(ruled, "A cuff is made up before it is sewn on.", CUFFS);
            case SLEEVES -> sleeves(ruled);
            case SIDE_SEAMS, SLEEVE_SEAMS -> way == SleeveWay.FLAT ? flat(ruled) : ruled;
            case GATHER ->
                    after(ruled, "A seam sewn after gathering crosses the gathers.", WIDTHS, GORES);
            case BAND ->
                    after(
                            ruled,
                            "A band closes over the ends of the seams that run into it, and over the"
                                    + " gathers.",
                            SIDE_SEAMS,
                            GORES,
                            WIDTHS,
                            SEAT,
                            GATHER);
            case STRAPS, BIB -> after(ruled, "It is sewn to the band.", BAND);
            case LINING_IN -> after(ruled, "A lining is sewn up before it is set in.", LINING);
            case TURN -> after(ruled, "There is nothing to turn before both are sewn.", LINING_IN);
            default -> ruled;
        };
    }

    private WorkStep sleeves(WorkStep step) {
        WorkStep ruled =
                after(step, "The armhole is whole only once the shoulder is sewn.", SHOULDERS);
        return way == SleeveWay.ROUND
                ? after(
                        ruled,
                        "Sleeves are set in round once their own seams and the sides are sewn, or sewn"
                                + " in flat before both: never half of each.",
                        SLEEVE_SEAMS,
                        SIDE_SEAMS)
                : ruled;
    }

    private static WorkStep flat(WorkStep step) {
        return after(
                step,
                "Sleeves sewn in flat come before the sleeve and side seams, sleeves set in round"
                        + " after both: never half of each.",
                SLEEVES);
    }

    private static WorkStep general(WorkStep step, Part part) {
        WorkStep ruled =
                step.after("cut", "Only what is cut can be sewn.")
                        .after("mark", "What is not marked cannot be matched.");
        if (part == BASTE || part == FIT_ON || FITTED.contains(part)) {
            ruled =
                    ruled.after(
                            "stay-stitch",
                            "Curved edges stretch while they are handled and tried on.");
            ruled = ruled.after("darts", "A dart is sewn before a seam crosses it.");
            ruled = ruled.after("pleats", "A pleat is laid before a seam crosses it.");
        }
        if (FITTED.contains(part)) {
            ruled =
                    after(
                            ruled,
                            "A seam that is stitched and trimmed cannot be let out: it is tried on"
                                    + " first (K. H. Watson, Textiles and Clothing, 1907).",
                            FIT_ON);
        }
        if (STIFFENED.contains(part)) {
            for (String stiffening : List.of("fuse", "baste interfacing")) {
                ruled =
                        ruled.after(
                                stiffening,
                                "Interfacing goes on while the piece is flat and alone.");
            }
        }
        if (SEWN_ON.contains(part)) {
            ruled =
                    ruled.after(
                            "hem flat pieces",
                            "Once its other edges are sewn down, its own hem cannot be turned.");
        }
        return part == ASSEMBLE ? last(ruled) : ruled;
    }

    private static WorkStep last(WorkStep step) {
        return after(
                step,
                "What is left is sewn once the parts are made.",
                Arrays.stream(Part.values()).filter(p -> p != ASSEMBLE).toArray(Part[]::new));
    }

    private static WorkStep after(WorkStep step, String why, Part... parts) {
        WorkStep ruled = step;
        for (Part part : parts) {
            ruled = ruled.after(part.word(), why);
        }
        return ruled;
    }
}
