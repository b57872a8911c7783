package secondbolt.safety;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.worksheet.Subject;

/**
 * A cord, a tie or a drawstring of the garment.
 *
 * @param name the maker's name for it
 * @param about what is shown of it: its closure, its hem, its pieces; at least one
 * @param place where it lies, if known
 * @param free how long each free end is, if known; zero if none hangs free
 * @param isPlaceNamed whether its place is only taken from names
 * @param isFreeCut whether the free end is only taken to be all of its piece
 * @param calledAt the neck or the hood, where its name or its edges say so though it is told to lie
 *     elsewhere
 * @param cut how long its piece is along its longest edge, if it has one
 */
record Cord(
        String name,
        List<Subject> about,
        Optional<CordPlace> place,
        Optional<Length> free,
        boolean isPlaceNamed,
        boolean isFreeCut,
        Optional<CordPlace> calledAt,
        Optional<Length> cut) {
    /** Copies the list. */
    Cord {
        about = List.copyOf(about);
    }

    /** Whether it lies at neck or hood. */
    boolean isAtTheNeck() {
        return place.filter(CordPlace::isAtTheNeck).isPresent();
    }
}
