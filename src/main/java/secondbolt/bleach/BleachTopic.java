package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.bleach.plan.BleachSection;
import secondbolt.bleach.plan.Bleaching;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.cloth.ClothTopic;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.Key;
import secondbolt.file.Spelling;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Tape;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.worksheet.Worksheet;

/** Bleaching and taking colour out: what may be done to which fibre, how, and what it ruins. */
public final class BleachTopic implements Topic<List<Treatment>> {
    /** Its name; it comes to each cloth that is to be treated, in the maker's order. */
    public static final TopicName<List<Treatment>> NAME = new TopicName<>("bleach");

    @Override
    public TopicName<List<Treatment>> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(BleachSection.KEY);
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<List<Treatment>> work(Bench bench) {
        Map<String, Bleaching> plans = bench.written(BleachSection.KEY).orElse(Map.of());
        if (plans.isEmpty()) {
            return Outcome.nothing();
        }
        List<ClothResult> cloths = bench.came(ClothTopic.NAME).orElse(List.of());
        List<Treatment> treatments = new ArrayList<>();
        List<Trouble> troubles = new ArrayList<>();
        plans.forEach(
                (name, plan) ->
                        find(cloths, name)
                                .ifPresentOrElse(
                                        cloth -> treatments.add(Treatment.of(cloth, plan)),
                                        () -> troubles.add(noSuch(name, plan, cloths))));
        return troubles.isEmpty()
                ? Outcome.of(List.copyOf(treatments), worksheet(treatments, bench.tape()))
                : Outcome.wrong(troubles);
    }

    private static Optional<ClothResult> find(List<ClothResult> cloths, String name) {
        return cloths.stream().filter(cloth -> cloth.name().equals(name)).findFirst();
    }

    private static Trouble noSuch(String name, Bleaching plan, List<ClothResult> cloths) {
        List<String> names = cloths.stream().map(ClothResult::name).toList();
        return new Trouble(
                        plan.with().place(),
                        "`bleach` of `" + name + "`, which names no cloth",
                        names.isEmpty() ? "`cloth` as well" : "one of " + Spelling.listed(names))
                .ofName(name, names);
    }

    private static Worksheet worksheet(List<Treatment> treatments, Tape tape) {
        return Worksheet.of(
                        "bleach",
                        "Bleaching and removing colour",
                        () -> BleachNotes.of(treatments, tape))
                .showing(() -> new BleachPage(treatments, tape).blocks())
                .printing(() -> BleachSheet.of(treatments, tape))
                .telling(() -> BleachFigures.of(treatments))
                .giving(BleachGiving.of(treatments));
    }
}
