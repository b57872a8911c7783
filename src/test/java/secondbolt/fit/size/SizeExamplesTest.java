package secondbolt.fit.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.function.Executable;
import org.yaml.snakeyaml.Yaml;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Finding;

class SizeExamplesTest {
    private static final double AS_PRINTED_MM = 0.001;

    /**
     * Misses and women as a teaching page prints the pattern sizes of the late 1960s, in inches.
     */
    private static final Map<String, String> CHARTS =
            Map.of(
                    "misses",
                    "{size: [6, 8, 10, 12, 14, 16, 18, 20], bust: [30.5 in, 31.5 in, 32.5 in, 34"
                            + " in, 36 in, 38 in, 40 in, 42 in], waist: [23 in, 24 in, 25 in, 26.5 in,"
                            + " 28 in, 30 in, 32 in, 34 in], hip: [32.5 in, 33.5 in, 34.5 in, 36 in, 38"
                            + " in, 40 in, 42 in, 44 in], back waist length: [15.5 in, 15.75 in, 16 in,"
                            + " 16.25 in, 16.5 in, 16.75 in, 17 in, 17.25 in]}",
                    "skirt",
                    "{size: [6, 8, 10, 12, 14, 16, 18, 20], waist: [23 in, 24 in, 25 in, 26.5 in,"
                            + " 28 in, 30 in, 32 in, 34 in], hip: [32.5 in, 33.5 in, 34.5 in, 36 in, 38"
                            + " in, 40 in, 42 in, 44 in]}",
                    "women",
                    "{size: [38, 40, 42, 44, 46, 48, 50],"
                            + " bust: [42 in, 44 in, 46 in, 48 in, 50 in, 52 in, 54 in],"
                            + " hip: [44 in, 46 in, 48 in, 50 in, 52 in, 54 in, 56 in]}",
                    "men",
                    "{size: [XS, S, M, L, XL], chest: [82, 90, 98, 106, 114]}",
                    "children",
                    "{size: [104, 110, 116, 122], height: [104, 110, 116, 122]}");

    @TestFactory
    Stream<DynamicTest> choosesTheSize() throws Exception {
        return examples("sizes.yaml", SizeExamplesTest::checkSize);
    }

    @TestFactory
    Stream<DynamicTest> judgesTheEase() throws Exception {
        return examples("ease.yaml", SizeExamplesTest::checkEase);
    }

    @TestFactory
    Stream<DynamicTest> suggestsWhatFollowsFromTheDifference() throws Exception {
        return examples("alterations.yaml", SizeExamplesTest::checkSuggestions);
    }

    private interface Check {
        void of(Example example);
    }

    private static Stream<DynamicTest> examples(String file, Check check) throws Exception {
        try (InputStream in = SizeExamplesTest.class.getResourceAsStream("/examples/fit/" + file)) {
            List<Map<String, Object>> examples = new Yaml().load(in);
            assertTrue(examples.size() >= 10, file);
            return examples.stream()
                    .map(
                            values -> {
                                Executable run = () -> check.of(new Example(values));
                                return DynamicTest.dynamicTest(
                                        file + ": " + values.get("source"), run);
                            });
        }
    }

    private static void checkSize(Example example) {
        String chart = CHARTS.get(example.text("chart").orElseThrow());
        SizeResult result = example.work("pattern: {sizes: " + chart + "}");
        SizeChoice choice = result.choice().orElseThrow();
        assertEquals(
                example.text("start").orElseThrow(),
                choice.start().map(s -> s.size() + " by " + s.by().word()).orElseThrow());
        example.inside("nearest")
                .forEach(
                        (name, size) ->
                                assertEquals(
                                        size.toString(),
                                        choice.nearest().get(measure(name)),
                                        name));
        example.text("upper")
                .ifPresent(size -> assertEquals(size, choice.upper().orElseThrow().size()));
        example.text("lower")
                .ifPresent(size -> assertEquals(size, choice.lower().orElseThrow().size()));
        for (Object words : example.list("finds")) {
            assertTrue(
                    result.findings().stream().anyMatch(f -> said(f).contains(words.toString())),
                    words + " in " + result.findings());
        }
    }

