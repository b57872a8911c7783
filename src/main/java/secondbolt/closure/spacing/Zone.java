package secondbolt.closure.spacing;

/**
 * A run of places, both ends within it.
 *
 * @param from the first, in steps from the top
 * @param to the last
 */
public record Zone(int from, int to) {
    /** Checks the order. */
    public Zone {
        if (from > to) {
            throw new IllegalArgumentException("a zone must not end before it begins: " + from);
        }
    }

    /** One place alone. */
    public static Zone at(int place) {
        return new Zone(place, place);
    }

    /** Whether a place lies in it. */
    public boolean holds(int place) {
        return place >= from && place <= to;
    }

    /** How far a place is from its middle, in half steps. */
    int offMiddle(int place) {
        return Math.abs(2 * place - from - to);
    }

    /** The same moved down by so many steps, up if negative. */
    public Zone moved(int steps) {
        return new Zone(from + steps, to + steps);
    }
}
