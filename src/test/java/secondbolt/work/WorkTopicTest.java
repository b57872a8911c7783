package secondbolt.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.Key;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.task.Amount;
import secondbolt.task.Hazard;
import secondbolt.task.Need;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Worksheet;

/** Whole projects, with a topic that gives steps as any other does. */
class WorkTopicTest {
    /**
     * Gives steps and needs.
     *
     * @param gives them
     */
    private record GivingTopic(Gives gives) implements Topic<Boolean> {
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

    private static final WorkStep DYE =
            WorkStep.of("dye", Stage.DYEING, "Dye it.")
                    .wet()
                    .waiting(Wait.hours("it rests in the bath", 12, "The packet's leaflet."));
    private static final WorkStep WASH_OFF =
            WorkStep.of("wash off", Stage.DYEING, "Wash it off.").after("dye", "It is its wash.");
    private static final WorkStep DRY =
            WorkStep.of("dry", Stage.DYEING, "Dry it.").after("wash off", "It is wet.");
    private static final WorkStep CUT = WorkStep.of("cut", Stage.CUTTING, "Cut it.");
    private static final WorkStep FUSE =
            WorkStep.of("fuse", Stage.SEWING, "Fuse.")
                    .after("dye", "The bath undoes the fusing.")
                    .after("cut", "It is fused to a piece.")
                    .minding(Hazard.IRON);

    private static Gives gives(WorkStep... steps) {
        return new Gives(List.of(steps), List.of(), List.of());
    }

    private static Optional<Workings> work(Mistakes mistakes, Gives gives, String... lines) {
        List<Topic<?>> topics = new ArrayList<>(Topics.all(LayDesk.inMemory()));
        int at = topics.stream().map(t -> t.name().word()).toList().indexOf("supply");
        topics.add(at, new GivingTopic(gives));
        String text = "title: Try\nunits: cm\n" + String.join("\n", lines) + "\n";
        return new Workshop(topics).work(SourceFile.of("project.yaml", text), "try", mistakes);
    }

    private static WorkResult result(Gives gives, String... lines) {
        return workings(gives, lines).came(WorkTopic.NAME).orElseThrow();
    }

    private static Workings workings(Gives gives, String... lines) {
        Mistakes mistakes = new Mistakes();
        Optional<Workings> workings = work(mistakes, gives, lines);
        assertEquals(List.of(), mistakes.inOrder());
        return workings.orElseThrow();
    }

    private static List<String> names(WorkResult result) {
        return result.steps().stream().map(WorkStep::name).toList();
    }

    /** These, in the order of the result; other topics give steps as well. */
    private static List<String> kept(WorkResult result, String... names) {
        return names(result).stream().filter(List.of(names)::contains).toList();
    }

    private static List<String> mistakes(Gives gives, String... lines) {
        Mistakes mistakes = new Mistakes();
        work(mistakes, gives, lines);
        return mistakes.inOrder().stream()
                .map(m -> m.place().line() + " " + m.found() + "; " + m.right())
                .toList();
    }

    private static List<Finding> found(Workings workings) {
        return workings.findings().stream().filter(f -> f.code().startsWith("work-")).toList();
    }

    private static WorkStep step(WorkResult result, String name) {
        return result.steps().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    }

    private static final String[] SKIRT = {
        "pattern:",
        "  rights: mine",
        "  seam allowance: {of: 1, included: false}",
        "  pieces:",
        "    Bahn: {cut: 2, panel: {top: 30, bottom: 44, along: 60}}",
        "    Bund: {cut: 1, rectangle: [30, 6]}",
        "    Schlaufe: {cut: 1, rectangle: [2, 10]}",
        "  seams: [[Bahn.right, Bahn.left], [Bahn.waist, Bund.bottom]]"
    };

