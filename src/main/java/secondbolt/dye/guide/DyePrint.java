package secondbolt.dye.guide;

import java.util.Optional;
import secondbolt.block.Both;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.Load;
import secondbolt.dye.recipe.BathHeat;
import secondbolt.dye.recipe.BathTime;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.measure.kitchen.Kitchen;
import secondbolt.task.Amount;

/**
 * Amounts in words.
 *
 * @param tape to print with
 */
public record DyePrint(Tape tape) {
    private static final String OPEN = "open";

    /** From a US gallon on nobody counts cups. */
    private static final Volume GALLON = Volume.parse("1 gal").orThrow();

    /** An amount to weigh or measure out. */
    public String amount(Amount amount) {
        return amount(amount, tape);
    }

    private static String amount(Amount amount, Tape tape) {
        return amount.accept(
                new Amount.Visitor<>() {
                    @Override
                    public String pieces(Amount.Pieces pieces) {
                        return pieces.count() + " " + pieces.each();
                    }

                    @Override
                    public String run(Amount.Run run) {
                        Length length = run.length();
                        return tape.print(length);
                    }

                    @Override
                    public String weighed(Amount.Weighed weighed) {
                        return tape.printFine(weighed.mass());
                    }

                    @Override
                    public String liquid(Amount.Liquid liquid) {
                        Volume volume = liquid.volume();
                        boolean isByCups = tape == Tape.INCH && volume.compareTo(GALLON) < 0;
                        return isByCups
                                ? Kitchen.of(tape).print(volume) + " (US)"
                                : tape.print(volume);
                    }
                });
    }

    /** How much of a line goes into all baths, on both tapes. */
    public Both all(DyeBatch batch, RecipeLine line) {
        return range(line, batch.amount(line.least()), batch.amount(line.most()));
    }

    /** How much of a line goes into one bath, on both tapes. */
    public Both one(DyeBatch batch, RecipeLine line, Load load) {
        return range(line, batch.amount(line.least(), load), batch.amount(line.most(), load));
    }

    private Both range(RecipeLine line, Optional<Amount> least, Optional<Amount> most) {
        if (line.isNothing()) {
            return Both.words("none");
        }
        if (least.isEmpty() || most.isEmpty()) {
            return Both.words(OPEN);
        }
        return Both.of(tape, t -> range(amount(least.get(), t), amount(most.get(), t)));
    }

    private static String range(String least, String most) {
        return least.equals(most) ? most : least + " to " + most;
    }

    /** A mass, and the same on the other tape in brackets. */
    public String both(Mass mass) {
        return tape.print(mass) + " (" + tape.other().print(mass) + ")";
    }

    /** What is lifted, to a tenth of a kilogram or a pound, in both. */
    public String heavy(Mass mass) {
        return tape.printHeavy(mass) + " (" + tape.other().printHeavy(mass) + ")";
    }

    /** A volume, and the same on the other tape in brackets. */
    public String both(Volume volume) {
        return tape.print(volume) + " (" + tape.other().print(volume) + ")";
    }

    /** Each published heat, with its source. */
    public String heats(Recipe recipe) {
        return String.join("; ", recipe.heats().stream().map(this::heat).toList());
    }

    private String heat(BathHeat heat) {
        return heat.words() + ": " + heat.told(tape) + " (" + heat.source() + ")";
    }

    /** Each published time, with its source. */
    public String times(Recipe recipe) {
        return String.join("; ", recipe.times().stream().map(DyePrint::time).toList());
    }

    private static String time(BathTime time) {
        return time.words() + ": " + time.lasting().words() + " (" + time.source() + ")";
    }
}
