package secondbolt.work.order;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.task.Hazard;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;

/** Makes one step of those that several topics give under one name. */
public final class Gathered {
    private Gathered() {}

    /** The steps, each name once, at the place of its first. */
    public static List<WorkStep> of(List<WorkStep> given) {
        Map<String, WorkStep> all = new LinkedHashMap<>();
        given.forEach(step -> all.merge(step.name(), step, Gathered::both));
        return List.copyOf(all.values());
    }

    private static WorkStep both(WorkStep one, WorkStep other) {
        Set<WorkStep.Follows> follows = new LinkedHashSet<>(one.follows());
        follows.addAll(other.follows());
        Set<String> checks = new LinkedHashSet<>(one.checks());
        checks.addAll(other.checks());
        Set<Hazard> hazards = EnumSet.noneOf(Hazard.class);
        hazards.addAll(one.hazards());
        hazards.addAll(other.hazards());
        return new WorkStep(
                one.name(),
                one.stage(),
                one.text().equals(other.text()) ? one.text() : one.text() + " " + other.text(),
                List.copyOf(follows),
                longer(one.pause(), other.pause()),
                new ArrayList<>(checks),
                hazards,
                one.isWet() || other.isWet(),
                one.isDone() && other.isDone());
    }

    private static Optional<Wait> longer(Optional<Wait> one, Optional<Wait> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        return one.get().most().compareTo(other.get().most()) >= 0 ? one : other;
    }
}
