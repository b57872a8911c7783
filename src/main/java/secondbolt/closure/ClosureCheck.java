package secondbolt.closure;

import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * Checks a closure as a whole: that its buttons fit between its ends without touching.
 *
 * @param closure as read
 * @param fields where its keys stand
 */
record ClosureCheck(
        Closure closure,
        Fields fields,
        Key<String> kind,
        Key<Integer> buttons,
        Key<Length> first,
        Key<Length> last) {
    boolean holds() {
        return kindIsWorkedOut() && lastIsTold() && fitsItsLength();
    }

    private boolean kindIsWorkedOut() {
        Optional<String> told = fields.get(kind).filter(k -> !k.equals("buttons"));
        told.ifPresent(
                k ->
                        fields.tell(
                                kind,
                                "`" + k + "`, which this version does not work out yet",
                                "`buttons`"));
        return told.isEmpty();
    }

    private boolean lastIsTold() {
        if (closure.buttons() > 1 && closure.last().isEmpty()) {
            fields.tell(
                    fields.place(),
                    "a closure of " + closure.buttons() + " buttons without `last`",
                    "`last: 11`, from the bottom edge to the centre of the last button");
            return false;
        }
        return true;
    }

    private boolean fitsItsLength() {
        Optional<Length> length = closure.length().toOptional();
        if (length.isEmpty()) {
            return true;
        }
        return closure.buttons() == 1 ? oneFits(length.get()) : severalFit(length.get());
    }

    private boolean oneFits(Length length) {
        if (closure.first().isLongerThan(length)) {
            fields.tell(
                    first,
                    "`first` of " + print(closure.first()) + " on a placket of " + print(length),
                    "less than the placket's length");
            return false;
        }
        Length elsewhere = length.minus(closure.last().orElse(length.minus(closure.first())));
        if (elsewhere.minus(closure.first()).size().isLongerThan(Length.ofMillimetres(1))) {
            fields.tell(
                    last,
                    "`last` for one button alone, at another place than `first`",
                    "`first` alone");
            return false;
        }
        return true;
    }

    private boolean severalFit(Length length) {
        Length lastFromTop = length.minus(closure.last().orElseThrow());
        if (!lastFromTop.isLongerThan(closure.first())) {
            fields.tell(
                    last,
                    "`last` that puts the last button "
                            + print(closure.first().minus(lastFromTop))
                            + " above the first",
                    "less than " + print(length.minus(closure.first())));
            return false;
        }
        Length span = lastFromTop.minus(closure.first());
        Length gap = span.dividedBy(closure.buttons() - 1L);
        Length need = needed();
        if (gap.isShorterThan(need)) {
            long most = 1 + (long) (span.millimetres() / need.millimetres());
            fields.tell(
                    buttons,
                    closure.buttons()
                            + " buttons every "
                            + print(gap)
                            + ", so that they or their holes would overlap",
                    "at most " + most + (most == 1 ? " button" : " buttons") + " on this length");
            return false;
        }
        return true;
    }

    /** What one button takes up along the placket. */
    private Length needed() {
        Length across = closure.button().across().orElse(closure.button().hole());
        return closure.holes() == Closure.Holes.UPRIGHT ? across.orLonger(closure.hole()) : across;
    }

    private static String print(Length length) {
        return Tape.CENTIMETRE.printBoth(length);
    }
}
