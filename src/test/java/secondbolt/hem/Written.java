package secondbolt.hem;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Key;
import secondbolt.file.ProjectFileReader;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.result.FitResult;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.plan.HemCheck;
import secondbolt.hem.plan.HemSection;
import secondbolt.hem.turned.HemCalculation;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Tape;
import secondbolt.pattern.AlterationSection;
import secondbolt.pattern.PatternSection;
import secondbolt.textile.Cloth;
import secondbolt.textile.ClothSection;
import secondbolt.worksheet.Worksheet;

/**
 * Hems written in a test as they would stand in a project file.
 *
 * @param fit the pattern they lie on
 * @param hems by name
 * @param cloths by name
 * @param tape of the project
 */
public record Written(FitResult fit, Map<String, Hem> hems, Map<String, Cloth> cloths, Tape tape) {
    private static final Key<Tape> UNITS =
            Key.required("units", Forms.choice(Tape.values(), Tape::symbol), "The tape.", "cm");

    /** What is written, which must be without a mistake. */
    public static Written of(String units, String... lines) {
        Mistakes mistakes = new Mistakes();
        return read(units, mistakes, lines)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    /** Place, what was found and what would be right, of each mistake. */
    public static List<String> mistakes(String... lines) {
        Mistakes mistakes = new Mistakes();
        read("cm", mistakes, lines);
        return mistakes.inOrder().stream()
                .map(
                        m ->
                                m.place().line()
                                        + ":"
                                        + m.place().column()
                                        + " "
                                        + m.found()
                                        + " | "
                                        + m.right())
                .toList();
    }

    List<HemResult> results() {
        return HemCalculation.all(fit, hems, cloths.values(), tape);
    }

    Worksheet sheet() {
        return new HemWorksheet(results(), fit.pattern().seams(), cloths, tape).worksheet();
    }

    private static Optional<Written> read(String units, Mistakes mistakes, String... lines) {
        List<String> all = new ArrayList<>(List.of("units: " + units));
        all.addAll(List.of(lines));
        MapForm<Written> root =
                MapForm.of(
                        "a project",
                        List.of(
                                UNITS,
                                ClothSection.KEY,
                                PatternSection.KEY,
                                AlterationSection.KEY,
                                HemSection.KEY),
                        fields -> {
                            var pattern = fields.get(PatternSection.KEY).orElseThrow();
                            var hems = fields.get(HemSection.KEY).orElse(Map.of());
                            Tape tape = fields.tape();
                            var troubles = HemCheck.of(hems, pattern, tape);
                            troubles.forEach(t -> fields.tell(t.place(), t.found(), t.right()));
                            var changes = fields.get(AlterationSection.KEY).orElse(List.of());
                            return troubles.isEmpty()
                                    ? Optional.of(
                                            new Written(
                                                    FitCalculation.work(pattern, changes, tape),
                                                    hems,
                                                    fields.get(ClothSection.KEY).orElse(Map.of()),
                                                    tape))
                                    : Optional.empty();
                        });
        String text = String.join("\n", all) + "\n";
        return ProjectFileReader.read(SourceFile.of("test.yaml", text), root, UNITS, mistakes);
    }
}
