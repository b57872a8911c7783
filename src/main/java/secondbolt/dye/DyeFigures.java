package secondbolt.dye;

import java.util.List;
import java.util.Optional;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.DyedCloth;
import secondbolt.dye.bath.Load;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.recipe.BathHeat;
import secondbolt.dye.recipe.BathTime;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.dye.take.ClothUptake;
import secondbolt.figure.Figures;
import secondbolt.measure.Mass;
import secondbolt.task.Amount;

/** The colours for other programs. */
final class DyeFigures {
    private final DyeBatch batch;

    private DyeFigures(DyeBatch batch) {
        this.batch = batch;
    }

    static Figures of(List<DyeBatch> batches) {
        return new Figures()
                .list(
                        "colours",
                        batches.stream().map(batch -> new DyeFigures(batch).colour()).toList());
    }

    private Figures colour() {
        Figures figures =
                new Figures()
                        .text("colour", batch.plan().name())
                        .text("class", batch.plan().dye().kind().map(DyeClass::word))
                        .text("depth", batch.plan().dye().depth().map(Depth::word))
                        .text("when", batch.plan().whenOrBefore().word())
                        .claim("may_begin", batch.mayBegin())
                        .list("cloth", batch.cloths().stream().map(DyeFigures::cloth).toList())
                        .mass("dry", batch.bathing().dry())
                        .mass("takes", batch.bathing().takes());
        if (!batch.mayBegin()) {
            return figures;
        }
        batch.packets()
                .ifPresent(
                        packets ->
                                figures.count("packets_least", packets.least())
                                        .count("packets_most", packets.most()));
        figures.count("ratio", RefusalFindings.times(batch.bathing().ratio()))
                .volume("bath", batch.bathing().bath())
                .list("baths", batch.bathing().loads().stream().map(this::bath).toList());
        batch.recipe()
                .ifPresent(
                        recipe ->
                                figures.list(
                                                "lines",
                                                recipe.lines().stream().map(this::line).toList())
                                        .list(
                                                "heats",
                                                recipe.heats().stream()
                                                        .map(DyeFigures::heat)
                                                        .toList())
                                        .list(
                                                "times",
                                                recipe.times().stream()
                                                        .map(DyeFigures::time)
                                                        .toList()));
        return figures;
    }

    private static Figures cloth(DyedCloth cloth) {
        Figures figures = new Figures().text("name", cloth.name()).mass("dry", cloth.mass());
        cloth.uptake()
                .map(ClothUptake::taking)
                .ifPresent(t -> figures.share("takes", t.fraction()));
        return figures.text("seen", cloth.uptake().map(uptake -> uptake.seen().words()));
    }

    private Figures bath(Load load) {
        Figures figures =
                new Figures()
                        .text("holds", load.words())
                        .mass("dry", Optional.of(load.dry()))
                        .mass("takes", Optional.of(load.takes()))
                        .volume("bath", Optional.of(load.bath()))
                        .mass("weighs", Optional.of(load.weighs()));
        Mass all = batch.bathing().takes().orElse(Mass.ZERO);
        if (all.isPositive()) {
            figures.share("stock", load.takes().of(all).fraction());
        }
        return figures;
    }

    private Figures line(RecipeLine line) {
        Figures figures =
                new Figures()
                        .text("what", line.what().word())
                        .text("rate", line.rate())
                        .text("source", line.source())
                        .claim("hers", line.isHers());
        put(figures, "least", batch.amount(line.least()));
        put(figures, "most", batch.amount(line.most()));
        return figures;
    }

    private static void put(Figures figures, String key, Optional<Amount> amount) {
        amount.ifPresent(
                a ->
                        a.accept(
                                new Amount.Visitor<Figures>() {
                                    @Override
                                    public Figures pieces(Amount.Pieces pieces) {
                                        return figures.count(key, pieces.count());
                                    }

                                    @Override
                                    public Figures run(Amount.Run run) {
                                        return figures.length(key, run.length());
                                    }

                                    @Override
                                    public Figures weighed(Amount.Weighed weighed) {
                                        return figures.mass(key, Optional.of(weighed.mass()));
                                    }

                                    @Override
                                    public Figures liquid(Amount.Liquid liquid) {
                                        return figures.volume(key, Optional.of(liquid.volume()));
                                    }
                                }));
    }

    private static Figures heat(BathHeat heat) {
        return new Figures()
                .text("of", heat.words())
                .count("least_celsius", heat.least().celsius())
                .count("most_celsius", heat.most().celsius())
                .text("source", heat.source());
    }

    private static Figures time(BathTime time) {
        return new Figures()
                .text("of", time.words())
                .count("least_minutes", time.lasting().least())
                .count("most_minutes", time.lasting().most())
                .text("source", time.source());
    }
}
