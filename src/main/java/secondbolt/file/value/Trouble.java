package secondbolt.file.value;

import java.util.Collection;
import java.util.Optional;
import secondbolt.file.source.Place;

/**
 * A mistake that a topic found in what is written.
 *
 * @param place where it stands
 * @param found what was found
 * @param right what would be right
 * @param unknown the name that nothing bears, if that is the mistake
 * @param isOfProgram whether it is not the maker's: the program failed at what was found
 */
public record Trouble(
        Place place,
        String found,
        String right,
        Optional<UnknownName> unknown,
        boolean isOfProgram) {
    /** One of the maker's. */
    public Trouble(Place place, String found, String right) {
        this(place, found, right, Optional.empty(), false);
    }

    /**
     * One of the program's own.
     *
     * @param at what it was at, as a maker knows it
     */
    public static Trouble ofProgram(Place place, String at) {
        return new Trouble(place, at, "", Optional.empty(), true);
    }

    /**
     * The same as a name that nothing bears, so that the place where one like it was given can be
     * told instead.
     *
     * @param name as it is spoken of
     * @param known the names of that kind that there are
     */
    public Trouble ofName(String name, Collection<String> known) {
        return new Trouble(
                place, found, right, Optional.of(UnknownName.of(name, known)), isOfProgram);
    }
}
