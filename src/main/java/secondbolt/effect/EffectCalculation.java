package secondbolt.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import secondbolt.closure.Closure;
import secondbolt.closure.Machine;
import secondbolt.effect.AlterationEffects.Change;
import secondbolt.fit.Alteration;
import secondbolt.fit.FitCalculation;
import secondbolt.fit.FitResult;
import secondbolt.hem.Hem;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** Compares the garment before and after each alteration. */
final class EffectCalculation {
    /** Computed lengths that differ by less are the same. */
    private static final Length SAME = Length.ofMillimetres(1).dividedBy(100);

    private EffectCalculation() {}

    /** What each alteration of a pattern changes, in the maker's order. */
    static List<AlterationEffects> work(
            FitResult fit,
            Map<String, Closure> closures,
            Machine machine,
            Map<String, Hem> hems,
            Tape tape) {
        List<AlterationEffects> all = new ArrayList<>();
        Stage before = stage(fit, 0, closures, machine, hems, tape);
        for (int i = 0; i < fit.alterations().size(); i++) {
            Stage after = stage(fit, i + 1, closures, machine, hems, tape);
            all.add(effects(fit.alterations().get(i), before, after));
            before = after;
        }
        return all;
    }

    private static Stage stage(
            FitResult fit,
            int alterations,
            Map<String, Closure> closures,
            Machine machine,
            Map<String, Hem> hems,
            Tape tape) {
        FitResult some =
                alterations == fit.alterations().size()
                        ? fit
                        : FitCalculation.work(
                                fit.pattern(), fit.alterations().subList(0, alterations), tape);
        return Stage.of(some, closures, machine, hems, tape);
    }

    private static AlterationEffects effects(Alteration alteration, Stage before, Stage after) {
        List<Change<Length>> lengths = new ArrayList<>();
        after.lengths()
                .forEach(
                        (what, is) -> {
                            Length was = before.lengths().getOrDefault(what, is);
                            if (!is.minus(was).size().isShorterThan(SAME)) {
                                lengths.add(new Change<>(what, was, is));
                            }
                        });
        List<Change<Area>> cloth = new ArrayList<>();
        after.cloth()
                .forEach(
                        (role, is) -> {
                            Area was = before.cloth().getOrDefault(role, is);
                            if (is.compareTo(was) != 0) {
                                cloth.add(new Change<>(role, was, is));
                            }
                        });
        return new AlterationEffects(alteration, lengths, cloth);
    }
}
