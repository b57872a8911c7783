package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

/**
 * Garments of kinds no demo is of, worked out by hand: each example is a project, and below it what
 * it must come to, with the sum beside each figure. Lengths and areas are in the project's units.
 */
class StrangersTooTest {
    private static final String FOLDER = "/examples/strangers/too/";

    /** Half of what the finest tape shows. */
    private static final double MM = 0.02;

    private static final double SHARE = 0.001;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tea-towel-tote",
                "sheet-pyjamas",
                "pillowcase-skirt",
                "blanket-bed-jacket",
                "stripe-bib-apron",
                "raglan-top",
                "princess-waistcoat",
                "circle-skirt",
                "gored-dress",
                "quilted-vest"
            })
    void comeToWhatTheyComeToByHand(String name) throws IOException {
        Example example = Example.read(name);
        Workings workings = work(example.project());
        List<Executable> checks = new ArrayList<>();
        example.sums().forEach(sum -> checks.add(() -> sum.holds(figures(workings))));
        checks.add(() -> assertFindings(example.wanted(), workings));
        for (Map<?, ?> instead : example.instead()) {
            checks.add(() -> assertFindings(instead, work(example.with(instead))));
        }
        assertAll(name, checks);
    }

    private static Workings work(String project) {
        Mistakes mistakes = new Mistakes();
        return new Workshop(Topics.all(LayDesk.inMemory()))
                .work(SourceFile.of("project.yaml", project), "strangers", mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    private static Map<String, Object> figures(Workings workings) {
        Map<String, Object> all = new LinkedHashMap<>();
        for (Worksheet sheet : workings.worksheets()) {
            all.put(sheet.name(), sheet.figures().asMap());
        }
        return all;
    }

    private static void assertFindings(Map<?, ?> wanted, Workings workings) {
        Set<String> all = codes(workings, finding -> true);
        assertEquals(
                texts(wanted, "stops"),
                codes(workings, Finding::isStop),
                () -> "stops: " + workings.stops());
        texts(wanted, "stand").forEach(code -> assertTrue(all.contains(code), code + " in " + all));
        texts(wanted, "silent")
                .forEach(code -> assertTrue(!all.contains(code), code + " in " + all));
        texts(wanted, "says")
                .forEach(
                        words ->
                                assertTrue(
                                        workings.findings().stream()
                                                .anyMatch(f -> f.text().contains(words)),
                                        words));
    }

    private static Set<String> codes(Workings workings, Predicate<Finding> which) {
        return workings.findings().stream()
                .filter(which)
                .map(Finding::code)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> texts(Map<?, ?> of, String key) {
        Object found = of.get(key);
        return ((List<?>) (found == null ? List.of() : found))
                .stream().map(Object::toString).collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * A project and what it must come to.
     *
     * @param project as written
     * @param wanted what stands below it
     */
    private record Example(String project, Map<?, ?> wanted) {
        static Example read(String name) throws IOException {
            try (InputStream in =
                    StrangersTooTest.class.getResourceAsStream(FOLDER + name + ".yaml")) {
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                int end = text.indexOf("\n---\n");
                return new Example(
                        text.substring(0, end + 1),
                        (Map<?, ?>) new Yaml().load(text.substring(end + 5)));
            }
        }

        List<Sum> sums() {
            double unit = project.contains("units: in") ? 25.4 : 10;
            return ((List<?>) wanted.get("sums"))
                    .stream().map(line -> Sum.of((List<?>) line, unit)).toList();
        }

        List<Map<?, ?>> instead() {
            List<Map<?, ?>> all = new ArrayList<>();
            if (wanted.get("instead") instanceof List<?> list) {
                list.forEach(item -> all.add((Map<?, ?>) item));
            }
            return all;
        }

        /** The project with one line written otherwise. */
        String with(Map<?, ?> instead) {
            String of = instead.get("of").toString();
            assertTrue(project.contains(of), of);
            return project.replace(of, instead.get("write").toString());
        }
    }

    /**
     * One figure, worked out by hand.
     *
     * @param path of the figure
     * @param value what it comes to
     * @param within how closely
     * @param by how it is worked out
     */
    private record Sum(String path, double value, double within, String by) {
        static Sum of(List<?> line, double unit) {
            String path = line.get(0).toString();
            double value = ((Number) line.get(1)).doubleValue();
            String by = line.subList(2, line.size()).toString();
            if (path.contains("_mm2")) {
                return new Sum(path, value * unit * unit, unit, by);
            }
            return path.contains("_mm")
                    ? new Sum(path, value * unit, MM, by)
                    : new Sum(path, value, SHARE, by);
        }

        void holds(Map<String, Object> figures) {
            Object found = figures;
            for (String step : path.split("/", -1)) {
                found = inside(found, step);
            }
            assertTrue(found instanceof Number, path + " is " + found);
            assertEquals(value, ((Number) found).doubleValue(), within, path + " by " + by);
        }

        private Object inside(Object found, String step) {
            if (found instanceof List<?> list) {
                return step.equals("#") ? list.size() : list.get(Integer.parseInt(step));
            }
            assertTrue(found instanceof Map<?, ?>, path + " at " + step + ": " + found);
            return ((Map<?, ?>) found).get(step);
        }
    }
}
