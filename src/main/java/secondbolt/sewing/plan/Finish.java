package secondbolt.sewing.plan;

/** How the cut edges of a seam are kept from fraying. */
public enum Finish {
    /** Left as they are cut. */
    RAW("raw"),
    /** Cut with pinking shears. */
    PINKED("pinked"),
    /** The same, with a line of stitches beside it. */
    STITCHED_AND_PINKED("stitched and pinked"),
    /** Each edge turned under once and stitched: clean finished. */
    TURNED("turned and stitched"),
    /** Zigzag over the edge. */
    ZIGZAG("zigzag"),
    /** By an overlock machine. */
    OVERLOCK("overlock"),
    /** By hand, over the edge. */
    OVERCAST("overcast"),
    /** Pressed open, each edge caught to the cloth by hand, as wool is: flannel seam. */
    CAUGHT("pressed open and caught"),
    /** Each edge bound with a strip on the bias: "Hong Kong". */
    BOUND("bound"),
    /** Sewn twice, the edges inside. */
    FRENCH("french"),
    /** One edge folded over the other and stitched down. */
    FELLED("flat felled");

    private final String word;

    Finish(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** Whether the cloth of the allowance is folded twice, which makes bulk. */
    public boolean foldsTwice() {
        return this == TURNED || this == FRENCH || this == FELLED;
    }

    /** Whether it is a way of sewing the seam, so that it cannot be put on afterwards. */
    public boolean isPartOfTheSeam() {
        return this == FRENCH || this == FELLED;
    }

    /** Whether the raw edge stays without a thread over it. */
    public boolean leavesEdgeBare() {
        return this == RAW || this == PINKED;
    }
}