    private static String[] with(String[] lines, String... more) {
        List<String> all = new ArrayList<>(List.of(lines));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    @Test
    void saysNothingWhereThereIsNothingToDo() {
        assertTrue(workings(Gives.NOTHING).came(WorkTopic.NAME).isEmpty());
    }

    /** Where no kind is told, nothing sewn is missing from the one step that sews. */
    @Test
    void listsAllSeamsUnderOneStepWhereNoKindIsTold() {
        WorkResult result = result(Gives.NOTHING, SKIRT);
        assertEquals(List.of("assemble", "last press"), kept(result, "assemble", "last press"));
        assertFalse(names(result).contains("band"));
        String text = step(result, "assemble").text();
        assertTrue(text.contains("Bahn, right to Bahn, left; Bahn, waist to Bund, bottom"), text);
        assertTrue(text.contains("No written seam joins Schlaufe."), text);
    }

    /** Source: K. H. Watson, Textiles and Clothing, 1907: baste, fit, stitch, band. */
    @Test
    void putsAGoredSkirtInThePublishedOrderWhateverItsPiecesAreCalled() {
        WorkResult result = result(Gives.NOTHING, with(SKIRT, "garment: skirt"));
        assertEquals(
                List.of("baste", "fit on", "gores", "band", "assemble", "last press"),
                kept(result, "baste", "fit on", "gores", "band", "assemble", "last press"));
        assertTrue(result.source().contains("gored skirt"));
    }

    /** Source: the same book: sleeves made up, set in round; sewn in flat first: from memory. */
    @Test
    void setsSleevesInRoundOrSewsThemInFlatButNeverHalfOfEach() {
        List<String> blouse = names(result(Gives.NOTHING, "garment: blouse"));
        assertTrue(blouse.indexOf("sleeve seams") < blouse.indexOf("sleeves"), blouse.toString());
        assertTrue(blouse.indexOf("side seams") < blouse.indexOf("sleeves"));
        List<String> shirt = names(result(Gives.NOTHING, "garment: shirt"));
        assertTrue(shirt.indexOf("sleeves") < shirt.indexOf("side seams"), shirt.toString());
        List<String> round =
                names(
                        result(
                                Gives.NOTHING,
                                "garment: shirt",
                                "work: {order: [sleeve seams, sleeves]}"));
        assertTrue(round.indexOf("side seams") < round.indexOf("sleeves"), round.toString());
        List<Finding> half =
                found(
                        workings(
                                Gives.NOTHING,
                                "garment: shirt",
                                "work: {order: [sleeve seams, sleeves, side seams]}"));
        assertEquals(1, half.size());
        assertTrue(half.get(0).text().contains("never half of each"), half.toString());
    }

    /** Source: Text-Book on Domestic Art: widths, sides, lower hem, gather, band, ties. */
    @Test
    void hemsAStraightApronBeforeItIsGathered() {
        WorkStep hem = WorkStep.of("hem", Stage.HEMMING, "Hem it.");
        List<String> names = names(result(gives(CUT, hem), "garment: apron"));
        assertTrue(names.indexOf("side seams") < names.indexOf("hem"), names.toString());
        assertEquals(names.indexOf("hem") + 1, names.indexOf("gather"));
        assertTrue(names.indexOf("gather") < names.indexOf("band"));
    }

    /**
     * A hem that its topic lets follow the band stays last: the same book has it last on skirts.
     */
    @Test
    void hemsLastWhatIsShaped() {
        WorkStep hem = WorkStep.of("hem", Stage.HEMMING, "Hem it.").after("band", "It hangs.");
        List<String> names = names(result(gives(hem), "garment: apron"));
        assertTrue(names.indexOf("band") < names.indexOf("hem"), names.toString());
    }

    @Test
    void looksTheClothOverAfterEachWetStepBeforeItIsCut() {
        assertEquals(List.of("dye", "survey", "cut"), names(result(gives(CUT, DYE))));
    }

    @Test
    void putsHerOwnStepsInAndTicksWhatIsDone() {
        WorkResult result =
                result(
                        Gives.NOTHING,
                        "garment: skirt",
                        "work:",
                        "  own:",
                        "    - {after: band, do: Sew on the ribbon., before: last press}",
                        "    - {after: Sew on the ribbon, do: Let it rest., name: rest, wait: 2 days}",
                        "    - {after: rest, do: Wear it.}",
                        "  done: {baste: 2026-11-02}");
        List<String> names = names(result);
        assertEquals(names.indexOf("band") + 1, names.indexOf("Sew on the ribbon"));
        assertEquals("fit on", result.next().orElseThrow().name());
        assertEquals(3, result.days().least().get("Wear it"));
    }

    @Test
    void tellsWhatSheSpeaksOfThatIsNoStep() {
        assertEquals(
                List.of("5 `gatter`, which is no step; `gather`"),
                mistakes(
                        Gives.NOTHING,
                        "garment: apron",
                        "work:",
                        "  own: [{after: gatter, do: Count the pins.}]"));
    }

    /** It may be done already and told elsewhere: then nothing waits for it. */
    @Test
    void letsHerSpeakOfAStepOfTheTradeThatIsNotThere() {
        List<Finding> found =
                found(workings(Gives.NOTHING, "garment: apron", "work: {order: [freeze, band]}"));
        assertEquals(
                List.of(),
                found(workings(Gives.NOTHING, "garment: apron", "work: {done: [freeze]}")));
        assertEquals(List.of("work-step-not-here"), found.stream().map(Finding::code).toList());
    }

    @Test
    void tellsACircleAtHerOwnStep() {
        List<String> told =
                mistakes(
                        Gives.NOTHING,
                        "garment: apron",
                        "work:",
                        "  own:",
                        "    - {after: band, before: gather, do: Pleat it.}");
        assertEquals(1, told.size(), told.toString());
        assertTrue(
                told.get(0).startsWith("6 steps that would wait for each other: ")
                        && told.get(0).contains("`Pleat it` behind `band`"),
                told.get(0));
    }

    @Test
    void tellsTwoStepsOfOneName() {
        List<String> told =
                mistakes(
                        Gives.NOTHING,
                        "garment: apron",
                        "work:",
                        "  own:",
                        "    - {after: gather, do: Band.., name: band}");
        assertEquals(
                List.of(
                        "6 a step of your own called `band`, as another is; a name of its own, such as"
                                + " `name: second band`"),
                told);
    }

    /** A hem whose own section has a mistake gives no step; only that mistake is told. */
    @Test
    void blamesNoSoundLineForAMistakeElsewhere() {
        List<String> told =
                mistakes(
                        Gives.NOTHING,
                        "hems: {rand: {on: [front.hem], depth: 2, turned: twice}}",
                        "work: {own: [{after: hem rand, do: Press it.}]}");
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).contains("hems without a pattern"), told.toString());
    }

