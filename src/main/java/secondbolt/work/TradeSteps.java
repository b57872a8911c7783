package secondbolt.work;

import java.util.Set;

/**
 * Names of steps that some projects have and others have not. One that is not there holds nothing
 * up: the cloth may be washed already, or nothing is dyed.
 */
final class TradeSteps {
    private static final Set<String> NAMES =
            Set.of(
                    "weigh",
                    "unpick",
                    "freeze",
                    "dry mildew",
                    "mark square",
                    "prewash",
                    "prewash again",
                    "press",
                    "survey",
                    "colour test",
                    "bleach",
                    "rinse bleach",
                    "remove colour",
                    "test strip",
                    "dye",
                    "fix dye",
                    "wash off",
                    "dry",
                    "buy",
                    "print",
                    "check the print",
                    "alter the paper",
                    "measure the pieces",
                    "cut",
                    "mark",
                    "press test",
                    "fuse",
                    "baste interfacing",
                    "bind",
                    "elastic",
                    "stay-stitch",
                    "test seam",
                    "neaten",
                    "darts",
                    "pleats",
                    "baste",
                    "fit on",
                    "assemble",
                    "last press",
                    "choose the buttons",
                    "buttonholes",
                    "open buttonholes",
                    "buttons",
                    "snaps",
                    "hooks",
                    "ties",
                    "cords",
                    "hang",
                    "level",
                    "hem",
                    "hem flat pieces");

    private TradeSteps() {}

    /** Whether the name is one of the trade's own. */
    static boolean has(String name) {
        return NAMES.contains(name);
    }
}
