package secondbolt.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.draw.paper.Paper;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.measure.Tape;
import secondbolt.topic.Introduction;
import secondbolt.topic.Topic;

/** The root of the project file. */
public final class ProjectSection {
    /** The tape of bare numbers. */
    public static final Key<Tape> UNITS =
            Key.required(
                    "units",
                    Forms.choice(Tape.values(), Tape::symbol),
                    "The unit of bare numbers, and the tape the sheets print for.",
                    "cm");

    private static final Key<Paper> PAPER =
            Key.optional(
                    "paper",
                    PaperForm.FORM,
                    "The paper the sheets are laid out for, unless local.yaml names your own; a4"
                            + " for cm and letter for in if not told.",
                    "a4");

    private static final List<Key<?>> LATER =
            List.of(
                    Key.later("log", "What happened, with photos."),
                    Key.later("private", "What the public edition leaves out."),
                    Key.later("shown", "What the public edition may show."));

    private ProjectSection() {}

    /** The whole file: what a project says of itself, the keys of the topics, and keys to come. */
    public static Form<Project> form(List<Topic<?>> topics) {
        List<Key<?>> keys =
                new ArrayList<>(List.of(Introduction.TITLE, Introduction.SUMMARY, UNITS, PAPER));
        topics.forEach(topic -> keys.addAll(topic.keys()));
        keys.addAll(LATER);
        return MapForm.of("a project file", keys, ProjectSection::project);
    }

    private static Optional<Project> project(Fields fields) {
        Heading heading =
                new Heading(
                        fields.require(Introduction.TITLE),
                        fields.get(Introduction.SUMMARY),
                        fields.require(UNITS),
                        fields.get(PAPER));
        return Optional.of(new Project(heading, fields));
    }
}
