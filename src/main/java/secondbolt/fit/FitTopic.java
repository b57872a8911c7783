package secondbolt.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.placket.DrawnLaps;
import secondbolt.closure.placket.LapTopic;
import secondbolt.file.Key;
import secondbolt.file.value.Trouble;
import secondbolt.fit.cut.CutCopy;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.result.FitCheck;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.seam.EdgeStretch;
import secondbolt.fit.stretch.ClothStretch;
import secondbolt.fit.stretch.StretchTopic;
import secondbolt.hem.plan.HemAllowances;
import secondbolt.hem.plan.HemSection;
import secondbolt.lay.plan.Placing;
import secondbolt.lay.plan.PlanFile;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.AlterationSection;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.PatternSection;
import secondbolt.pattern.piece.Piece;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.wearer.WearerTopic;

/** The pattern, altered and checked. */
public final class FitTopic implements Topic<FitResult> {
    /** Its name. */
    public static final TopicName<FitResult> NAME = new TopicName<>("fit");

    @Override
    public TopicName<FitResult> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(PatternSection.KEY, AlterationSection.KEY);
    }

    @Override
    public Outcome<FitResult> work(Bench bench) {
        Optional<Pattern> pattern = bench.written(PatternSection.KEY);
        List<Alteration> alterations = bench.written(AlterationSection.KEY).orElse(List.of());
        if (pattern.isEmpty()) {
            return alterations.isEmpty()
                    ? Outcome.nothing()
                    : Outcome.wrong(
                            List.of(
                                    new Trouble(
                                            bench.place(AlterationSection.KEY),
                                            "alterations without a pattern",
                                            "`pattern` as well")));
        }
        List<Trouble> troubles = FitCheck.of(pattern.get(), alterations, bench.tape());
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        List<CutCopy> cut = cut(PlanFile.cut(bench::written), pattern.get());
        for (CutCopy copy : cut) {
            List<Alteration> had = copy.had().orElse(List.of());
            List<Trouble> cannotBe = FitCheck.of(pattern.get(), had, bench.tape());
            if (!cannotBe.isEmpty()) {
                return Outcome.wrong(cannotBe);
            }
        }
        FitResult result =
                FitCalculation.work(
                        sewn(pattern.get(), bench),
                        alterations,
                        stretch(pattern.get(), bench),
                        cut,
                        bench.tape());
        return Outcome.of(
                result,
                FitWorksheet.of(
                                result,
                                bench.came(WearerTopic.NAME),
                                bench.came(LapTopic.NAME).orElse(DrawnLaps.NONE),
                                bench.tape())
                        .worksheet());
    }

    private static EdgeStretch stretch(Pattern pattern, Bench bench) {
        return new ClothStretch(bench.came(StretchTopic.NAME).orElse(Map.of())).of(pattern);
    }

    /** What is cut and was not spoilt. */
    public static List<CutCopy> cut(List<Placing> soFar, Pattern pattern) {
        List<String> names = pattern.pieces().stream().map(Piece::name).toList();
        return soFar.stream()
                .map(cut -> cut.namedBy(names))
                .filter(cut -> !cut.isSpoilt())
                .map(cut -> new CutCopy(cut.piece().value(), cut.altered()))
                .toList();
    }

    /** With what its hems take of allowances that its outlines include. */
    private static Pattern sewn(Pattern pattern, Bench bench) {
        return HemAllowances.included(
                pattern, bench.written(HemSection.KEY).orElse(Map.of()), bench.tape());
    }
}
