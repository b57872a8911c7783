package secondbolt.app;

import java.nio.file.Path;
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
 * @param plan as it is written, if there is one
 * @param isAnew whether what is pinned and not cut is forgotten
 */
record PinnedProject(Workings workings, Optional<SourceFile> plan, boolean isAnew) {
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
        Optional<SourceFile> plan = source.flatMap(s -> s.beside(PlanFile.NAME, mistakes));
        Optional<PlanFile.Plan> read = plan.flatMap(PinnedProject::read);
        read.flatMap(r -> PlanText.mistake(plan.orElseThrow(), r)).ifPresent(mistakes::add);
        boolean isAnew = anew && read.isPresent() && mistakes.isEmpty();
        Optional<Workings> workings =
                source.flatMap(
                        s ->
                                Workplace.guarded(
                                        name,
                                        mistakes,
                                        () ->
                                                new Workshop(
                                                                Topics.all(
                                                                        workplace.lays(
                                                                                true, quiet)))
                                                        .work(
                                                                s,
                                                                plan.map(
                                                                        p ->
                                                                                isAnew
                                                                                        ? onlyCut(p)
                                                                                        : p),
                                                                workplace.folderName(file),
                                                                mistakes)));
        workings.filter(w -> !isLaid(w)).ifPresent(w -> mistakes.add(notLaid(name)));
        return workings.filter(w -> mistakes.isEmpty())
                .map(w -> new PinnedProject(w, plan, isAnew));
    }

    private static SourceFile onlyCut(SourceFile plan) {
        return PlanText.onlyCut(plan, read(plan).orElseThrow());
    }

    private static Mistake notLaid(String name) {
        return new Mistake(
                Place.beginningOf(name),
                "nothing that is laid to its end",
                "a pattern, and a cloth whose size and shrinkage are known; and a search that is"
                        + " not stopped",
                "");
    }

    /** What is wrong with it is told when the project is worked out with it. */
    private static Optional<PlanFile.Plan> read(SourceFile plan) {
        return ProjectFileReader.read(plan, PlanFile.ROOT, PlanFile.UNITS, new Mistakes());
    }

    private static boolean isLaid(Workings workings) {
        return workings.came(LayTopic.NAME)
                .map(LayResult::made)
                .filter(made -> !made.stocks().isEmpty())
                .filter(made -> made.stocks().stream().allMatch(StockLay::isFinished))
                .isPresent();
    }

    /** The plan as it is to be written. */
    PlanText.Written written() {
        PlanText text =
                new PlanText(
                        workings.came(LayTopic.NAME).orElseThrow(),
                        new LayPieces(workings.came(CuttingTopic.NAME).orElseThrow()).byName(),
                        workings.came(FitTopic.NAME).orElseThrow().alterations(),
                        workings.heading().units());
        return plan.map(p -> written(text, p, read(p).orElseThrow())).orElseGet(text::fresh);
    }

    private PlanText.Written written(PlanText text, SourceFile old, PlanFile.Plan read) {
        return isAnew ? text.anew(old, read) : text.updated(old, read);
    }
}
