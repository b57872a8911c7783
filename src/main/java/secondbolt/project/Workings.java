package secondbolt.project;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.Closure;
import secondbolt.closure.ClosureWorksheet;
import secondbolt.closure.TurnedUp;
import secondbolt.cloth.ClothWorksheet;
import secondbolt.cutting.CuttingCalculation;
import secondbolt.cutting.CuttingResult;
import secondbolt.cutting.CuttingWorksheet;
import secondbolt.effect.EffectWorksheet;
import secondbolt.fit.FitCalculation;
import secondbolt.fit.FitResult;
import secondbolt.fit.FitWorksheet;
import secondbolt.hem.HemAllowances;
import secondbolt.hem.HemWorksheet;
import secondbolt.lay.LayWorksheet;
import secondbolt.lay.stock.LayDesk;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

/**
 * A project worked out.
 *
 * @param folder the name of its folder, which names its pages
 * @param heading what it says of itself
 * @param worksheets in the order of working
 */
public record Workings(String folder, Heading heading, List<Worksheet> worksheets) {
    /** Copies the worksheets. */
    public Workings {
        worksheets = List.copyOf(worksheets);
    }

    /**
     * Works a project out: the hand-written list of topics, in the order of working.
     *
     * @param folder the name of its folder
     * @param desk what lays are worked out with
     */
    public static Workings of(String folder, Project project, LayDesk desk) {
        Tape tape = project.heading().units();
        List<Worksheet> worksheets = new ArrayList<>();
        Optional<ClothWorksheet> cloth =
                project.cloths().map(cloths -> ClothWorksheet.of(cloths, tape));
        cloth.ifPresent(worksheets::add);
        Optional<FitResult> fit =
                project.pattern()
                        .map(p -> HemAllowances.included(p, project.hems(), tape))
                        .map(p -> FitCalculation.work(p, project.alterations(), tape));
        fit.ifPresent(f -> worksheets.add(FitWorksheet.of(f, project.wearer(), tape)));
        Optional<Map<String, Closure>> closures = closures(project);
        closures.ifPresent(
                all ->
                        worksheets.add(
                                ClosureWorksheet.of(
                                        all, fit, project.wearer(), project.machine(), tape)));
        fit.filter(f -> !project.hems().isEmpty())
                .ifPresent(
                        f ->
                                worksheets.add(
                                        HemWorksheet.of(
                                                f,
                                                project.hems(),
                                                project.cloths().orElse(Map.of()),
                                                tape)));
        Optional<CuttingResult> cutting =
                fit.map(f -> CuttingCalculation.work(f, project.hems(), tape));
        cutting.ifPresent(c -> worksheets.add(CuttingWorksheet.of(c, tape)));
        cutting.filter(c -> !c.pieces().isEmpty() || !c.taped().isEmpty())
                .ifPresent(
                        c ->
                                worksheets.add(
                                        LayWorksheet.of(
                                                cloth.map(ClothWorksheet::results)
                                                        .orElse(List.of()),
                                                c,
                                                project.lay(),
                                                tape,
                                                desk)));
        fit.filter(f -> !f.alterations().isEmpty())
                .ifPresent(
                        f ->
                                worksheets.add(
                                        EffectWorksheet.of(
                                                f,
                                                closures.orElse(Map.of()),
                                                project.machine(),
                                                project.hems(),
                                                tape)));
        return new Workings(folder, project.heading(), worksheets);
    }

    /**
     * The closures with the hems they end in. A hem is worked out after the closures, but its depth
     * is the maker's own, so that it can be told them beforehand.
     */
    private static Optional<Map<String, Closure>> closures(Project project) {
        List<TurnedUp> turned = new ArrayList<>();
        project.hems().forEach((name, hem) -> turned.addAll(hem.turnedUp(name)));
        return project.closures()
                .map(
                        closures -> {
                            Map<String, Closure> hemmed = new LinkedHashMap<>();
                            closures.forEach((name, one) -> hemmed.put(name, one.with(turned)));
                            return hemmed;
                        });
    }

    /** Everything found, in the order of the worksheets. */
    public List<Finding> findings() {
        return worksheets.stream().flatMap(sheet -> sheet.findings().stream()).toList();
    }
}
