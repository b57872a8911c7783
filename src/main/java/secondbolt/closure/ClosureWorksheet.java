package secondbolt.closure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.giving.ClosureGiving;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Tape;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Once;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Worksheet;

/**
 * The closures of a garment.
 *
 * @param closures as written, by name, in the maker's order
 * @param results each whose length is known, in the same order
 * @param age of the wearer, if told; it decides cautions
 * @param tape the maker's
 */
record ClosureWorksheet(
        Map<String, Closure> closures,
        List<ClosureResult> results,
        Optional<Wearer.Age> age,
        Tape tape) {
    /** Its page, sheets and figures. */
    Worksheet worksheet() {
        Once<List<Finding>> findings =
                new Once<>(
                        () ->
                                results.stream()
                                        .flatMap(r -> ClosureFindings.of(r, age).stream())
                                        .toList());
        return Worksheet.of(
                        "closures", "Closures", () -> new Notes(findings.get(), assumed(), open()))
                .showing(
                        () ->
                                results.stream()
                                        .flatMap(r -> new ClosurePage(r).blocks().stream())
                                        .toList())
                .printing(() -> new ClosureSheets(results, findings.get()).sheets())
                .telling(() -> ClosureFigures.of(closures.keySet(), results))
                .giving(ClosureGiving.of(closures, results, tape));
    }

    /** What is assumed of a hole is assumed before the length of its placket is known. */
    private List<Assumed> assumed() {
        return closures.entrySet().stream()
                .flatMap(
                        e ->
                                new ClosureAssumptions(tape)
                                        .of(e.getKey(), e.getValue(), result(e.getKey())).stream())
                .toList();
    }

    private Optional<ClosureResult> result(String name) {
        return results.stream().filter(r -> r.name().equals(name)).findFirst();
    }

    private List<Open> open() {
        return closures.keySet().stream()
                .filter(name -> result(name).isEmpty())
                .map(
                        name ->
                                new Open(
                                        name + ": the length of the placket",
                                        "where its buttons and holes come, and its strip",
                                        "Lay a tape along the finished edge, from the top edge to"
                                                + " the bottom edge."))
                .toList();
    }
}
