package secondbolt.file.value;

import secondbolt.file.source.Place;

/**
 * A mistake that a topic found in what is written.
 *
 * @param place where it stands
 * @param found what was found
 * @param right what would be right
 * @param isOfProgram whether it is not the maker's: the program failed at what was found
 */
public record Trouble(Place place, String found, String right, boolean isOfProgram) {
    /** One of the maker's. */
    public Trouble(Place place, String found, String right) {
        this(place, found, right, false);
    }

    /**
     * One of the program's own.
     *
     * @param at what it was at, as a maker knows it
     */
    public static Trouble ofProgram(Place place, String at) {
        return new Trouble(place, at, "", true);
    }
}
