package secondbolt.lay;

import java.util.List;
import java.util.Optional;
import secondbolt.cutting.CuttingTopic;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.FitTopic;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.pin.PlanText;
import secondbolt.lay.plan.PlanFile;
import secondbolt.lay.stock.StockLay;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.worksheet.Finding;

/** A project of a few lines worked out with its plan, as the program does. */
record PinnedWork(Workings workings, Optional<SourceFile> plan) {
    private static final LayDesk DESK = LayDesk.inMemory();

    static PinnedWork of(String text) {
        return of(text, Optional.empty());
    }

    static PinnedWork of(String text, String plan) {
        return of(text, Optional.of(SourceFile.of("plan.yaml", plan)));
    }

    private static PinnedWork of(String text, Optional<SourceFile> plan) {
        Mistakes mistakes = new Mistakes();
        return new Workshop(Topics.all(DESK))
                .work(SourceFile.of("project.yaml", text), plan, "try", mistakes)
                .map(workings -> new PinnedWork(workings, plan))
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    /** What is wrong with a plan, each as it is told. */
    static List<String> mistakes(String text, String plan) {
        Mistakes mistakes = new Mistakes();
        new Workshop(Topics.all(DESK))
                .work(
                        SourceFile.of("project.yaml", text),
                        Optional.of(SourceFile.of("plan.yaml", plan)),
                        "try",
                        mistakes);
        return mistakes.inOrder().stream().map(Object::toString).toList();
    }

    LayResult lay() {
        return workings.came(LayTopic.NAME).orElseThrow();
    }

    StockLay stock() {
        return lay().made().stocks().get(0);
    }

    /** The places of all copies still to be cut, in the order of laying. */
    List<String> places() {
        return stock().laid().stream().map(PinnedWork::place).toList();
    }

    static String place(LaidPiece laid) {
        return laid.piece().words()
                + " "
                + laid.placement().orientation()
                + " "
                + laid.placement().acrossMm()
                + " "
                + laid.placement().alongMm();
    }

    /** The plan as the program writes it now. */
    String written() {
        return plan.map(old -> text().updated(old, read(old))).orElseGet(text()::fresh).text();
    }

    /** The plan with all that is not cut laid anew. */
    String anew(String text) {
        SourceFile old = plan.orElseThrow();
        PinnedWork cut = of(text, Optional.of(PlanText.onlyCut(old, read(old))));
        return cut.text().anew(old, read(old)).text();
    }

    private PlanText text() {
        return new PlanText(
                lay(),
                new LayPieces(workings.came(CuttingTopic.NAME).orElseThrow()).byName(),
                workings.came(FitTopic.NAME).orElseThrow().alterations(),
                workings.heading().units());
    }

    private static PlanFile.Plan read(SourceFile plan) {
        return ProjectFileReader.read(plan, PlanFile.ROOT, PlanFile.UNITS, new Mistakes())
                .orElseThrow();
    }

    /** What is told of what is pinned. */
    List<Finding> told() {
        return workings.findings().stream().filter(f -> f.code().startsWith("pin-")).toList();
    }

    List<String> codes() {
        return told().stream().map(Finding::code).toList();
    }
}