    private static void checkEase(Example example) {
        SizeResult result =
                example.work(
                        "pattern: {finished: " + Written.flow(example.inside("finished")) + "}");
        example.inside("ease_mm")
                .forEach(
                        (name, mm) ->
                                assertEquals(
                                        ((Number) mm).doubleValue(),
                                        result.measurements().stream()
                                                .filter(m -> m.name() == measure(name))
                                                .flatMap(m -> m.ease().stream())
                                                .findFirst()
                                                .orElseThrow()
                                                .millimetres(),
                                        AS_PRINTED_MM,
                                        name));
        List<Finding> ease =
                result.findings().stream().filter(f -> f.code().startsWith("ease-")).toList();
        List<?> wanted = example.list("findings");
        assertEquals(wanted.size(), ease.size(), ease.toString());
        for (int i = 0; i < wanted.size(); i++) {
            String[] levelAndWords = wanted.get(i).toString().split(" ", 2);
            assertEquals(levelAndWords[0], ease.get(i).level().name());
            assertTrue(said(ease.get(i)).contains(levelAndWords[1]), said(ease.get(i)));
        }
    }

    private static void checkSuggestions(Example example) {
        SizeResult result = example.work("pattern: " + example.text("pattern").orElseThrow());
        List<String> made =
                result.suggestions().stream()
                        .map(s -> s.yaml().orElse("(spread by hand) the fronts"))
                        .toList();
        assertEquals(example.list("suggests"), made, result.suggestions().toString());
    }

    private static String said(Finding finding) {
        return (finding.text() + " " + finding.remedy()).replace('\u2009', ' ');
    }

    private static BodyMeasure measure(String name) {
        return Arrays.stream(BodyMeasure.values())
                .filter(m -> m.word().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** One example, as written. */
    private record Example(Map<String, Object> values) {
        Optional<String> text(String key) {
            return Optional.ofNullable(values.get(key)).map(Object::toString);
        }

        List<?> list(String key) {
            return (List<?>) values.getOrDefault(key, List.of());
        }

        @SuppressWarnings("unchecked") // the examples are ours
        Map<String, Object> inside(String key) {
            return (Map<String, Object>) values.getOrDefault(key, Map.of());
        }

        SizeResult work(String pattern) {
            String units = text("units").orElseThrow();
            String wearer =
                    "wearer: {age: adult, measurements: " + Written.flow(inside("body")) + "}";
            Tape tape = units.equals("in") ? Tape.INCH : Tape.CENTIMETRE;
            SizeInput.Pieces pieces =
                    new SizeInput.Pieces(
                            lines(),
                            names("edges").stream().filter(e -> isSide(e)).toList(),
                            lengths("levels", tape),
                            lengths("added", tape),
                            Map.of(),
                            SizeInput.Made.UNKNOWN);
            return SizeCalculation.work(
                    Written.with(Written.input(units, wearer, pattern), pieces));
        }

        private static boolean isSide(String edge) {
            return Serves.edgeNamed(edge).equals(Optional.of(Serves.SIDE));
        }

        private Map<BodyMeasure, String> lines() {
            Map<BodyMeasure, String> lines = new LinkedHashMap<>();
            names("lines")
                    .forEach(
                            name ->
                                    Serves.lineNamed(name)
                                            .flatMap(SizeCalculation::alteredAt)
                                            .ifPresent(m -> lines.put(m, name)));
            return lines;
        }

        private Set<String> names(String key) {
            Set<String> names = new TreeSet<>();
            list(key).forEach(name -> names.add(name.toString()));
            return names;
        }

        private Map<BodyMeasure, Length> lengths(String key, Tape tape) {
            Map<BodyMeasure, Length> lengths = new LinkedHashMap<>();
            inside(key)
                    .forEach(
                            (name, length) ->
                                    lengths.put(
                                            measure(name),
                                            Length.parse(length.toString(), tape).orThrow()));
            return lengths;
        }
    }
}
