package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;

/** The JSON Schema beside the reader, by a validator that is not ours and both versions of YAML. */
class SchemaTest {
    private static final Form<Project> ROOT =
            ProjectSection.form(secondbolt.project.Topics.all(LayDesk.inMemory()));
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonSchemaFactory FACTORY =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    private static final JsonSchema SCHEMA =
            FACTORY.getSchema(ProjectFileReader.schema(ROOT, "A project"));

    /** The core schema of YAML 1.2: true, false, null and numbers; yes, on and days are text. */
    private static final class Core extends Resolver {
        @Override
        protected void addImplicitResolvers() {
            addImplicitResolver(
                    Tag.BOOL, Pattern.compile("true|True|TRUE|false|False|FALSE"), "tTfF");
            addImplicitResolver(Tag.INT, Pattern.compile("[-+]?[0-9]+"), "-+0123456789");
            addImplicitResolver(
                    Tag.FLOAT,
                    Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?"),
                    "-+0123456789.");
            addImplicitResolver(Tag.NULL, Pattern.compile("~|null|Null|NULL|"), "~nN\0");
        }
    }

    /** A text as a parser of either version of YAML hands it to a validator. */
    private static List<JsonNode> read(String text) {
        LoaderOptions options = new LoaderOptions();
        DumperOptions dumper = new DumperOptions();
        Yaml first = new Yaml(new SafeConstructor(options));
        Yaml second =
                new Yaml(
                        new SafeConstructor(options),
                        new Representer(dumper),
                        dumper,
                        options,
                        new Core());
        return Stream.of(first, second)
                .<JsonNode>map(yaml -> JSON.valueToTree(plain(yaml.load(text))))
                .toList();
    }

