package secondbolt.cloth;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.cloth.yields.ClothCalculation;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.Key;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.measure.Tape;
import secondbolt.textile.Cloth;
import secondbolt.textile.ClothSection;

/** Reads cloths written in a test as they would stand in a project file. */
public final class Written {
    private static final Key<Tape> UNITS =
            Key.required("units", Forms.choice(Tape.values(), Tape::symbol), "The tape.", "cm");

    private Written() {}

    /** The cloths, which must be written without a mistake. */
    public static Map<String, Cloth> cloths(String units, String... lines) {
        Mistakes mistakes = new Mistakes();
        Optional<Map<String, Cloth>> read = read(units, mistakes, lines);
        return read.orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    /** One cloth, worked out. */
    public static ClothResult result(String units, String... lines) {
        Map<String, Cloth> cloths = cloths(units, lines);
        String name = cloths.keySet().iterator().next();
        return ClothCalculation.work(name, cloths.get(name));
    }

    /** The mistakes in what is written. */
    public static List<String> mistakes(String... lines) {
        Mistakes mistakes = new Mistakes();
        read("cm", mistakes, lines);
        return mistakes.inOrder().stream()
                .map(m -> m.place().line() + ":" + m.place().column() + " " + m.found())
                .toList();
    }

    private static Optional<Map<String, Cloth>> read(
            String units, Mistakes mistakes, String... lines) {
        String text = "units: " + units + "\ncloth:\n" + String.join("\n", lines) + "\n";
        MapForm<Map<String, Cloth>> root =
                MapForm.of(
                        "a project",
                        List.of(UNITS, ClothSection.KEY),
                        fields -> fields.get(ClothSection.KEY));
        return ProjectFileReader.read(SourceFile.of("test.yaml", text), root, UNITS, mistakes);
    }
}
