package secondbolt.sewing.thread;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.sewing.plan.Stitch;
import secondbolt.sewing.plan.ThreadPlan;

/** Adds up the thread by colour, spools and cones apart. */
public final class ThreadTotals {
    private ThreadTotals() {}

    /**
     * One total a colour and kind of spool, in the order they first come.
     *
     * @param fasteners sewn in the colour of the seams
     */
    public static List<ThreadTotal> of(
            List<ThreadUse> uses, FastenerThread fasteners, ThreadPlan plan, Tape tape) {
        Map<String, Length> spools = new LinkedHashMap<>();
        Map<String, Length> cones = new LinkedHashMap<>();
        Map<String, Stitch> hungriest = new LinkedHashMap<>();
        for (ThreadUse use : uses) {
            Stitch stitch = use.stitch();
            Map<String, Length> where = stitch.isOfLoopers() ? cones : spools;
            use.thread().ifPresent(thread -> where.merge(use.colour(), thread, Length::plus));
            if (stitch.isOfLoopers() && use.thread().isPresent()) {
                hungriest.merge(use.colour(), stitch, ThreadTotals::hungrier);
            }
        }
        if (fasteners.thread().isPositive()) {
            spools.merge(plan.colour().orElse(""), fasteners.thread(), Length::plus);
        }
        Share waste = plan.waste().orElse(ThreadPlan.USUAL_WASTE);
        Length spool = plan.spool().orElseGet(() -> ThreadPlan.USUAL_SPOOL.on(tape));
        Length cone = plan.cone().orElseGet(() -> ThreadPlan.USUAL_CONE.on(tape));
        List<ThreadTotal> totals = new ArrayList<>();
        spools.forEach(
                (colour, net) ->
                        totals.add(
                                new ThreadTotal(colour, false, net, waste, spool, 1, Share.WHOLE)));
        cones.forEach(
                (colour, net) -> {
                    Stitch stitch = hungriest.get(colour);
                    totals.add(
                            new ThreadTotal(
                                    colour,
                                    true,
                                    net,
                                    waste,
                                    cone,
                                    stitch.threads(),
                                    largest(stitch)));
                });
        return totals.stream().filter(total -> total.net().isPositive()).toList();
    }

    /** Of two stitches the one for which more must stand on the machine. */
    private static Stitch hungrier(Stitch one, Stitch other) {
        return one.threads() >= other.threads() ? one : other;
    }

    /**
     * The most that one of its threads takes of all. From memory, as thread makers' tables give the
     * needle's part: of a chainstitch a quarter, of two overlock threads 55 %, of three a fifth and
     * each looper two fifths, of a coverstitch 30 %.
     */
    private static Share largest(Stitch stitch) {
        return switch (stitch) {
            case CHAINSTITCH -> Share.ofPercent(75);
            case OVERLOCK_TWO -> Share.ofPercent(55);
            case COVERSTITCH -> Share.ofPercent(70);
            case OVERLOCK_THREE, OVERLOCK_FOUR -> Share.ofPercent(40);
            case LOCKSTITCH, ZIGZAG, RUNNING, BACKSTITCH, OVERCAST, CATCH -> Share.WHOLE;
        };
    }
}