    /** Keys as text, days as JSON has them. */
    private static Object plain(Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> plain = new LinkedHashMap<>();
            map.forEach((key, inside) -> plain.put(String.valueOf(key), plain(inside)));
            return plain;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(SchemaTest::plain).toList();
        }
        return value instanceof Date day
                ? day.toInstant().atZone(ZoneOffset.UTC).toLocalDate().toString()
                : value;
    }

    private static List<String> complaints(JsonSchema schema, String text) {
        List<String> complaints = new ArrayList<>();
        read(text).forEach(n -> schema.validate(n).forEach(m -> complaints.add(m.getMessage())));
        return complaints;
    }

    private static boolean isRead(String text) {
        Mistakes mistakes = new Mistakes();
        return ProjectReader.read(SourceFile.of("project.yaml", text), ROOT, mistakes).isPresent();
    }

    static List<Path> demos() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("projects"))) {
            return folders.map(f -> f.resolve("project.yaml"))
                    .filter(Files::exists)
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void takesTheDemos(Path demo) throws IOException {
        assertEquals(List.of(), complaints(SCHEMA, Files.readString(demo)));
    }

    @Test
    void takesEachExampleOfTheReference() throws IOException {
        for (Key<?> key : ROOT.keys()) {
            takesExamples(key, key.name());
        }
    }

    private static void takesExamples(Key<?> key, String path) throws IOException {
        if (key.need() != Key.Need.LATER) {
            JsonSchema schema = FACTORY.getSchema(JSON.writeValueAsString(key.form().schema()));
            for (JsonNode node : read("x: " + key.example())) {
                assertEquals(List.of(), List.copyOf(schema.validate(node.get("x"))), path);
            }
        }
        for (Key<?> inside : key.form().keys()) {
            takesExamples(inside, path + "." + inside.name());
        }
    }

    private static final String HEAD = "title: Smock\nunits: cm\n";
    private static final String BAND =
            "closures: {band: {length: 65, extension: 2, buttons: 7, button: {across: 15 mm, thick:"
                    + " 3 mm}, first: 2, last: 10, holes: upright, laps: right over left}}";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pattern: {pieces: {front: {cut: pair, rectangle: [30, 70]}}}",
                "pattern: {pieces: {front: {cut: {main: 2, lining: pair}, box: [3, 7], edges: {a:"
                        + " 5}}}}",
                "pattern: {pieces: {f: {cut: 2, rectangle: [3, 7]}}, seam allowance: {of: 1,"
                        + " included: no}}",
                "pattern: {pieces: {f: {cut: 2, rectangle: [3, 7]}}, seam allowance: {of: 5/8 in,"
                        + " included: true}}",
                "cloth: {a: {size: [90, 200]}, b: {like: a}}",
                "cloth: {a: {size: unknown, outline: [[0, 0], [90, 0], [90, 90]]}}",
                "cloth: {a: {size: [90, 200], surveyed: {on: 2026-05-01, by: looked over}}}",
                "cloth: {a: {size: [90, 200], edges: {left: 7}}}",
                "cloth: {a: {size: [90, 200], flaws: [{what: no, at: [9, 9], round: 3}]}}",
                "alterations: []",
                "alterations: none",
                "cloth: {a: {size: [90, 200], prewash: no, flaws: none, nap: yes, trim: no}}",
                "cloth: {a: {size: [90, 200], prewash: never, nap: unknown}}",
                "hems: {hem: {on: [front.hem], depth: 2, turned: once, hang: yes}}",
                BAND,
                "closures: {c: {length: 20, hooks: 1, first: 2}}",
                "closures: {c: {on: front.edge, largest gap: 9, kind: ties, first: 2, last: 3}}",
            })
    void takesWhatTheReaderTakes(String section) {
        assertTrue(isRead(HEAD + section), section);
        assertEquals(List.of(), complaints(SCHEMA, HEAD + section), section);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pattern: {pieces: {front: {cut: pair}}}",
                "pattern: {pieces: {front: {cut: pair, rectangle: [3, 7], box: [3, 7]}}}",
                "pattern: {pieces: {front: {cut: pair, rectangle: [3, 7], edges: {a: 5}}}}",
                "pattern: {pieces: {front: {rectangle: [3, 7]}}}",
                "pattern: {pieces: {f: {cut: 2, rectangle: [3, 7]}}, seam allowance: {of: -1,"
                        + " included: no}}",
                "pattern: {pieces: {f: {cut: 2, outline: [{start: [0, 0]}, {edge: a, to: [9, 0]},"
                        + " {edge: b}, {edge: c, to: start}]}}}",
                "pattern: {pieces: {f: {cut: 2, rectangle: [3, 7]}}, seams: [{join: [f.top,"
                        + " f.left], ease: 1, gather: 2}]}",
                "cloth: {a: {}}",
                "cloth: {a: {size: [90, 200], outline: [[0, 0], [90, 0], [90, 90]]}}",
                "cloth: {a: {size: [90, 200], weight: 165 g/m2, mass: 2 kg}}",
                "cloth: {a: {size: [90, 200], clear: wide}}",
                "cloth: {a: {size: [90, 200], flaws: [{what: x, at: [9, 9], size: [3, 3], round:"
                        + " 3}]}}",
                "cloth: {a: {size: [90, 200], flaws: [{what: x, at: [9, 9]}]}}",
                "cloth: {a: {size: [90, 200], flaws: [{what: x, round: 3}]}}",
                "cloth: {a: {size: [90, 200], features: [{what: x, at: [9, 9], size: [3, 3], use:"
                        + " avoid, keep: a.top}]}}",
                "alterations: [{by: 3}]",
                "alterations: [{lengthen: a, widen: b, by: 3}]",
                "alterations: [{lengthen: a, by: 3, from: 3, to: 9}]",
                "alterations: [{widen: a, by: 3, from: 3}]",
                "hems: {hem: {on: [front.hem], turned: once}}",
                "hems: {hem: {depth: 2, turned: once}}",
                "closures: {c: {hooks: 4, first: 2, last: 3}}",
                "closures: {c: {length: 20, on: f.edge, hooks: 4, first: 2, last: 3}}",
                "closures: {c: {length: 20, hooks: 4, first: 2}}",
                "closures: {c: {length: 20, hooks: 4, ties: 4, first: 2, last: 3}}",
                "closures: {c: {length: 20, hooks: 4, holes: level, first: 2, last: 3}}",
                "closures: {c: {length: 20, kind: hooks, first: 2, last: 3}}",
                "dye: {}",
                "colour: red",
            })
    void refusesWhatTheReaderRefuses(String section) {
        refuses(section);
    }

    /** Each key that a placket of buttons needs, left out. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "length: 65, ",
                "extension: 2, ",
                "buttons: 7, ",
                "button: {across: 15 mm, thick: 3 mm}, ",
                "across: 15 mm, ",
                ", thick: 3 mm",
                "first: 2, ",
                "last: 10, ",
                "holes: upright, ",
                ", laps: right over left"
            })
    void refusesAPlacketOfButtonsWithout(String key) {
        assertTrue(BAND.contains(key), key);
        refuses(BAND.replace(key, ""));
    }

    private static void refuses(String section) {
        assertFalse(isRead(HEAD + section), section);
        for (JsonNode node : read(HEAD + section)) {
            assertFalse(SCHEMA.validate(node).isEmpty(), section);
        }
    }
}
