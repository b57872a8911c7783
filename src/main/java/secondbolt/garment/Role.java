package secondbolt.garment;

import secondbolt.file.Form;
import secondbolt.file.form.Forms;

/** What a cloth is for, and so which pieces are cut of it, in the order they are worked out. */
public enum Role {
    /** The outside of the garment. */
    MAIN("main"),
    /** Its inside. */
    LINING("lining"),
    /** Parts in another cloth. */
    CONTRAST("contrast"),
    /** What stiffens parts of it, sold in widths of its own. */
    INTERFACING("interfacing"),
    /** What pads it. */
    BATTING("batting"),
    /** A whole layer between outside and lining, for warmth or body. */
    INTERLINING("interlining");

    /** One of the words. */
    public static final Form<Role> FORM = Forms.choice(values(), Role::word);

    private final String word;

    Role(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** Whether it lies between the outside and the lining, where nobody sees it. */
    public boolean isBetween() {
        return switch (this) {
            case MAIN, LINING, CONTRAST -> false;
            case INTERFACING, BATTING, INTERLINING -> true;
        };
    }

    /** What is cut of it is cut of this: {@code the main cloth}, {@code interfacing}. */
    public String cloth() {
        return switch (this) {
            case MAIN, CONTRAST -> "the " + word + " cloth";
            case LINING, INTERFACING, BATTING, INTERLINING -> word;
        };
    }

    /** As written, so that it may stand in a sentence. */
    @Override
    public String toString() {
        return word;
    }
}
