package secondbolt.safety;

import secondbolt.file.value.Quoted;
import secondbolt.measure.Tape;

/** Lines of the project file that tell a cord, as they are advised. */
final class CordLine {
    private CordLine() {}

    /** With a free end short enough for a child, for her to put her own into. */
    static String of(String name, String place, Tape tape) {
        String free = tape == Tape.INCH ? "2 3/4 in" : "7 cm";
        return "cords: {" + Quoted.of(name) + ": {at: " + place + ", free: " + free + "}}";
    }

    /** Without free ends. */
    static String free(String name, String place) {
        return "cords: {" + Quoted.of(name) + ": {at: " + place + ", free: none}}";
    }
}
