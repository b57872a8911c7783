package secondbolt.sewing.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A stitch that seams or their edges are sewn with.
 *
 * <p>The numbers are those of ISO 4915, which US Federal Standard 751a and ASTM D6193 share; from
 * memory. Hand stitches have none here.
 */
public enum Stitch {
    /** The straight stitch of a household machine: needle and bobbin. */
    LOCKSTITCH("lockstitch", "301", Kind.MACHINE, 1),
    /** The same, swinging from side to side. */
    ZIGZAG("zigzag", "304", Kind.MACHINE, 1),
    /** Needle and looper. */
    CHAINSTITCH("chainstitch", "401", Kind.LOOPER, 2),
    /** Over the edge, of two threads. */
    OVERLOCK_TWO("overlock two", "503", Kind.LOOPER, 2),
    /** Over the edge, of three threads. */
    OVERLOCK_THREE("overlock three", "504", Kind.LOOPER, 3),
    /** Over the edge, of four threads, which also sews the seam. */
    OVERLOCK_FOUR("overlock four", "514", Kind.LOOPER, 4),
    /** Two needles and a looper, for the hems of knits. */
    COVERSTITCH("coverstitch", "406", Kind.LOOPER, 3),
    /** Forward by hand, over and under. */
    RUNNING("running", "", Kind.HAND, 1),
    /** By hand, each stitch going back to the last. */
    BACKSTITCH("backstitch", "", Kind.HAND, 1),
    /** By hand over the raw edge. */
    OVERCAST("overcast", "", Kind.HAND, 1),
    /** By hand, crossing from side to side; herringbone. */
    CATCH("catch", "", Kind.HAND, 1);

    private final String word;
    private final String standard;
    private final Kind kind;
    private final int threads;

    Stitch(String word, String standard, Kind kind, int threads) {
        this.word = word;
        this.standard = standard;
        this.kind = kind;
        this.threads = threads;
    }

    /** What it is made with. */
    private enum Kind {
        MACHINE,
        LOOPER,
        HAND
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** As a page says it, with its number in the standard if it has one. */
    public String words() {
        return standard.isEmpty() ? word + " by hand" : word + " (ISO 4915: " + standard + ")";
    }

    /** Its number in ISO 4915; empty for a hand stitch. */
    public String standard() {
        return standard;
    }

    /** Whether it is sewn by hand. */
    public boolean isByHand() {
        return kind == Kind.HAND;
    }

    /** Whether each of its threads comes from a spool or cone of its own. */
    public boolean isOfLoopers() {
        return kind == Kind.LOOPER;
    }

    /** Whether it is sewn over the cut edge. */
    public boolean isOverlock() {
        return this == OVERLOCK_TWO || this == OVERLOCK_THREE || this == OVERLOCK_FOUR;
    }

    /** How many spools or cones stand on the machine for it; the bobbin is wound from the spool. */
    public int threads() {
        return threads;
    }

    /** Whether it lets a seam give, as a knit's must. */
    public boolean gives() {
        return this != LOCKSTITCH && this != RUNNING;
    }

    /** Whether it can join two pieces: all but those for hems and edges. */
    boolean joins() {
        return this != COVERSTITCH && this != OVERCAST && this != CATCH && this != OVERLOCK_TWO;
    }

    /** Those of a machine, by their words. */
    static Map<String, Stitch> ofMachines() {
        return byWord(Stream.of(values()).filter(stitch -> !stitch.isByHand()));
    }

    /** Those that join two pieces, by their words. */
    static Map<String, Stitch> joining() {
        return byWord(Stream.of(values()).filter(Stitch::joins));
    }

    /** All of them, by their words. */
    static Map<String, Stitch> all() {
        return byWord(Stream.of(values()));
    }

    private static Map<String, Stitch> byWord(Stream<Stitch> stitches) {
        Map<String, Stitch> byWord = new LinkedHashMap<>();
        stitches.forEach(stitch -> byWord.put(stitch.word, stitch));
        return byWord;
    }
}
