package secondbolt.dye.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.Load;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.dye.recipe.Substance;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.measure.kitchen.Kitchen;
import secondbolt.measure.kitchen.Powder;
import secondbolt.task.Amount;

/** Kitchen measures where no scale is at hand: of table salt alone, and whose cup is meant. */
public final class KitchenWords {
    private final DyeBatch batch;
    private final List<RecipeLine> salts;
    private final Kitchen kitchen;

    private KitchenWords(DyeBatch batch, List<RecipeLine> salts, Kitchen kitchen) {
        this.batch = batch;
        this.salts = salts;
        this.kitchen = kitchen;
    }

    /** What they are for all baths of a recipe; nothing where no salt goes in. */
    public static Optional<String> of(DyeBatch batch, Recipe recipe, Tape tape) {
        List<RecipeLine> salts =
                recipe.of(Substance.SALT).stream().filter(line -> !line.isNothing()).toList();
        return new KitchenWords(batch, salts, Kitchen.of(tape)).words();
    }

    private Optional<String> words() {
        List<String> baths = new ArrayList<>();
        List<Load> loads = batch.bathing().loads();
        for (int i = 0; i < loads.size(); i++) {
            String bath = loads.size() == 1 ? "" : "bath " + (i + 1) + ": ";
            cups(loads.get(i)).ifPresent(cups -> baths.add(bath + "about " + cups));
        }
        return baths.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Salt, "
                                + Powder.TABLE_SALT.advice()
                                + ": "
                                + String.join("; ", baths)
                                + " ("
                                + kitchen.said()
                                + "). Soda ash: "
                                + Powder.SODA_ASH.advice()
                                + ". Dye: "
                                + Powder.DYE.advice()
                                + ".");
    }

    /** From the least to the most that is published. */
    private Optional<String> cups(Load load) {
        List<Volume> volumes =
                salts.stream()
                        .flatMap(line -> Stream.of(line.least(), line.most()))
                        .flatMap(rate -> batch.amount(rate, load).stream())
                        .flatMap(amount -> mass(amount).stream())
                        .filter(Mass::isPositive)
                        .flatMap(mass -> Powder.TABLE_SALT.about(mass).stream())
                        .sorted()
                        .toList();
        if (volumes.isEmpty()) {
            return Optional.empty();
        }
        String least = kitchen.print(volumes.get(0));
        String most = kitchen.print(volumes.get(volumes.size() - 1));
        return Optional.of(least.equals(most) ? most : least + " to " + most);
    }

    private static Optional<Mass> mass(Amount amount) {
        return amount.accept(
                new Amount.Visitor<>() {
                    @Override
                    public Optional<Mass> pieces(Amount.Pieces pieces) {
                        return Optional.empty();
                    }

                    @Override
                    public Optional<Mass> run(Amount.Run run) {
                        return Optional.empty();
                    }

                    @Override
                    public Optional<Mass> weighed(Amount.Weighed weighed) {
                        return Optional.of(weighed.mass());
                    }

                    @Override
                    public Optional<Mass> liquid(Amount.Liquid liquid) {
                        return Optional.empty();
                    }
                });
    }
}
