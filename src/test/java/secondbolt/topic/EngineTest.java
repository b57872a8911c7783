package secondbolt.topic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import secondbolt.fault.Fault;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Tape;

class EngineTest {
    private static final Key<String> CLOTH = key("cloth");
    private static final Key<String> CUT = key("cut");

    private static Key<String> key(String name) {
        return Key.optional(name, Forms.text(80), "Words.", "words");
    }

    /** A topic that says what it read. */
    private record Reader(
            TopicName<String> name, List<Key<?>> keys, Function<Bench, Outcome<String>> step)
            implements Topic<String> {
        @Override
        public Outcome<String> work(Bench bench) {
            return step.apply(bench);
        }
    }

    private static Reader reader(
            String name, List<Key<?>> keys, Function<Bench, Outcome<String>> step) {
        return new Reader(new TopicName<>(name), keys, step);
    }

    private static final Reader FIRST =
            reader("first", List.of(CLOTH), b -> Outcome.of(b.written(CLOTH).orElse("none")));

    private static final Reader SECOND =
            reader(
                    "second",
                    List.of(CUT),
                    b ->
                            Outcome.of(
                                    b.came(FIRST.name()).orElseThrow()
                                            + " "
                                            + b.written(CUT).orElse("whole")));

    private static Fields fields(String text) {
        Mistakes mistakes = new Mistakes();
        return ProjectFileReader.read(
                        SourceFile.of("a.yaml", text + "\n"),
                        MapForm.of("a file", List.of(CLOTH, CUT), Optional::of),
                        Tape.CENTIMETRE,
                        mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    private static List<String> results(List<Outcome<?>> outcomes) {
        return outcomes.stream().map(o -> o.result().map(Object::toString).orElse("-")).toList();
    }

    @Test
    void worksOutEachTopicFromThoseBefore() {
        Engine engine = new Engine(List.of(FIRST, SECOND));
        assertEquals(
                List.of("sheet", "sheet halved"),
                results(engine.run(fields("cloth: sheet\ncut: halved"))));
        assertEquals(1, engine.timesWorked("first"));
        assertEquals(1, engine.timesWorked("second"));
    }

    @Test
    void usesAgainWhatReadTheSame() {
        Engine engine = new Engine(List.of(FIRST, SECOND));
        List<Outcome<?>> before = engine.run(fields("cloth: sheet\ncut: halved"));
        List<Outcome<?>> after = engine.run(fields("# moved down\n\ncloth: sheet\ncut: halved"));
        assertSame(before.get(1), after.get(1));
        assertEquals(0, engine.timesWorked("first") + engine.timesWorked("second"));
        engine.run(fields("cloth: sheet\ncut: quartered"));
        assertEquals(0, engine.timesWorked("first"));
        assertEquals(1, engine.timesWorked("second"));
        assertEquals(
                List.of("towel", "towel quartered"),
                results(engine.run(fields("cloth: towel\ncut: quartered"))));
        assertEquals(1, engine.timesWorked("first"));
    }

    @Test
    void holdsBackWhatNeedsAMistakenOneAndTellsTheMistake() {
        Reader wrong =
                reader(
                        "first",
                        List.of(CLOTH),
                        b ->
                                b.written(CLOTH).orElse("").equals("net")
                                        ? Outcome.wrong(
                                                List.of(
                                                        new Trouble(
                                                                b.place(CLOTH),
                                                                "a net",
                                                                "a cloth")))
                                        : Outcome.of("cloth"));
        Engine engine = new Engine(List.of(wrong, SECOND));
        List<Outcome<?>> outcomes = engine.run(fields("cut: halved\ncloth: net"));
        assertEquals("a net", outcomes.get(1).troubles().get(0).found());
        assertEquals(2, outcomes.get(1).troubles().get(0).place().line());
        List<Outcome<?>> moved = engine.run(fields("\ncut: halved\ncloth: net"));
        assertEquals(3, moved.get(1).troubles().get(0).place().line(), "told where it stands now");
    }

    @Test
    void supposesAnotherValueWithoutTouchingTheRest() {
        Reader third =
                reader(
                        "third",
                        List.of(),
                        b ->
                                Outcome.of(
                                        b.supposing(CLOTH, "silk").came(SECOND.name()).orElseThrow()
                                                + ", not "
                                                + b.came(SECOND.name()).orElseThrow()));
        Engine engine = new Engine(List.of(FIRST, SECOND, third));
        assertEquals(
                "silk halved, not sheet halved",
                results(engine.run(fields("cloth: sheet\ncut: halved"))).get(2));
        assertEquals(2, engine.timesWorked("second"));
        engine.run(fields("cloth: silk\ncut: halved"));
        assertEquals(0, engine.timesWorked("second"), "the supposed is known when it is written");
    }

    @Test
    void takesASuppositionThatIsAMistakeForNothing() {
        Reader picky =
                reader(
                        "first",
                        List.of(CLOTH),
                        b ->
                                b.written(CLOTH).isEmpty()
                                        ? Outcome.of("none")
                                        : Outcome.wrong(
                                                List.of(
                                                        new Trouble(
                                                                b.place(CLOTH), "any", "none"))));
        Reader asking =
                reader(
                        "second",
                        List.of(),
                        b ->
                                Outcome.of(
                                        ""
                                                + b.supposing(CLOTH, "silk")
                                                        .came(picky.name())
                                                        .isPresent()));
        List<Outcome<?>> outcomes = new Engine(List.of(picky, asking)).run(fields("cut: a"));
        assertEquals("false", results(outcomes).get(1));
        assertTrue(outcomes.stream().allMatch(o -> o.troubles().isEmpty()));
    }

    @Test
    void letsNoTopicReadOneBehindIt() {
        Engine engine = new Engine(List.of(SECOND, FIRST));
        assertTrue(engine.run(fields("cut: a")).get(0).troubles().get(0).isOfProgram());
        assertThrows(IllegalArgumentException.class, () -> new Engine(List.of(FIRST, FIRST)));
    }

    @Test
    void forgetsWhatTheLastRunDidNotUse() {
        Engine engine = new Engine(List.of(FIRST, SECOND));
        engine.run(fields("cloth: sheet"));
        engine.run(fields("cloth: towel"));
        engine.run(fields("cloth: sheet"));
        assertEquals(1, engine.timesWorked("first"));
    }

    @Test
    void aTopicThatFailsIsToldWithThePieceAndTheOthersGoOn() {
        Reader failing =
                reader(
                        "first",
                        List.of(CLOTH),
                        b ->
                                Fault.during(
                                        "left sleeve", () -> Outcome.of(List.<String>of().get(7))));
        Reader mistaken =
                reader(
                        "third",
                        List.of(),
                        b -> Outcome.wrong(List.of(new Trouble(b.place(CUT), "a net", "a cloth"))));
        Fields fields = fields("cut: halved\ncloth: net");
        List<Outcome<?>> outcomes = new Engine(List.of(failing, SECOND, mistaken)).run(fields);
        Trouble fault = outcomes.get(0).troubles().get(0);
        assertTrue(fault.isOfProgram());
        assertEquals("first, left sleeve", fault.found());
        assertEquals(2, fault.place().line(), "at the topic's section");
        assertEquals(List.of(fault), outcomes.get(1).troubles(), "what needs it is held back");
        assertEquals("a net", outcomes.get(2).troubles().get(0).found());
    }

    @Test
    void aTopicThatGoesTooDeepIsToldLikeOneThatFails() {
        Reader deep = reader("first", List.of(CLOTH), b -> Outcome.of(deeper("a")));
        Trouble fault =
                new Engine(List.of(deep)).run(fields("cloth: net")).get(0).troubles().get(0);
        assertEquals("first", fault.found());
    }

    @SuppressWarnings("InfiniteRecursion") // on purpose
    private static String deeper(String text) {
        return deeper(text + "a") + "a";
    }
}
