package secondbolt.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.Closure;
import secondbolt.closure.ClosureCheck;
import secondbolt.file.Fields;
import secondbolt.file.Placed;
import secondbolt.fit.AlterationSection;
import secondbolt.fit.EdgeSum;
import secondbolt.fit.FitCalculation;
import secondbolt.fit.FitCheck;
import secondbolt.fit.FitResult;
import secondbolt.fit.Pattern;
import secondbolt.hem.HemAllowances;
import secondbolt.hem.HemCheck;
import secondbolt.hem.HemSection;
import secondbolt.lay.plan.LayCheck;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.LaySection;
import secondbolt.measure.Tape;

/** Checks what one section of a project says of another. */
final class ProjectCheck {
    private final Project project;
    private final Tape tape;
    private final List<FitCheck.Trouble> troubles = new ArrayList<>();

    private ProjectCheck(Project project) {
        this.project = project;
        this.tape = project.heading().units();
    }

    /** Whether all sections agree; each mistake is told at its place. */
    static boolean holds(Project project, Fields fields) {
        if (project.pattern().isEmpty() && !project.alterations().isEmpty()) {
            fields.tell(
                    AlterationSection.KEY, "alterations without a pattern", "`pattern` as well");
            return false;
        }
        if (project.pattern().isEmpty() && !project.hems().isEmpty()) {
            fields.tell(HemSection.KEY, "hems without a pattern", "`pattern` as well");
            return false;
        }
        if (project.pattern().isEmpty() && !project.lay().equals(LayPlan.NONE)) {
            fields.tell(
                    fields.get(LaySection.DESIGNS).isPresent()
                            ? LaySection.DESIGNS
                            : LaySection.LAY,
                    "a lay without a pattern",
                    "`pattern` as well");
            return false;
        }
        ProjectCheck check = new ProjectCheck(project);
        project.pattern().ifPresent(check::pattern);
        Optional<FitResult> fit =
                check.troubles.isEmpty()
                        ? project.pattern()
                                .map(p -> HemAllowances.included(p, project.hems(), check.tape))
                                .map(p -> FitCalculation.work(p, project.alterations(), check.tape))
                        : Optional.empty();
        project.closures()
                .ifPresent(all -> all.values().forEach(closure -> check.closure(closure, fit)));
        check.troubles.forEach(t -> fields.tell(t.place(), t.found(), t.right()));
        return check.troubles.isEmpty();
    }

    private void pattern(Pattern pattern) {
        troubles.addAll(FitCheck.of(pattern, project.alterations(), tape));
        troubles.addAll(HemCheck.of(project.hems(), pattern, tape));
        troubles.addAll(LayCheck.of(project.lay(), pattern, project.cloths().orElse(Map.of())));
    }

    /** A closure on edges of the pattern must name some that are there, and fit on them. */
    private void closure(Closure closure, Optional<FitResult> fit) {
        if (closure.placket().edges().isEmpty()) {
            return;
        }
        Placed<EdgeSum> edges = closure.placket().edges().get();
        if (project.pattern().isEmpty()) {
            troubles.add(
                    new FitCheck.Trouble(
                            edges.place(),
                            "an edge of no pattern",
                            "`pattern` as well, or `length`"));
            return;
        }
        List<FitCheck.Trouble> missing = FitCheck.of(project.pattern().get(), edges, tape);
        troubles.addAll(missing);
        if (missing.isEmpty() && fit.isPresent()) {
            troubles.addAll(ClosureCheck.of(closure, fit, tape));
        }
    }
}
