package secondbolt.fit.size;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Key;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.measure.Tape;
import secondbolt.project.WrittenProject;
import secondbolt.wearer.PatternSizes;
import secondbolt.wearer.SizeChartSection;
import secondbolt.wearer.WearerSection;

/** Reads a wearer and a pattern's sizes written in a test as they would stand in a project file. */
public final class Written {
    private static final Key<Tape> UNITS =
            Key.required("units", Forms.choice(Tape.values(), Tape::symbol), "The tape.", "cm");
    private static final Key<PatternSizes> PATTERN =
            Key.optional(
                    "pattern",
                    MapForm.of("a pattern", SizeChartSection.KEYS, SizeChartSection::read),
                    "Its sizes.",
                    "{size: 12}");

    private Written() {}

    /** What the file says, without anything about its pieces; it must have no mistake. */
    public static SizeInput input(String units, String... lines) {
        Mistakes mistakes = new Mistakes();
        return read(units, mistakes, lines)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    /** The same with what is known of the pieces. */
    static SizeInput with(SizeInput input, SizeInput.Pieces pieces) {
        return new SizeInput(input.wearer(), input.sizes(), pieces, input.tape());
    }

    /** The mistakes in what is written, each with what would be right. */
    public static List<String> mistakes(String... lines) {
        Mistakes mistakes = new Mistakes();
        read("cm", mistakes, lines);
        return WrittenProject.words(mistakes);
    }

    private static Optional<SizeInput> read(String units, Mistakes mistakes, String... lines) {
        String text = "units: " + units + "\n" + String.join("\n", lines) + "\n";
        MapForm<SizeInput> root =
                MapForm.of(
                        "a project",
                        List.of(UNITS, WearerSection.KEY, PATTERN),
                        fields ->
                                Optional.of(
                                        new SizeInput(
                                                fields.get(WearerSection.KEY),
                                                fields.get(PATTERN).orElse(PatternSizes.none()),
                                                SizeInput.Pieces.none(),
                                                fields.require(UNITS))));
        return ProjectFileReader.read(SourceFile.of("test.yaml", text), root, UNITS, mistakes);
    }

    /** A mapping of an example as a line of the file. */
    static String flow(Map<String, Object> mapping) {
        return mapping.toString().replace("=", ": ");
    }
}
