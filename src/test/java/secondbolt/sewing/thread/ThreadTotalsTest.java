package secondbolt.sewing.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.sewing.plan.SewingMeans;
import secondbolt.sewing.plan.Stitch;
import secondbolt.sewing.plan.ThreadPlan;

class ThreadTotalsTest {
    private static final ThreadRatios TABLE = new ThreadRatios(SewingMeans.NOTHING);

    private static ThreadUse use(Stitch stitch, Length length, ThreadRatio ratio) {
        return new ThreadUse("seams", "", stitch, Optional.of(length), ratio);
    }

    private static ThreadUse use(Stitch stitch, Length length) {
        return use(stitch, length, TABLE.of(stitch));
    }

    private static ThreadPlan plan(String waste) {
        return new ThreadPlan(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Share.ofDecimal(waste)));
    }

    private static Length sum(List<ThreadTotal> totals) {
        return totals.stream().map(ThreadTotal::net).reduce(Length.ZERO, Length::plus);
    }

    /**
     * Thread use of a woven shirt, 2015: 1577.5 in of lockstitch thread, 82 in of overlock at 9, 13
     * buttonholes and 17 buttons are 2487 in, 63.17 m (its page prints 63.30).
     */
    @Test
    void addsUpAPublishedShirt() {
        ThreadRatio nine = TABLE.rivals(Stitch.OVERLOCK_THREE).get(0);
        List<ThreadTotal> totals =
                ThreadTotals.of(
                        List.of(
                                use(Stitch.LOCKSTITCH, Length.ofInches(631, 1)),
                                use(Stitch.OVERLOCK_THREE, Length.ofInches(82, 1), nine)),
                        new FastenerThread(13, 0, 17, 0),
                        plan("0.2"),
                        Tape.CENTIMETRE);
        assertEquals(Length.ofInches(2487, 1), sum(totals));
        assertEquals("63.17 m", Tape.CENTIMETRE.printShop(sum(totals)));
        Length gross = totals.stream().map(ThreadTotal::gross).reduce(Length.ZERO, Length::plus);
        assertEquals(
                "75.8 m", Tape.CENTIMETRE.printShop(gross.roundedTo(Length.ofMillimetres(10))));
        assertEquals(1, Share.left(gross, Length.ofMillimetres(100_000)).roundedUp());
    }

    /** Derived: the same with the overlock at 14, 2897 in, 73.6 m. */
    @Test
    void addsUpTheSameWithTheOtherRatio() {
        List<ThreadTotal> totals =
                ThreadTotals.of(
                        List.of(
                                use(Stitch.LOCKSTITCH, Length.ofInches(631, 1)),
                                use(Stitch.OVERLOCK_THREE, Length.ofInches(82, 1))),
                        new FastenerThread(13, 0, 17, 0),
                        plan("0.2"),
                        Tape.CENTIMETRE);
        assertEquals(Length.ofInches(2897, 1), sum(totals));
        assertEquals("73.58 m", Tape.CENTIMETRE.printShop(sum(totals)));
    }

    /**
     * Derived: 14 m of lockstitch and 9 m of zigzag, 98 m, with 15 % 112.7 m: two spools of 100 m.
     */
    @Test
    void roundsSpoolsUp() {
        List<ThreadTotal> totals =
                ThreadTotals.of(
                        List.of(
                                use(Stitch.LOCKSTITCH, Length.ofMillimetres(14_000)),
                                use(Stitch.ZIGZAG, Length.ofMillimetres(9_000))),
                        FastenerThread.NONE,
                        plan("0.15"),
                        Tape.CENTIMETRE);
        assertEquals(1, totals.size());
        assertEquals(Length.ofMillimetres(98_000), totals.get(0).net());
        assertEquals(Length.ofMillimetres(112_700), totals.get(0).gross());
        assertEquals(2, totals.get(0).count());
    }

    /** Derived: 14 m of lockstitch and 9 m of overlock at 14: 161 m, with 15 % 185.2 m. */
    @Test
    void keepsConesApart() {
        List<ThreadTotal> totals =
                ThreadTotals.of(
                        List.of(
                                use(Stitch.LOCKSTITCH, Length.ofMillimetres(14_000)),
                                use(Stitch.OVERLOCK_THREE, Length.ofMillimetres(9_000))),
                        FastenerThread.NONE,
                        plan("0.15"),
                        Tape.CENTIMETRE);
        assertEquals(Length.ofMillimetres(161_000), sum(totals));
        assertEquals(3, totals.get(1).count(), "one cone for each thread of the stitch");
        assertEquals(1, totals.get(0).count());
    }

    /** Q&A page on thread use: 220 cm of lockstitch take 550 cm; derived: 10 m and 15 % 28.75 m. */
    @Test
    void takesTwoAndAHalfTimesTheSeam() {
        ThreadUse use = use(Stitch.LOCKSTITCH, Length.ofMillimetres(2200));
        assertEquals(Optional.of(Length.ofMillimetres(5500)), use.thread());
        ThreadTotal ten =
                ThreadTotals.of(
                                List.of(use(Stitch.LOCKSTITCH, Length.ofMillimetres(10_000))),
                                FastenerThread.NONE,
                                plan("0.15"),
                                Tape.CENTIMETRE)
                        .get(0);
        assertEquals(Length.ofMillimetres(28_750), ten.gross());
    }

    /** Derived: 2.4 m of backstitch, 3 mm stitches, 1 mm thick: 8.8 m, 22 needlefuls of 40 cm. */
    @Test
    void countsNeedlefuls() {
        ThreadUse use = use(Stitch.BACKSTITCH, Length.ofMillimetres(2400));
        assertEquals(Optional.of(Length.ofMillimetres(8800)), use.thread());
        assertEquals(Optional.of(22), use.needlefuls());
    }
}
