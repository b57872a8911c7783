package secondbolt.app;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import secondbolt.cutting.CuttingTopic;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.FitTopic;
import secondbolt.lay.LayTopic;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.pin.PlanText;
import secondbolt.lay.plan.PlanFile;
import secondbolt.lay.stock.StockLay;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;

/**
 * A project worked out to be pinned.
 *
 * @param workings the project worked out
 * @param plan the plan it was worked out with, if there is one
 */
record PinnedProject(Workings workings, Optional<SourceFile> plan) {
    /**
     * Works a project out.
     *
     * @param anew whether what is pinned and not cut is forgotten
     * @return nothing if it has mistakes, or nothing of it is laid
     */
    static Optional<PinnedProject> of(
            Workplace workplace, Path file, boolean anew, boolean quiet, Mistakes mistakes) {
        String name = Workplace.name(file);
        Optional<SourceFile> source =
                SourceFile.read(workplace.folder().resolve(file), name, mistakes);
        Optional<SourceFile> plan =
                source.flatMap(s -> s.beside(PlanFile.NAME, mistakes))
                        .flatMap(
                                p ->
                                        anew
                                                ? PlanText.onlyCut(p, written(p).entries())
                                                : Optional.of(p));
        Optional<PinnedProject> project =
                source.flatMap(
                                s ->
                                        new Workshop(Topics.all(workplace.lays(true, quiet)))
                                                .work(
                                                        s,
                                                        plan,
                                                        workplace.folderName(file),
                                                        mistakes))
                        .map(w -> new PinnedProject(w, plan));
        project.filter(p -> !p.isLaid())
                .ifPresent(
                        p ->
                                mistakes.add(
                                        new Mistake(
                                                Place.beginningOf(name),
                                                "nothing that is laid to its end",
                                                "a pattern, and a cloth whose size and shrinkage"
                                                        + " are known; and a search that is not"
                                                        + " stopped",
                                                "")));
        return project.filter(p -> mistakes.isEmpty());
    }

    /** What is wrong with it is told when the project is worked out with it. */
    private static PlanFile.Plan written(SourceFile plan) {
        return ProjectFileReader.read(plan, PlanFile.ROOT, PlanFile.UNITS, new Mistakes())
                .orElse(PlanFile.Plan.NONE);
    }

    private boolean isLaid() {
        return workings.came(LayTopic.NAME)
                .map(LayResult::made)
                .filter(made -> !made.stocks().isEmpty())
                .filter(made -> made.stocks().stream().allMatch(StockLay::isFinished))
                .isPresent();
    }

    /** The plan as it is to be written; nothing if two of its pieces stand in one line. */
    Optional<PlanText.Written> written() {
        List<String> names = new LayPieces(workings.came(CuttingTopic.NAME).orElseThrow()).names();
        PlanText text =
                new PlanText(
                        workings.came(LayTopic.NAME).orElseThrow(),
                        new HashSet<>(names),
                        workings.came(FitTopic.NAME).orElseThrow().alterations(),
                        workings.heading().units());
        return plan.isEmpty()
                ? Optional.of(text.fresh())
                : text.updated(plan.get(), written(plan.get()));
    }
}
