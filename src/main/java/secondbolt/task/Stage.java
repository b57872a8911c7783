package secondbolt.task;

/** A part of the work, in the order in which they usually come; hours are kept by it. */
public enum Stage {
    /** Weighing, washing, airing, looking over. */
    PREPARING("preparing"),
    /** Bleaching and dyeing. */
    DYEING("dyeing"),
    /** Printing, altering and trying the paper, and shopping. */
    PLANNING("planning"),
    /** Laying, cutting and marking. */
    CUTTING("cutting"),
    /** Interfacing, seams and pressing. */
    SEWING("sewing"),
    /** Buttonholes, buttons and other fasteners. */
    CLOSING("closing"),
    /** Hanging, levelling and hemming. */
    HEMMING("hemming"),
    /** The last press, labels, loops. */
    FINISHING("finishing");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }
}
