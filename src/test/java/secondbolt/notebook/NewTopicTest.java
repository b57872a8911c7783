package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import secondbolt.block.Block;
import secondbolt.block.Fact;
import secondbolt.figure.Figures;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.LengthRange;
import secondbolt.lay.kept.LayDesk;
import secondbolt.measure.Length;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.site.SiteFile;
import secondbolt.project.ProjectSection;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.supply.SupplyTopic;
import secondbolt.task.Amount;
import secondbolt.task.Need;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Term;
import secondbolt.worksheet.Worksheet;

/** A topic of thirty lines, put on the list by one. */
class NewTopicTest {
    /** A loop to hang the garment by. */
    private static final class LoopTopic implements Topic<Length> {
        private static final Key<Length> LOOP =
                Key.optional(
                        "hanging loop",
                        Forms.length(LengthRange.of("2 cm", "20 cm")),
                        "How long the loop at the neck is.",
                        "8 cm");

        @Override
        public TopicName<Length> name() {
            return new TopicName<>("loop");
        }

        @Override
        public List<Key<?>> keys() {
            return List.of(LOOP);
        }

        @Override
        public Outcome<Length> work(Bench bench) {
            Optional<Length> loop = bench.written(LOOP);
            return loop.map(l -> Outcome.of(l, sheet(l, bench))).orElseGet(Outcome::nothing);
        }

        private static Worksheet sheet(Length loop, Bench bench) {
            Length cut = loop.plus(Length.ofMillimetres(30));
            return Worksheet.of("loop", "The hanging loop", () -> Notes.NONE)
                    .showing(
                            () ->
                                    List.of(
                                            new Block.Facts(
                                                    List.of(Fact.of("Cut", bench.tape(), cut)))))
                    .telling(() -> new Figures().toldLength("cut", cut, "the loop, cut"))
                    .giving(
                            new Gives(
                                    List.of(
                                            WorkStep.of(
                                                    "loop", Stage.FINISHING, "Sew the loop in.")),
                                    List.of(
                                            Need.of(
                                                    "tape for the loop",
                                                    new Amount.Run(loop),
                                                    "to hang it by")),
                                    List.of(new Term("hanging loop", "A loop at the neck."))));
        }
    }

    private static final List<Topic<?>> TOPICS = topics();

    private static List<Topic<?>> topics() {
        List<Topic<?>> topics = new ArrayList<>(Topics.all(LayDesk.inMemory()));
        topics.add(topics.indexOf(supply(topics)), new LoopTopic());
        return topics;
    }

    /** What is bought is gathered from the topics before it. */
    private static Topic<?> supply(List<Topic<?>> topics) {
        return topics.stream()
                .filter(topic -> topic.name().equals(SupplyTopic.NAME))
                .findFirst()
                .orElseThrow();
    }

    private static Workings workings(String text) {
        Mistakes mistakes = new Mistakes();
        return new Workshop(TOPICS)
                .work(
                        SourceFile.of("project.yaml", "title: Coat\nunits: cm\n" + text),
                        "coat",
                        mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    private static Stream<Gives> given(Workings workings) {
        return workings.worksheets().stream().map(Worksheet::gives);
    }

    private static List<SiteFile> site(String text) {
        return new Notebook("0.1.0", ProjectSection.form(TOPICS), Map.of())
                .make(List.of(workings(text)), List.of(), Desk.UNKNOWN);
    }

    @Test
    void isReadAndExplained() {
        List<SiteFile> site = site("hanging loop: 8 cm\n");
        assertTrue(SampleSite.text(site, Notebook.REFERENCE).contains("id=\"key.hanging-loop\""));
        assertTrue(SampleSite.text(site, Notebook.SCHEMA).contains("\"hanging loop\""));
        Mistakes mistakes = new Mistakes();
        new Workshop(TOPICS)
                .work(
                        SourceFile.of("p.yaml", "title: Coat\nunits: cm\nhanging lop: 8 cm\n"),
                        "coat",
                        mistakes);
        assertEquals("`hanging loop`", mistakes.inOrder().get(0).right());
    }

    @Test
    void hasItsPlaceOnThePageAndInTheFigures() {
        List<SiteFile> site = site("hanging loop: 8 cm\n");
        String page = SampleSite.text(site, "coat/index.html");
        assertTrue(page.contains("<h2>The hanging loop</h2>"), page);
        assertTrue(page.contains("<dt>Cut</dt><dd><span class=\"own\">11 cm</span>"), page);
        assertTrue(SampleSite.text(site, "coat/workings.json").contains("\"cut_mm\": 110"));
    }

    @Test
    void isToldWhenItChanges() {
        String before = SampleSite.text(site("hanging loop: 8 cm\n"), "coat/workings.json");
        String now = SampleSite.text(site("hanging loop: 9 cm\n"), "coat/workings.json");
        List<String> changes = Changes.between(Optional.of(before), now);
        assertTrue(changes.contains("loop › cut: 11 cm -> 12 cm"), changes.toString());
        assertTrue(
                changes.contains("supply › supplies › tape for the loop › needed: 8 cm -> 9 cm"),
                changes.toString());
    }

    @Test
    void givesToTheOrderOfWorkTheThingsNeededAndTheGlossary() {
        Workings workings = workings("hanging loop: 8 cm\n");
        assertEquals(
                List.of("Sew the loop in.", "Buy what the shopping list names under Buy now."),
                given(workings).flatMap(g -> g.steps().stream()).map(WorkStep::text).toList());
        assertEquals(
                List.of("tape for the loop"),
                given(workings).flatMap(g -> g.needs().stream()).map(Need::item).toList());
        assertEquals(List.of("hanging loop"), workings.terms().stream().map(Term::word).toList());
        String figures = SampleSite.text(site("hanging loop: 8 cm\n"), "coat/workings.json");
        assertTrue(figures.contains("\"work\"") && figures.contains("\"Sew the loop in.\""));
    }

    @Test
    void standsOnTheShoppingList() {
        List<SiteFile> site = site("hanging loop: 8 cm\n");
        String page = SampleSite.text(site, "coat/index.html");
        assertTrue(page.contains("tape for the loop"), page);
        assertTrue(page.contains("to hang it by"), page);
        assertTrue(
                site.stream().anyMatch(file -> file.path().equals("coat/shopping-list.pdf")),
                site.toString());
        String figures = SampleSite.text(site, "coat/workings.json");
        assertTrue(figures.contains("\"item\": \"tape for the loop\""), figures);
        assertTrue(figures.contains("\"to_buy_mm\": 100"), figures);
    }
}
