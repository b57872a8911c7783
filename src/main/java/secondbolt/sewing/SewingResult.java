package secondbolt.sewing;

import java.util.List;
import secondbolt.measure.Tape;
import secondbolt.sewing.advice.SewnCloth;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.sewing.seam.SewnLines;
import secondbolt.sewing.thread.FastenerThread;
import secondbolt.sewing.thread.SewnWith;
import secondbolt.sewing.thread.ThreadTotal;
import secondbolt.sewing.thread.ThreadTotals;
import secondbolt.sewing.thread.ThreadUse;
import secondbolt.sewing.thread.ThreadUses;

/**
 * The sewing worked out.
 *
 * @param plan as written
 * @param lines all there is to sew
 * @param uses the thread of each line
 * @param fasteners the thread of buttonholes and buttons
 * @param totals by colour
 * @param cloths that are sewn
 * @param dyed when the cloth is dyed
 */
public record SewingResult(
        SewingPlan plan,
        SewnLines lines,
        List<ThreadUse> uses,
        FastenerThread fasteners,
        List<ThreadTotal> totals,
        List<SewnCloth> cloths,
        Dyed dyed) {
    /** When the cloth is dyed. */
    public enum Dyed {
        /** Never. */
        NEVER,
        /** Before it is sewn. */
        BEFORE,
        /** With the seams in it. */
        SEWN
    }

    /** Copies the lists. */
    public SewingResult {
        uses = List.copyOf(uses);
        totals = List.copyOf(totals);
        cloths = List.copyOf(cloths);
    }

    static SewingResult of(
            SewingPlan plan,
            SewnLines lines,
            FastenerThread fasteners,
            List<SewnCloth> cloths,
            Dyed dyed,
            Tape tape) {
        List<ThreadUse> uses = new ThreadUses(with(plan, cloths)).of(lines);
        return new SewingResult(
                plan,
                lines,
                uses,
                fasteners,
                ThreadTotals.of(uses, fasteners, plan.thread(), tape),
                cloths,
                dyed);
    }

    private static SewnWith with(SewingPlan plan, List<SewnCloth> cloths) {
        return new SewnWith(plan, cloths.stream().anyMatch(SewnCloth::isKnit));
    }

    /** The stitches that are taken. */
    SewnWith with() {
        return with(plan, cloths);
    }

    /** Whether there is anything to sew. */
    boolean isAny() {
        return !uses.isEmpty() || !lines.untold().isEmpty() || !totals.isEmpty();
    }

    /** Lines whose length is not known. */
    List<ThreadUse> open() {
        return uses.stream().filter(use -> use.length().isEmpty()).toList();
    }
}
