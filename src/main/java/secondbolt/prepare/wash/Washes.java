package secondbolt.prepare.wash;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.textile.Prewash;

/**
 * The washes of a cloth by its marked square.
 *
 * @param squares the square as it was marked, and after each wash, at least once; nothing where it
 *     is not known
 */
public record Washes(List<AcrossAlong<Optional<Length>>> squares) {
    /** Copies the squares. */
    public Washes {
        squares = List.copyOf(squares);
        if (squares.size() < 2) {
            throw new IllegalArgumentException("never washed: " + squares);
        }
    }

    /** What the square tells. */
    public static Washes of(Prewash.Marked marked) {
        return new Washes(marked.squares());
    }

    /**
     * What each wash changed against the measuring before it, in order; nothing where one of both
     * is not known.
     */
    public List<AcrossAlong<Optional<Change>>> changes() {
        List<AcrossAlong<Optional<Change>>> changes = new ArrayList<>();
        for (int wash = 1; wash < squares.size(); wash++) {
            changes.add(change(squares.get(wash - 1), squares.get(wash)));
        }
        return changes;
    }

    /** From the square as marked to its last measuring; nothing likewise. */
    public AcrossAlong<Optional<Change>> together() {
        return change(squares.get(0), squares.get(squares.size() - 1));
    }

    private static AcrossAlong<Optional<Change>> change(
            AcrossAlong<Optional<Length>> before, AcrossAlong<Optional<Length>> after) {
        return new AcrossAlong<>(
                change(before.across(), after.across()), change(before.along(), after.along()));
    }

    private static Optional<Change> change(Optional<Length> before, Optional<Length> after) {
        return before.flatMap(b -> after.map(a -> new Change(b, a)));
    }

    /** How often it was washed with the square on it, 1 or more. */
    public int count() {
        return squares.size() - 1;
    }

    /** What the last wash did. */
    public AcrossAlong<Optional<Change>> last() {
        return change(squares.get(squares.size() - 2), squares.get(squares.size() - 1));
    }

    /** Whether any wash was measured, one way at least. */
    public boolean isMeasured() {
        return changes().stream().anyMatch(wash -> ways(wash).findAny().isPresent());
    }

    /** Whether the last wash changed it more than the mark either way, so that one more is due. */
    public boolean isMoving() {
        return ways(last()).anyMatch(Change::isMoving);
    }

    /** Whether it is known both ways that the last wash changed it no more than that. */
    public boolean isSettled() {
        return !isMoving() && ways(last()).count() == 2;
    }

    /** Whether the square is too small for what a tape reads. */
    public boolean isTooSmallToTell() {
        return ways(last()).anyMatch(Change::isTooSmallToTell);
    }

    private static Stream<Change> ways(AcrossAlong<Optional<Change>> change) {
        return Stream.concat(change.across().stream(), change.along().stream());
    }
}
