package secondbolt.closure.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.placket.Placket;
import secondbolt.fit.result.FitResult;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;

/**
 * What the alterations did to a placket on edges of the pattern.
 *
 * @param before how long it was before them, if the tape shows the difference
 * @param moved the numbers of the fasteners that lie elsewhere than without them, rising
 * @param isNeeded whether its fasteners do not fit without them
 * @param open an edge of which it is not known whether they changed it, if there is one
 */
public record PlacketChange(
        Optional<Length> before, List<Integer> moved, boolean isNeeded, Optional<Open> open) {
    /** Nothing that is known of. */
    public static final PlacketChange NONE =
            new PlacketChange(Optional.empty(), List.of(), false, Optional.empty());

    /** Copies the numbers. */
    public PlacketChange {
        moved = List.copyOf(moved);
    }

    /**
     * An edge of which it is not known whether the alterations changed it.
     *
     * @param edge as written
     * @param findOut what to do about it, as an order
     */
    public record Open(String edge, String findOut) {}

    /** What the altered pattern tells of a placket; what moved on it, it does not know. */
    static PlacketChange of(ClosureInput input, Optional<FitResult> fit) {
        Placket placket = input.closure().placket();
        Optional<Length> before =
                placket.lengthBefore(fit).filter(was -> isSeen(was, input.plan().length(), input));
        Optional<Open> open =
                fit.flatMap(
                        f ->
                                placket.edges()
                                        .flatMap(on -> f.open(on.value()).stream().findFirst())
                                        .map(edge -> open(edge, f, input)));
        return new PlacketChange(before, List.of(), false, open);
    }

    private static Open open(EdgeSum.Term edge, FitResult fit, ClosureInput input) {
        return new Open(edge.words(), fit.findOut(edge, input.tape()));
    }

    private static boolean isSeen(Length one, Length other, ClosureInput input) {
        return !one.minus(other).size().isShorterThan(input.tape().mark());
    }

    /**
     * The same with what moved.
     *
     * @param was the marks without the alterations
     * @param now the marks with them
     */
    PlacketChange moved(List<FastenerMark> was, List<FastenerMark> now, ClosureInput input) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < Math.min(was.size(), now.size()); i++) {
            if (isSeen(was.get(i).fromTop(), now.get(i).fromTop(), input)) {
                numbers.add(now.get(i).number());
            }
        }
        return new PlacketChange(before, numbers, isNeeded, open);
    }

    /** The same where its fasteners do not fit without the alterations. */
    PlacketChange needed() {
        return new PlacketChange(before, moved, true, open);
    }
}
