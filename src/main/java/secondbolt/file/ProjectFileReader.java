package secondbolt.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import secondbolt.file.json.Json;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Node;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.file.source.YamlReader;
import secondbolt.measure.Tape;

/** Reads a whole file by the form of its root. */
public final class ProjectFileReader {
    private ProjectFileReader() {}

    /**
     * Reads a source.
     *
     * @param source the file
     * @param root the form of the whole file
     * @param units the key of the root that says the tape of bare numbers; it is read first
     * @param mistakes told all that is wrong
     * @return what was read, if nothing was wrong
     */
    public static <T> Optional<T> read(
            SourceFile source, Form<T> root, Key<Tape> units, Mistakes mistakes) {
        return read(source, root, node -> tape(node, units, source), mistakes);
    }

    /** Reads a source whose bare numbers are on a tape known before. */
    public static <T> Optional<T> read(
            SourceFile source, Form<T> root, Tape tape, Mistakes mistakes) {
        return read(source, root, node -> Optional.of(tape), mistakes);
    }

    private static <T> Optional<T> read(
            SourceFile source,
            Form<T> root,
            Function<Node, Optional<Tape>> tapeOf,
            Mistakes mistakes) {
        Trial<T> asWritten = trial(source, root, tapeOf);
        if (asWritten.mistakes().isEmpty()) {
            asWritten.reading().ifPresent(reading -> reading.tellTo(mistakes));
            return asWritten.value();
        }
        if (asWritten.all().count() > Mistakes.MOST_TOLD) {
            // Of so many no one line is to blame, and all are counted.
            mistakes.addAll(asWritten.all());
            return Optional.empty();
        }
        mistakes.addAll(
                new Blame(source, repaired -> trial(repaired, root, tapeOf).result())
                        .of(asWritten.result()));
        return Optional.empty();
    }

    /**
     * One reading of a text.
     *
     * @param all that is wrong
     * @param mistakes the first of them, each line that holds what nobody sees told once
     * @param slips how many of syntax were passed over
     */
    private record Trial<T>(
            Optional<T> value,
            Optional<Reading> reading,
            Mistakes all,
            List<Mistake> mistakes,
            int slips) {
        Blame.Result result() {
            return new Blame.Result(mistakes, slips);
        }
    }

    private static <T> Trial<T> trial(
            SourceFile source, Form<T> root, Function<Node, Optional<Tape>> tapeOf) {
        Mistakes mistakes = new Mistakes();
        YamlReader yaml = new YamlReader(source, mistakes);
        Optional<Node> node = yaml.read();
        if (node.isEmpty()) {
            if (mistakes.isEmpty()) {
                mistakes.add(
                        source.mistake(
                                Place.beginningOf(source.name()),
                                "an empty file",
                                "`" + root.keys().get(0).name() + ": …` to begin with"));
            }
            return new Trial<>(
                    Optional.empty(), Optional.empty(), mistakes, mistakes.inOrder(), yaml.slips());
        }
        int beforeLetters = mistakes.count();
        Node seen = node.get().accept(new SeenLetters(source, mistakes));
        boolean isWhole = yaml.isWhole() && mistakes.count() == beforeLetters;
        Optional<Tape> tape = tapeOf.apply(seen);
        Reading reading =
                new Reading(
                        source, mistakes, tape.orElse(Tape.CENTIMETRE), tape.isPresent(), isWhole);
        Optional<T> value = root.read(seen, reading);
        reading.settle();
        return new Trial<>(
                value, Optional.of(reading), mistakes, yaml.once(mistakes.inOrder()), yaml.slips());
    }

    /** A mistake in the units is told when the root is read; until then centimetres serve. */
    private static Optional<Tape> tape(Node root, Key<Tape> units, SourceFile source) {
        Reading silent = new Reading(source, new Mistakes(), Tape.CENTIMETRE, true, true);
        return root.asMapping()
                .flatMap(mapping -> mapping.find(units.name()))
                .flatMap(pair -> units.read(pair.value(), silent));
    }

    /** The JSON Schema of a file, for editors that complete and explain keys. */
    public static String schema(Form<?> root, String title) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", title);
        schema.putAll(root.schema());
        return Json.write(schema);
    }
}
