package secondbolt.task;

/** Where work can hurt; a sheet tells each once, where the hand is. */
public enum Hazard {
    /** A rotary blade, shears, a seam ripper. */
    BLADE(
            "Blades: close the guard after every cut, cut away from the hand, shoes on, never when"
                    + " tired; shears and ripper out of children's reach."),
    /** Pins and needles. */
    NEEDLE(
            "Needles and pins: count the pins, none in the mouth and none left in the cloth; a broken"
                    + " needle goes into a jar with a lid."),
    /** An iron, steam, a press. */
    IRON(
            "Iron: never left flat or alone, its cord out of reach of children and pets; steam burns"
                    + " too. Begin at the lowest heat, on a scrap.");

    private final String words;

    Hazard(String words) {
        this.words = words;
    }

    /** The caution, as a sheet tells it; common practice, no source, unless said otherwise. */
    public String words() {
        return words;
    }
}
