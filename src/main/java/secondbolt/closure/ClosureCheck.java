package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.source.Place;
import secondbolt.fit.FitCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** Checks that the buttons of a closure fit between its ends without touching. */
public final class ClosureCheck {
    private final Closure closure;
    private final List<FitCheck.Trouble> troubles = new ArrayList<>();

    private ClosureCheck(Closure closure) {
        this.closure = closure;
    }

    /** What is wrong with a closure on a placket of this length; none while it is unknown. */
    public static List<FitCheck.Trouble> of(Closure closure, Optional<Length> length) {
        ClosureCheck check = new ClosureCheck(closure);
        if (closure.buttons() == 1) {
            length.ifPresent(check::oneFits);
        } else {
            length.ifPresent(check::severalFit);
        }
        return List.copyOf(check.troubles);
    }

    private void tell(Place place, String found, String right) {
        troubles.add(new FitCheck.Trouble(place, found, right));
    }

    private void oneFits(Length length) {
        if (closure.first().isLongerThan(length)) {
            tell(
                    closure.places().first(),
                    "`first` of " + print(closure.first()) + " on a placket of " + print(length),
                    "less than the placket's length");
            return;
        }
        Length elsewhere = length.minus(closure.last().orElse(length.minus(closure.first())));
        if (elsewhere.minus(closure.first()).size().isLongerThan(Length.ofMillimetres(1))) {
            tell(
                    closure.places().last(),
                    "`last` for one button alone, at another place than `first`",
                    "`first` alone");
            return;
        }
    }

    private void severalFit(Length length) {
        Length lastFromTop = length.minus(closure.last().orElseThrow());
        if (!lastFromTop.isLongerThan(closure.first())) {
            tell(
                    closure.places().last(),
                    "`last` that puts the last button "
                            + print(closure.first().minus(lastFromTop))
                            + " above the first",
                    "less than " + print(length.minus(closure.first())));
            return;
        }
        Length span = lastFromTop.minus(closure.first());
        Length gap = span.dividedBy(closure.buttons() - 1L);
        Length need = needed();
        if (gap.isShorterThan(need)) {
            long most = 1 + (long) (span.millimetres() / need.millimetres());
            tell(
                    closure.places().buttons(),
                    closure.buttons()
                            + " buttons every "
                            + print(gap)
                            + ", so that they or their holes would overlap",
                    "at most " + most + (most == 1 ? " button" : " buttons") + " on this length");
            return;
        }
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
