package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import secondbolt.file.Placed;
import secondbolt.fit.FitCheck;
import secondbolt.fit.Pattern;
import secondbolt.fit.Piece;

/** Finds what a plan for the lay says of pieces, cloths and designs that are not there. */
public final class LayCheck {
    private final List<FitCheck.Trouble> troubles = new ArrayList<>();
    private final Set<String> pieces;
    private final Set<String> cloths;
    private final LayPlan plan;

    private LayCheck(LayPlan plan, Set<String> pieces, Set<String> cloths) {
        this.plan = plan;
        this.pieces = pieces;
        this.cloths = cloths;
    }

    /** All mistakes; none if the plan can be worked out. */
    public static List<FitCheck.Trouble> of(LayPlan plan, Pattern pattern, Set<String> cloths) {
        Set<String> names = new TreeSet<>();
        pattern.pieces().stream().map(Piece::name).forEach(names::add);
        LayCheck check = new LayCheck(plan, names, new TreeSet<>(cloths));
        check.all();
        return List.copyOf(check.troubles);
    }

    private void all() {
        for (Map.Entry<String, Design> design : plan.designs().entrySet()) {
            design.getValue().uses().forEach(this::piece);
        }
        plan.make()
                .ifPresent(
                        make ->
                                known(
                                        make,
                                        plan.designs().keySet(),
                                        "which is no design",
                                        "a design under `designs`"));
        plan.grains().forEach((name, grain) -> piece(new Placed<>(name, grain.place())));
        for (LayPlan.CutAlready cut : plan.soFar()) {
            piece(cut.piece());
            known(cut.cloth(), cloths, "which is no cloth", "a cloth under `cloth`");
        }
    }

    private void piece(Placed<String> name) {
        known(name, pieces, "which is no piece of the pattern", "a piece under `pattern`");
    }

    private void known(Placed<String> name, Set<String> all, String isNot, String none) {
        if (!all.contains(name.value())) {
            troubles.add(
                    new FitCheck.Trouble(
                            name.place(),
                            "`" + name.value() + "`, " + isNot,
                            all.isEmpty() ? none : "one of " + String.join(", ", all)));
        }
    }
}
