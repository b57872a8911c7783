package secondbolt.closure.row;

import java.util.List;
import java.util.Optional;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.PlacketPlan;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A closure worked out.
 *
 * @param input what it is worked out from
 * @param row where the fasteners come
 * @param marks a mark for each fastener, from the top
 * @param added how many more than told the largest gap asked for
 * @param advice what would help, and how other counts would come out
 * @param change what the alterations did to it
 */
public record ClosureResult(
        ClosureInput input,
        FastenerRow row,
        List<FastenerMark> marks,
        int added,
        Advice advice,
        PlacketChange change) {
    /** Copies the lists. */
    public ClosureResult {
        marks = List.copyOf(marks);
    }

    /** The same, with what lies elsewhere than in the one worked out without the alterations. */
    public ClosureResult movedFrom(ClosureResult unaltered) {
        PlacketChange moved = change.moved(unaltered.marks, marks, input);
        return new ClosureResult(input, row, marks, added, advice, moved);
    }

    /** The same, where without the alterations its fasteners do not fit. */
    public ClosureResult onlyAltered() {
        return new ClosureResult(input, row, marks, added, advice, change.needed());
    }

    /** The maker's name for it. */
    public String name() {
        return input.name();
    }

    /** As written. */
    public Closure closure() {
        return input.closure();
    }

    /** Its placket and what lies on it. */
    public PlacketPlan plan() {
        return input.plan();
    }

    /** The maker's. */
    public Tape tape() {
        return input.tape();
    }

    /** How long the placket is. */
    public Length length() {
        return plan().length();
    }

    /** The mean gap; nothing for one alone. */
    public Optional<Length> gap() {
        return row.gap();
    }

    /** How long each hole is, between its bars. */
    public Length hole() {
        return closure().fastening().hole();
    }

    /** Whether fewer would keep the largest gap, too; so wherever none is told. */
    public boolean mayHaveFewer() {
        return closure().spread().largestGap().isEmpty()
                || advice.counts().stream().anyMatch(other -> other.count() < marks.size());
    }

    /** How many there are in all, to buy. */
    public int toBuy() {
        return marks.size() * (closure().overlap().rowsApart().isPresent() ? 2 : 1);
    }
}
