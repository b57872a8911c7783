package secondbolt.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.Key;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.task.Need;
import secondbolt.task.WorkStep;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Worksheet;

/**
 * Supplies written in a test as they would stand in a project file, beside what another topic
 * needs.
 *
 * @param needs of the other topic
 * @param steps of the other topic
 */
public record Written(List<Need> needs, List<WorkStep> steps) {
    /** Nothing is needed by anything. */
    public static final Written ALONE = new Written(List.of(), List.of());

    /** A topic that has nothing but needs and steps. */
    private record Giving(Gives gives) implements Topic<Boolean> {
        @Override
        public TopicName<Boolean> name() {
            return new TopicName<>("giving");
        }

        @Override
        public List<Key<?>> keys() {
            return List.of();
        }

        @Override
        public Outcome<Boolean> work(Bench bench) {
            return Outcome.of(
                    true, Worksheet.of("giving", "Giving", () -> Notes.NONE).giving(gives));
        }
    }

    /** With these needs. */
    public static Written needing(Need... needs) {
        return new Written(List.of(needs), List.of());
    }

    /** The page of the supplies; nothing if there is none. */
    public Optional<Worksheet> sheet(String units, String... lines) {
        Mistakes mistakes = new Mistakes();
        Optional<Workings> workings = work(units, mistakes, lines);
        return workings
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                .worksheets()
                .stream()
                .filter(sheet -> sheet.name().equals("supply"))
                .findFirst();
    }

    /** What is found, as code and level. */
    public List<String> findings(String... lines) {
        return sheet("cm", lines).orElseThrow().findings().stream().map(Finding::code).toList();
    }

    /** What was found and what would be right, of each mistake. */
    public List<String> mistakes(String... lines) {
        Mistakes mistakes = new Mistakes();
        work("cm", mistakes, lines);
        return mistakes.inOrder().stream().map(m -> m.found() + " | " + m.right()).toList();
    }

    private Optional<Workings> work(String units, Mistakes mistakes, String... lines) {
        List<Topic<?>> topics = new ArrayList<>();
        for (Topic<?> topic : Topics.all(LayDesk.inMemory())) {
            if (topic.name().equals(SupplyTopic.NAME)) {
                topics.add(new Giving(new Gives(steps, needs, List.of())));
            }
            topics.add(topic);
        }
        String text = "title: Apron\nunits: " + units + "\n" + String.join("\n", lines) + "\n";
        return new Workshop(topics).work(SourceFile.of("project.yaml", text), "apron", mistakes);
    }
}
