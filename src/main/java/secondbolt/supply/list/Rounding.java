package secondbolt.supply.list;

import java.util.Optional;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.supply.plan.Quantity;
import secondbolt.task.Amount;

/**
 * Rounds up what is cut, weighed or poured for her: a length to the shop's step; a mass to a gram,
 * or a tenth of an ounce; a volume to 10 ml, or a quarter of a US cup (common practice, no source).
 * Never down.
 */
public final class Rounding {
    private static final Quantity METRIC_MASS = mass("1 g");
    private static final Quantity INCH_MASS = mass("0.1 oz");
    private static final Quantity METRIC_VOLUME = volume("10 ml");
    private static final Quantity INCH_VOLUME = volume("1/4 cup");
    private static final Quantity TEASPOON = volume("1 tsp");

    private Rounding() {}

    /** So much, rounded up; what is counted stays as it is. */
    public static Quantity up(Quantity quantity, Tape tape) {
        return step(quantity.kind(), tape).times(steps(quantity, tape));
    }

    /** How many steps that is: things, shop steps, grams, tenths of an ounce, quarters of a cup. */
    public static int steps(Quantity quantity, Tape tape) {
        return quantity.in(step(quantity.kind(), tape));
    }

    /** How many US teaspoons of a liquid that is, rounded up. */
    public static int teaspoons(Quantity volume) {
        return volume.in(TEASPOON);
    }

    private static Quantity step(Quantity.Kind kind, Tape tape) {
        boolean isInch = tape == Tape.INCH;
        return switch (kind) {
            case COUNT -> Quantity.ofCount(1);
            case LENGTH -> Quantity.of(new Amount.Run(tape.shopStep()));
            case MASS -> isInch ? INCH_MASS : METRIC_MASS;
            case VOLUME -> isInch ? INCH_VOLUME : METRIC_VOLUME;
        };
    }

    private static Quantity mass(String text) {
        Optional<Mass> mass = Mass.parse(text).fold(Optional::of, refusal -> Optional.empty());
        return Quantity.of(new Amount.Weighed(mass.orElseThrow(() -> unreadable(text))));
    }

    private static Quantity volume(String text) {
        Optional<Volume> volume =
                Volume.parse(text).fold(Optional::of, refusal -> Optional.empty());
        return Quantity.of(new Amount.Liquid(volume.orElseThrow(() -> unreadable(text))));
    }

    private static IllegalStateException unreadable(String text) {
        return new IllegalStateException("no step: " + text);
    }
}
