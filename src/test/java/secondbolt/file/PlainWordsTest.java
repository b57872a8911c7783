package secondbolt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.file.form.Forms;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.measure.Tape;
import secondbolt.project.Project;
import secondbolt.project.ProjectSection;
import secondbolt.project.Topics;

/** What a maker is told when she wrote the right thing in another form. */
class PlainWordsTest {
    private static final Form<Project> ROOT = ProjectSection.form(Topics.all(LayDesk.inMemory()));

    private static List<Mistake> mistakes(String units, String... lines) {
        Mistakes mistakes = new Mistakes();
        String text = "title: Apron\nunits: " + units + "\n" + String.join("\n", lines) + "\n";
        ProjectFileReader.read(
                SourceFile.of("project.yaml", text), ROOT, ProjectSection.UNITS, mistakes);
        return mistakes.inOrder();
    }

    private static Mistake only(String units, String... lines) {
        List<Mistake> told = mistakes(units, lines);
        assertEquals(1, told.size(), told.toString());
        return told.get(0);
    }

    /** What stands between the first two quotation marks of what would be right. */
    private static String advised(Mistake mistake) {
        return mistake.right().replaceAll("(?s)^`([^`]*)`.*$", "$1");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "trim: 3 | trim: {left: 3, right: 3, top: 3, bottom: 3}",
                "trim: [3, 1, 9, 12] | trim: {left: 3, right: 1, top: 9, bottom: 12}",
                "size: 132 x 214 | size: [132, 214]",
                "size: 132 by 214 | size: [132, 214]",
                "flaws: {what: hole, at: [9, 9], round: 3} |"
                        + " flaws: [{what: hole, at: [9, 9], round: 3}]",
                "surveyed: held to the light | surveyed: {by: held to the light}",
                "repeat: 12 | repeat: {along: 12, across: 12}",
                "nap: [one-way] | nap: one-way",
                "sides measured: [214, 212.5, 251] |"
                        + " sides measured: {left: 214, right: 212.5, diagonal: 251}",
                "trim: | trim: {left: 3, right: 1, top: 9, bottom: 12}",
                "flaws: hole | flaws: [{what: hole, at: [97, 160], round: 3}]",
            })
    void buildsTheLineFromWhatSheTyped(String typed, String right) {
        String size = typed.startsWith("size") ? "" : "size: [132, 214], ";
        Mistake told =
                typed.endsWith(":")
                        ? only("cm", "cloth:", "  sheet:", "    size: [132, 214]", "    " + typed)
                        : only("cm", "cloth: {sheet: {" + size + typed + "}}");
        assertEquals(right, advised(told));
        assertEquals(List.of(), mistakes("cm", "cloth: {sheet: {" + size + right + "}}"));
    }

    /** The hole's place is not hers, so the line says so. */
    @Test
    void saysThatAPartOfTheLineIsNotHers() {
        assertTrue(
                only("cm", "cloth: {sheet: {size: [132, 214], flaws: hole}}")
                        .right()
                        .contains("` with your own values: a list of flaws"));
    }

    @Test
    void askForTheNameThatIsMissing() {
        assertEquals(
                "cloth: {left curtain: {size: [132, 214]}}",
                advised(only("cm", "cloth: {size: [132, 214]}")));
        assertEquals(
                "cloth: {left curtain: {size: [132, 214]}}",
                advised(only("cm", "cloth: [132, 214]")));
        assertEquals(
                "sheet: {size: [132, 214]}", advised(only("cm", "cloth: {sheet: [132, 214]}")));
    }

    /** 1 mm is 0.63 of a sixteenth, so 1/16; 20 m are 787.4016 in, so 787 3/8 (6.4 sixteenths). */
    @Test
    void tellsRangesInTheFilesUnit() {
        assertEquals(
                "a length of ¹⁄₁₆ in to 787⅜ in",
                only("in", "cloth: {a: {size: [40, 60], flaws: [{what: x, at: [9, 9], round: 0}]}}")
                        .right());
        assertTrue(
                only("in", "cloth: {a: {size: [40, 60], weight: 9000 g/m2}}")
                        .right()
                        .startsWith("a cloth weight of 0.3 oz/yd2 to 58.9 oz/yd2"));
        assertTrue(only("in", "cloth: {a: {size: 40}}").right().contains("2 in to 787⅜ in"));
        for (String end : List.of("0.3 oz/yd2", "58.9 oz/yd2")) {
            assertEquals(
                    List.of(), mistakes("in", "cloth: {a: {size: [4, 6], weight: " + end + "}}"));
        }
        for (String end : List.of("0.04 oz", "110 lb")) {
            assertEquals(
                    List.of(), mistakes("in", "cloth: {a: {size: [4, 6], mass: " + end + "}}"));
        }
    }

    /** 152 in are 386 cm, wider than any cloth; 152 cm are a sheet. */
    @Test
    void asksAboutASizeThatLooksLikeTheOtherUnit() {
        Mistake told = only("in", "cloth: {a: {size: [152, 213]}}");
        assertEquals("a size of 152 in across, wider than cloth is made", told.found());
        assertEquals("`[152 cm, 213 cm]`, or `[152 in, 213 in]` if that is meant", told.right());
        assertEquals(List.of(), mistakes("in", "cloth: {a: {size: [152 cm, 213 cm]}}"));
        assertEquals(List.of(), mistakes("in", "cloth: {a: {size: [152 in, 213 in]}}"));
        assertEquals(List.of(), mistakes("in", "cloth: {a: {size: [108, 120]}}"));
        assertEquals(List.of(), mistakes("cm", "cloth: {a: {size: [152, 213]}}"));
    }

    /** 36 cm are no bust, 36 in are; 96 in are none, 96 cm are. */
    @Test
    void namesTheOtherUnitWhereAMeasureFitsIt() {
        assertTrue(
                only("cm", "wearer: {measurements: {bust: 36}}")
                        .right()
                        .equals("`36 in`, or `36 cm` if that is meant"));
        assertEquals(List.of(), mistakes("cm", "wearer: {age: 1, measurements: {bust: 46}}"));
        assertTrue(
                only("in", "wearer: {measurements: {bust: 96}}")
                        .right()
                        .endsWith("; or `96 cm` if that is meant"));
        assertEquals(
                "`5/8 in`, or `5/8 cm` if that is meant",
                only("cm", "cloth: {a: {size: [90, 90], clear: 5/8}}").right());
        assertEquals(List.of(), mistakes("cm", "cloth: {a: {size: [90, 90], clear: 1/2}}"));
    }

    @Test
    void asksAboutATextThatAHashCutsOff() {
        Mistake told =
                only(
                        "cm",
                        "cloth:",
                        "  a:",
                        "    size: [9, 9]",
                        "    edges:",
                        "      left: Lot #2 of two");
        assertEquals("`Lot`, which a # cuts off before `#2 of two`", told.found());
        assertEquals("\"Lot #2 of two\"", advised(told));
        assertEquals(
                List.of(),
                mistakes(
                        "cm",
                        "cloth:",
                        "  a:",
                        "    size: [9, 9]",
                        "    edges:",
                        "      left: " + advised(told)));
        assertEquals(
                List.of(),
                mistakes(
                        "cm",
                        "cloth:",
                        "  a:",
                        "    size: [9, 9] #2",
                        "    edges:",
                        "      left: hem # old"));
        assertTrue(
                only(
                                "cm",
                                "cloth:",
                                "  a:",
                                "    size: [9, 9]",
                                "    edges:",
                                "      left: #2 cotton")
                        .found()
                        .contains("what follows a # is a note of your own"));
        assertTrue(
                only("cm", "cloth: {a: {size: [9, 9], edges: {left: lot #2}}}")
                        .right()
                        .contains("a # after a space begins a note"));
    }

    @Test
    void namesTheSpaceThatNobodySees() {
        Mistake told = only("cm", "cloth: {a: {size: [9, 9], known\u00a0by: label}}");
        assertEquals("`known\u00a0by` with a no-break space in it", told.found());
        assertEquals("`known by` with plain spaces", told.right());
        assertEquals(
                List.of(), mistakes("cm", "cloth: {a: {size: [9, 9], weight: 165\u00a0g/m2}}"));
        assertEquals(
                List.of(),
                mistakes("cm", "cloth: {a: {size: [9, 9], surveyed: {by: looked\u00a0over}}}"));
        assertTrue(
                mistakes("cm", "cloth:", "  a:", "    size: [9, 9]", "    clear:\u00a03").stream()
                        .allMatch(m -> m.right().contains("instead of no-break ones")));
    }

    /** What a person says where there is none of a thing; each is as if the line were left out. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "cloth: {a: {size: [90, 200], trim: none, clear: no, flaws: none, repeat: no}}",
                "cloth: {a: {size: [90, 200], surveyed: no, features: none, sides measured: no}}",
                "cloth: {a: {size: [90, 200], trim: {left: none}, nap: no, prewash: never}}",
                "cloth: {a: {size: [90, 200], nap: unknown, prewash: no}}",
                "cloth: {a: {size: [90, 200], nap: yes, prewash: yes}}",
                "pattern: {pieces: {f: {cut: 1, fold: no, rectangle: [3, 7], darts: none}}, seams:"
                        + " no}",
                "alterations: none",
                "hems: none",
                "closures: no",
                "wearer: {age: unknown, measurements: {bust: unknown}}",
            })
    void takesWhatAPersonSays(String section) {
        assertEquals(List.of(), mistakes("cm", section));
    }

    @Test
    void neverPrintsAnEmptyListOfChoices() {
        Key<Tape> units =
                Key.required("units", Forms.choice(Tape.values(), Tape::symbol), "Tape.", "cm");
        Mistakes mistakes = new Mistakes();
        ProjectFileReader.read(
                SourceFile.of("a.yaml", "units: cm\nzzzzzzzz: 3"),
                secondbolt.file.form.MapForm.of(
                        "a file", List.of(units), f -> Optional.of(f.require(units))),
                units,
                mistakes);
        assertEquals(
                "nothing: all that a file can say is written", mistakes.inOrder().get(0).right());
    }

    /** What lacks is told with an example on the file's tape; 11.5 mm are 7/16 in. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "closures: {a: {length: 20, buttons: 4}}",
                "closures: {a: {length: 20}}",
                "closures: {a: {buttons: 4}}",
                "closures: {a: {length: 20, snaps: 4, first: 1}}",
                "closures: {a: {length: 20, buttons: 1, first: 1, button: {across: 1/2}}}",
                "hems: {a: {on: [front.hem], turned: once}}",
                "cloth: {a: {outline: [[0, 0], [1, 0], [0, 1]]}}",
            })
    void showsAnInchMakerInches(String lines) {
        List<Mistake> told = mistakes("in", lines);
        assertTrue(!told.isEmpty());
        for (Mistake mistake : told) {
            String words = mistake.found() + mistake.right();
            assertTrue(!words.matches("(?s).*\\d ?(mm|cm)\\b.*"), words);
        }
        assertTrue(
                mistakes("in", "closures: {a: {length: 20, buttons: 4, first: 1, last: 2}}")
                        .stream()
                        .anyMatch(m -> m.right().contains("across: 7/16")));
    }

    /** Each example of the reference is a value that its key takes, on either tape. */
    @Test
    void takesEachExampleOfTheReference() {
        for (Tape tape : Tape.values()) {
            ROOT.keys().forEach(key -> takesExamples(key, key.name(), tape));
        }
    }

    private static void takesExamples(Key<?> key, String path, Tape tape) {
        if (key.need() != Key.Need.LATER) {
            String text = "x: " + key.example(tape);
            Mistakes mistakes = new Mistakes();
            var node =
                    new secondbolt.file.source.YamlReader(SourceFile.of(path, text), mistakes)
                            .read()
                            .orElseThrow()
                            .asMapping()
                            .orElseThrow()
                            .pairs()
                            .get(0)
                            .value();
            key.form()
                    .read(node, new Reading(SourceFile.of(path, text), mistakes, tape, true, true));
            assertEquals(List.of(), mistakes.inOrder(), path);
        }
        key.form()
                .keys()
                .forEach(inside -> takesExamples(inside, path + "." + inside.name(), tape));
    }
}
