package secondbolt.pattern.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.measure.Length;

/**
 * Whether what darts and pleats take up of the edges of a piece lies on them, each beside the
 * other, and leaves something to sew.
 *
 * <p>Derived: each takes up half of its width on either side of its middle, and cloth can be taken
 * up once only.
 */
final class TakenUp {
    private final Fields fields;
    private final String edge;
    private final Length length;

    private TakenUp(Fields fields, String edge, Length length) {
        this.fields = fields;
        this.edge = edge;
        this.length = length;
    }

    /**
     * A dart or a pleat and how it is called.
     *
     * @param what it is
     * @param key it stands under
     * @param dart where it lies
     */
    private record Taken(String what, Key<?> key, Piece.Dart dart) {
        Length from() {
            return dart.at().minus(dart.takes().dividedBy(2));
        }

        Length to() {
            return dart.at().plus(dart.takes().dividedBy(2));
        }
    }

    /** Tells the mistakes on all edges of a piece; whether there is none. */
    static boolean areRight(Fields fields, PieceShape shape, Piece.Features features) {
        boolean right = true;
        for (Map.Entry<String, Length> edge : shape.edgeLengths().entrySet()) {
            TakenUp one = new TakenUp(fields, edge.getKey(), edge.getValue());
            right &= one.isRight(taken(features, edge.getKey()));
        }
        return right;
    }

    private static List<Taken> taken(Piece.Features features, String edge) {
        List<Taken> taken = new ArrayList<>();
        features.darts().forEach(d -> taken.add(new Taken("dart", FeatureKeys.DARTS, d)));
        features.pleats().forEach(p -> taken.add(new Taken("pleat", FeatureKeys.PLEATS, p)));
        taken.removeIf(one -> !one.dart().edge().equals(edge));
        taken.sort(Comparator.comparing(Taken::from));
        return taken;
    }

    /** The first thing that is wrong along the edge; what follows may come from it. */
    private boolean isRight(List<Taken> taken) {
        Length all = Length.ZERO;
        for (int i = 0; i < taken.size(); i++) {
            if (!liesOnTheEdge(taken.get(i))
                    || (i > 0 && overlap(taken.get(i - 1), taken.get(i)))) {
                return false;
            }
            all = all.plus(taken.get(i).dart().takes());
        }
        if (!taken.isEmpty() && !all.isShorterThan(length)) {
            tell(
                    taken.get(taken.size() - 1),
                    "darts and pleats that take up all of " + edge + ", " + print(length),
                    "less than that together, so that something is left to sew");
            return false;
        }
        return true;
    }

    private boolean liesOnTheEdge(Taken one) {
        if (one.to().isLongerThan(length)) {
            tell(
                    one,
                    "something past the end of " + edge,
                    "a middle at most "
                            + print(length.minus(half(one)))
                            + " along it, for half of what it takes lies beyond");
            return false;
        }
        if (one.from().isNegative()) {
            tell(
                    one,
                    "a " + one.what() + " that begins before " + edge + " does",
                    "a middle at least "
                            + print(half(one))
                            + " along it, for half of what it takes lies before");
            return false;
        }
        return true;
    }

    private boolean overlap(Taken first, Taken second) {
        if (!second.from().isShorterThan(first.to())) {
            return false;
        }
        tell(
                second,
                "a "
                        + second.what()
                        + " at "
                        + print(second.dart().at())
                        + " of "
                        + edge
                        + " that lies "
                        + print(first.to().minus(second.from()))
                        + " on the "
                        + first.what()
                        + " at "
                        + print(first.dart().at()),
                "a middle from " + print(first.to().plus(half(second))) + " on, or less taken up");
        return true;
    }

    private static Length half(Taken one) {
        return one.dart().takes().dividedBy(2);
    }

    private String print(Length along) {
        return fields.tape().print(along);
    }

    private void tell(Taken one, String found, String right) {
        fields.tell(one.key(), found, right);
    }
}
