package secondbolt.project;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.ClosureSection;
import secondbolt.closure.Machine;
import secondbolt.cloth.ClothSection;
import secondbolt.draw.paper.Paper;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Forms;
import secondbolt.file.Key;
import secondbolt.file.MapForm;
import secondbolt.fit.AlterationSection;
import secondbolt.fit.PatternSection;
import secondbolt.fit.size.WearerSection;
import secondbolt.hem.HemSection;
import secondbolt.lay.plan.LaySection;
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
                            Machine.KEY,
                            ClosureSection.KEY,
                            HemSection.KEY,
                            LaySection.DESIGNS,
                            LaySection.MAKE,
                            LaySection.LAY,
                            LaySection.CUT_SO_FAR,
                            LaySection.INTERFACING,
                            Key.later("dye", "Cloth, colour and bath."),
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
                        fields.get(Machine.KEY).orElse(Machine.UNKNOWN),
                        fields.get(ClosureSection.KEY),
                        fields.get(HemSection.KEY).orElse(Map.of()),
                        LaySection.plan(fields));
        return ProjectCheck.holds(project, fields) ? Optional.of(project) : Optional.empty();
    }
}
