package secondbolt.draw;

/** Which part of a label stands at its point. */
public enum Align {
    /** The label begins there. */
    START,
    /** The label's middle stands there. */
    MIDDLE,
    /** The label ends there. */
    END
}