    @Test
    void tellsWhatIsTickedBeforeItsCause() {
        Workings workings = workings(gives(CUT, FUSE, DYE), "work: {done: [fuse]}");
        Finding found = found(workings).get(0);
        assertEquals("work-done-before", found.code());
        assertTrue(found.text().contains("The bath undoes the fusing."), found.text());
        assertTrue(found.remedy().contains("`done: [dye, survey, cut, fuse]`"), found.remedy());
    }

    /** Check value: fuse, sew, hot dye: both reasons; derived. */
    @Test
    void refusesAnOrderThatSpoilsTheCloth() {
        Workings workings =
                workings(
                        gives(CUT, FUSE, DYE, WASH_OFF, DRY),
                        with(SKIRT, "garment: skirt", "work: {order: [fuse, assemble, dye]}"));
        Finding found = found(workings).get(0);
        assertEquals(Finding.Level.STOP, found.level());
        assertTrue(found.text().contains("The bath undoes the fusing."), found.text());
        assertTrue(found.text().contains("pale"), found.text());
        WorkResult result = workings.came(WorkTopic.NAME).orElseThrow();
        assertTrue(names(result).indexOf("dye") < names(result).indexOf("fuse"));
    }

    /** Cotton thread, which need not be bought after the bath, and nothing fused. */
    @Test
    void followsHerWhereTheThreadTakesTheDyeAndNothingIsFused() {
        Need thread = Need.of("cotton thread", new Amount.Pieces(1, "spool"), "seams");
        Workings workings =
                workings(
                        new Gives(List.of(CUT, DYE), List.of(thread), List.of()),
                        with(SKIRT, "garment: skirt", "work: {order: [assemble, dye]}"));
        Finding found = found(workings).get(0);
        assertEquals("work-order-dared", found.code());
        List<String> names = names(workings.came(WorkTopic.NAME).orElseThrow());
        assertTrue(names.indexOf("assemble") < names.indexOf("dye"), names.toString());
    }

    @Test
    void tellsHazardsOnceAndWhatCanBeDoneMeanwhile() {
        WorkStep hang =
                WorkStep.of("hang", Stage.CLOSING, "Hang it up.")
                        .after("assemble", "Sewn first.")
                        .waiting(
                                new Wait(
                                        "it hangs",
                                        Duration.ofHours(24),
                                        Duration.ofHours(72),
                                        "Firm cloth a day."));
        WorkStep buttons = WorkStep.of("buttons", Stage.CLOSING, "Sew them on.");
        WorkStep level = WorkStep.of("level", Stage.HEMMING, "Level.").after("hang", "It drops.");
        Workings workings =
                workings(
                        gives(FUSE, hang, level, buttons.after("assemble", "Sewn first.")),
                        with(SKIRT, "work: {begins: 2026-11-28}"));
        String page =
                workings.worksheets().stream()
                        .filter(sheet -> sheet.name().equals("work"))
                        .map(sheet -> sheet.blocks().toString())
                        .findFirst()
                        .orElseThrow();
        assertEquals(page.indexOf("Iron: never"), page.lastIndexOf("Iron: never"));
        assertTrue(page.contains("It hangs: wait 24 h to 3 days. Firm cloth a day."), page);
        assertTrue(page.contains("Meanwhile you can do: buttons"), page);
        assertTrue(page.contains("29\u00A0Nov\u00A02026"), page);
        assertFalse(page.contains("2026-11"), page);
    }
}
