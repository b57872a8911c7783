package secondbolt.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which items of one name before are which of those now: what is as it was first, the rest in
 * order.
 *
 * @param befores for each item now what it was before; nothing of a new one
 * @param gone those that are no more
 */
record SameItems(List<Optional<Figures>> befores, List<Figures> gone) {
    static SameItems of(List<Figures> before, List<Figures> now) {
        List<Figures> left = new ArrayList<>(before);
        List<Optional<Figures>> befores = new ArrayList<>();
        for (Figures item : now) {
            befores.add(left.remove(item) ? Optional.of(item) : Optional.empty());
        }
        for (int i = 0; i < now.size() && !left.isEmpty(); i++) {
            if (befores.get(i).isEmpty()) {
                befores.set(i, Optional.of(left.remove(0)));
            }
        }
        return new SameItems(befores, left);
    }

    /** What an item was, by its place among those now, from 0. */
    Optional<Figures> before(int place) {
        return befores.get(place);
    }
}
