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
    /**
     * The most that one of three or four overlock threads takes: the needle a fifth, each looper
     * two fifths. From memory, as thread makers' tables give it for three threads.
     */
    private static final Share LOOPER = Share.ofPercent(40);

    /** The more of two threads; from memory. */
    private static final Share OF_TWO = Share.ofPercent(75);

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
        Map<String, Integer> threads = new LinkedHashMap<>();
        for (ThreadUse use : uses) {
            Stitch stitch = use.stitch();
            Map<String, Length> where = stitch.isOfLoopers() ? cones : spools;
            use.thread().ifPresent(thread -> where.merge(use.colour(), thread, Length::plus));
            if (stitch.isOfLoopers() && use.thread().isPresent()) {
                threads.merge(use.colour(), stitch.threads(), Math::max);
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
                    int apart = threads.get(colour);
                    Share largest = apart == 2 ? OF_TWO : LOOPER;
                    totals.add(new ThreadTotal(colour, true, net, waste, cone, apart, largest));
                });
        return totals.stream().filter(total -> total.net().isPositive()).toList();
    }
}
