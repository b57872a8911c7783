package secondbolt.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.cutting.line.CuttingCalculation;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.file.Key;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.result.FitCalculation;
import secondbolt.hem.plan.HemCheck;
import secondbolt.hem.plan.HemSection;
import secondbolt.measure.Tape;
import secondbolt.pattern.AlterationSection;
import secondbolt.pattern.PatternSection;

/** Reads patterns written in a test as they would stand in a project file. */
public final class Written {
    private static final Key<Tape> UNITS =
            Key.required("units", Forms.choice(Tape.values(), Tape::symbol), "The tape.", "cm");

    private Written() {}

    /** The cutting lines of a pattern, which must be written without a mistake. */
    public static CuttingResult result(String units, String... lines) {
        Mistakes mistakes = new Mistakes();
        return read(units, mistakes, lines)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    /** The mistakes in what is written. */
    static List<String> mistakes(String... lines) {
        Mistakes mistakes = new Mistakes();
        read("cm", mistakes, lines);
        return mistakes.inOrder().stream()
                .map(m -> m.place().line() + ":" + m.place().column() + " " + m.found())
                .toList();
    }

    /** What was found, and what would be right. */
    static List<String> answers(String... lines) {
        Mistakes mistakes = new Mistakes();
        read("cm", mistakes, lines);
        return mistakes.inOrder().stream().map(m -> m.found() + " | " + m.right()).toList();
    }

    private static Optional<CuttingResult> read(String units, Mistakes mistakes, String... lines) {
        List<String> all = new ArrayList<>(List.of("units: " + units));
        all.addAll(List.of(lines));
        MapForm<CuttingResult> root =
                MapForm.of(
                        "a project",
                        List.of(UNITS, PatternSection.KEY, AlterationSection.KEY, HemSection.KEY),
                        fields -> {
                            var pattern = fields.get(PatternSection.KEY).orElseThrow();
                            var hems = fields.get(HemSection.KEY).orElse(Map.of());
                            var troubles = HemCheck.of(hems, pattern, fields.tape());
                            troubles.forEach(t -> fields.tell(t.place(), t.found(), t.right()));
                            var changes = fields.get(AlterationSection.KEY).orElse(List.of());
                            Tape tape = fields.tape();
                            return troubles.isEmpty()
                                    ? Optional.of(
                                            CuttingCalculation.work(
                                                    FitCalculation.work(pattern, changes, tape),
                                                    hems,
                                                    tape))
                                    : Optional.empty();
                        });
        String text = String.join("\n", all) + "\n";
        return ProjectFileReader.read(SourceFile.of("test.yaml", text), root, UNITS, mistakes);
    }
}
