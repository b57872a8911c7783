package secondbolt.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.Closure;
import secondbolt.closure.ClosureCheck;
import secondbolt.closure.ClosureSection;
import secondbolt.cloth.ClothSection;
import secondbolt.draw.paper.Paper;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Forms;
import secondbolt.file.Key;
import secondbolt.file.MapForm;
import secondbolt.file.Placed;
import secondbolt.fit.AlterationSection;
import secondbolt.fit.EdgeSum;
import secondbolt.fit.FitCalculation;
import secondbolt.fit.FitCheck;
import secondbolt.fit.FitResult;
import secondbolt.fit.PatternSection;
import secondbolt.fit.size.WearerSection;
import secondbolt.measure.Tape;

/** The root of the project file: the hand-written list of its sections. */
public final class ProjectSection {
    /** The tape of bare numbers. */
    public static final Key<Tape> UNITS =
            Key.required(
                    "units",
                    Forms.choice(Tape.values(), Tape::symbol),
                    "The unit of bare numbers, and the tape the sheets print for.",
                    "cm");

    private static final Key<String> TITLE =
            Key.required("title", Forms.text(120), "The project's name.", "Porch shirt");
    private static final Key<String> SUMMARY =
            Key.optional(
                    "summary",
                    Forms.text(4000),
                    "What becomes of what, in a few sentences; Markdown.",
                    "Two cotton curtains become a shirt.");
    private static final Key<Paper> PAPER =
            Key.optional(
                    "paper",
                    PaperForm.FORM,
                    "The paper the sheets are laid out for, unless local.yaml names your own; a4 for"
                            + " cm and letter for in if not told.",
                    "a4");

    /** The whole file. */
    public static final Form<Project> ROOT =
            MapForm.of(
                    "a project file",
                    List.of(
                            TITLE,
                            SUMMARY,
                            UNITS,
                            PAPER,
                            WearerSection.KEY,
                            ClothSection.KEY,
                            PatternSection.KEY,
                            AlterationSection.KEY,
                            ClosureSection.KEY,
                            Key.later("designs", "What the cloth could become."),
                            Key.later("make", "The design the notebook works out."),
                            Key.later("machine", "What the sewing machine can do."),
                            Key.later("hems", "Depth and turns of each hem."),
                            Key.later("lay", "How pieces are laid on the cloth."),
                            Key.later("cut so far", "Pieces that are cut already."),
                            Key.later("dye", "Cloth, colour and bath."),
                            Key.later("interfacing", "What stiffens which piece."),
                            Key.later("supplies", "What must be bought."),
                            Key.later("currency", "The money prices are in."),
                            Key.later("hours", "Time spent."),
                            Key.later("work", "Own steps, and what is done."),
                            Key.later("log", "What happened, with photos."),
                            Key.later("private", "What the public edition leaves out."),
                            Key.later("shown", "What the public edition may show.")),
                    ProjectSection::project);

    private ProjectSection() {}

    private static Optional<Project> project(Fields fields) {
        Heading heading =
                new Heading(
                        fields.require(TITLE),
                        fields.get(SUMMARY),
                        fields.require(UNITS),
                        fields.get(PAPER));
        Project project =
                new Project(
                        heading,
                        fields.get(WearerSection.KEY),
                        fields.get(ClothSection.KEY),
                        fields.get(PatternSection.KEY),
                        fields.get(AlterationSection.KEY).orElse(List.of()),
                        fields.get(ClosureSection.KEY));
        return fits(project, fields) ? Optional.of(project) : Optional.empty();
    }

    /** Checks what one section says of another. */
    private static boolean fits(Project project, Fields fields) {
        if (project.pattern().isEmpty() && !project.alterations().isEmpty()) {
            fields.tell(
                    AlterationSection.KEY, "alterations without a pattern", "`pattern` as well");
            return false;
        }
        List<FitCheck.Trouble> troubles =
                project.pattern()
                        .map(p -> FitCheck.of(p, project.alterations(), project.heading().units()))
                        .orElse(List.of());
        List<FitCheck.Trouble> all = new ArrayList<>(troubles);
        if (troubles.isEmpty()) {
            project.closures()
                    .ifPresent(
                            closures ->
                                    closures.values()
                                            .forEach(c -> all.addAll(troubles(c, project))));
        }
        all.forEach(t -> fields.tell(t.place(), t.found(), t.right()));
        return all.isEmpty();
    }

    /** What is wrong with a closure on the edges of the pattern. */
    private static List<FitCheck.Trouble> troubles(Closure closure, Project project) {
        if (closure.placket().edges().isEmpty()) {
            return List.of();
        }
        Placed<EdgeSum> edges = closure.placket().edges().get();
        if (project.pattern().isEmpty()) {
            return List.of(
                    new FitCheck.Trouble(
                            edges.place(),
                            "an edge of no pattern",
                            "`pattern` as well, or `length`"));
        }
        Tape tape = project.heading().units();
        List<FitCheck.Trouble> missing = FitCheck.of(project.pattern().get(), edges, tape);
        if (!missing.isEmpty()) {
            return missing;
        }
        FitResult fit = FitCalculation.work(project.pattern().get(), project.alterations(), tape);
        return ClosureCheck.of(closure, closure.placket().length(Optional.of(fit)));
    }
}
