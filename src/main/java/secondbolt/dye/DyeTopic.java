package secondbolt.dye;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.cloth.ClothTopic;
import secondbolt.cutting.CuttingTopic;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.DyeCalculation;
import secondbolt.dye.bath.DyeInput;
import secondbolt.dye.bath.PieceParts;
import secondbolt.dye.plan.DyeCheck;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.plan.DyeSection;
import secondbolt.fault.Fault;
import secondbolt.file.Key;
import secondbolt.file.value.Trouble;
import secondbolt.lay.LayTopic;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.plan.Design;
import secondbolt.lay.stock.StockLay;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.PatternSection;
import secondbolt.textile.ClothSection;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** Dyeing: which class takes, the dye and what goes with it, the baths, the sheet it is done by. */
public final class DyeTopic implements Topic<List<DyeBatch>> {
    /** Its name; it comes to each colour worked out, in the maker's order. */
    public static final TopicName<List<DyeBatch>> NAME = new TopicName<>("dye");

    @Override
    public TopicName<List<DyeBatch>> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(DyeSection.KEY);
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<List<DyeBatch>> work(Bench bench) {
        List<DyePlan> plans = bench.written(DyeSection.KEY).orElse(List.of());
        if (plans.isEmpty()) {
            return Outcome.nothing();
        }
        Set<String> cloths = bench.written(ClothSection.KEY).orElse(Map.of()).keySet();
        List<Trouble> troubles = DyeCheck.of(plans, cloths, bench.place(DyeSection.KEY));
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        DyeInput input = input(bench);
        List<DyeBatch> batches =
                plans.stream()
                        .map(
                                plan ->
                                        Fault.during(
                                                plan.name(),
                                                () -> DyeCalculation.work(plan, input)))
                        .toList();
        return Outcome.of(
                batches, new DyeWorksheet(batches, input.pieces(), bench.tape()).worksheet());
    }

    private static DyeInput input(Bench bench) {
        Optional<LayResult> lay = bench.came(LayTopic.NAME);
        return new DyeInput(
                bench.came(ClothTopic.NAME).orElse(List.of()),
                pieces(bench, lay),
                lay.map(DyeTopic::laidOn).orElse(Map.of()));
    }

    private static PieceParts pieces(Bench bench, Optional<LayResult> lay) {
        Optional<Pattern> pattern = bench.written(PatternSection.KEY);
        Optional<CuttingResult> cutting = bench.came(CuttingTopic.NAME);
        Optional<Design> made = lay.flatMap(l -> l.made().design());
        return pattern.flatMap(
                        p ->
                                cutting.map(
                                        cut ->
                                                PieceParts.of(
                                                        p,
                                                        cut,
                                                        name ->
                                                                made.map(d -> d.needs(name))
                                                                        .orElse(true))))
                .orElse(PieceParts.NONE);
    }

    private static Map<String, Set<String>> laidOn(LayResult lay) {
        Map<String, Set<String>> laidOn = new LinkedHashMap<>();
        for (StockLay stock : lay.made().stocks()) {
            for (LaidPiece laid : stock.laid()) {
                stock.spreads()
                        .get(laid.cloth())
                        .cloth()
                        .ifPresent(
                                cloth ->
                                        laidOn.computeIfAbsent(
                                                        laid.piece().piece().name(),
                                                        name -> new LinkedHashSet<>())
                                                .add(cloth.name()));
            }
        }
        return laidOn;
    }
}
