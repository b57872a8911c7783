package secondbolt.closure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.draw.Drawing;
import secondbolt.figure.Figures;
import secondbolt.fit.EdgeSum;
import secondbolt.fit.FitResult;
import secondbolt.fit.size.Wearer;
import secondbolt.measure.Counted;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** The closures of a garment, worked out. */
public final class ClosureWorksheet {
    private final Map<String, Closure> closures;
    private final Optional<FitResult> fit;
    private final Machine machine;
    private final Tape tape;
    private final List<ClosureResult> results;
    private final ClosurePage page;

    private ClosureWorksheet(
            Map<String, Closure> closures,
            Optional<FitResult> fit,
            Optional<Wearer.Age> age,
            Machine machine,
            Tape tape) {
        this.closures = closures;
        this.fit = fit;
        this.machine = machine;
        this.tape = tape;
        this.results = ClosureCalculation.all(closures, fit, machine, tape);
        this.page = new ClosurePage(age, machine, tape);
    }

    /**
     * Works out the closures of a project.
     *
     * @param fit the altered pattern, if there is one; closures on its edges need it
     * @param wearer if told; the age decides cautions
     * @param machine the maker's
     * @param tape the project is measured with
     */
    public static ClosureWorksheet of(
            Map<String, Closure> closures,
            Optional<FitResult> fit,
            Optional<Wearer> wearer,
            Machine machine,
            Tape tape) {
        return new ClosureWorksheet(
                new LinkedHashMap<>(closures), fit, wearer.flatMap(Wearer::age), machine, tape);
    }

    /** Each closure whose length is known, worked out, in the maker's order. */
    public List<ClosureResult> results() {
        return results;
    }

    /** Its page, sheets and figures. */
    public Worksheet worksheet() {
        return Worksheet.of("closures", "Closures", new Notes(findings(), assumed(), open()))
                .showing(() -> List.of(new Block.Own("closures", view(), pictures())))
                .printing(this::sheets)
                .telling(this::figures);
    }

    Object view() {
        return new ClosureView(results.stream().map(page::view).toList());
    }

    Map<String, Drawing> pictures() {
        Map<String, Drawing> pictures = new LinkedHashMap<>();
        results.forEach(result -> pictures.put(result.name(), PlacketPicture.of(result, tape)));
        return pictures;
    }

    List<Sheet> sheets() {
        return new ClosureSheets(results, page, tape).sheets();
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (ClosureResult result : results) {
            findings.addAll(page.findings(result));
            followed(result).ifPresent(findings::add);
            open(result).ifPresent(findings::add);
        }
        return findings;
    }

    /** A placket on edges of which it is not known whether the alterations changed them. */
    private Optional<Finding> open(ClosureResult result) {
        List<EdgeSum.Term> open =
                result.closure()
                        .placket()
                        .edges()
                        .flatMap(edges -> fit.map(f -> f.open(edges.value())))
                        .orElse(List.of());
        return open.stream()
                .findFirst()
                .map(
                        edge ->
                                new Finding(
                                        result.name(),
                                        Finding.Level.WARNING,
                                        "Whether the alterations change "
                                                + edge
                                                + " is not known, so these places hold for the"
                                                + " length as taped only.",
                                        fit.orElseThrow().findOut(edge, tape)));
    }

    /** What the alterations moved on a closure that lies on edges of the pattern. */
    private Optional<Finding> followed(ClosureResult result) {
        Optional<Length> before = result.closure().placket().lengthBefore(fit);
        if (before.isEmpty()
                || before.get().minus(result.length()).size().isShorterThan(tape.mark())) {
            return Optional.empty();
        }
        return Optional.of(
                new Finding(
                        result.name(),
                        Finding.Level.NOTE,
                        "The alterations take the placket from "
                                + tape.print(before.get())
                                + " to "
                                + tape.print(result.length())
                                + moved(result)
                                + ".",
                        "Use the printed strip; the marks on the pattern no longer hold."));
    }

    /** Which fasteners lie elsewhere than they would without the alterations. */
    private String moved(ClosureResult result) {
        FitResult unaltered = fit.orElseThrow().unaltered(tape);
        Layout layout = Layout.of(result.closure(), Optional.of(unaltered), tape).orElseThrow();
        List<ClosureResult.Mark> was =
                ClosureCalculation.work(result.name(), result.closure(), layout, machine, tape)
                        .marks();
        List<Integer> moved = new ArrayList<>();
        for (int i = 0; i < Math.min(was.size(), result.marks().size()); i++) {
            Length by = result.marks().get(i).fromTop().minus(was.get(i).fromTop());
            if (!by.size().isShorterThan(tape.mark())) {
                moved.add(i + 1);
            }
        }
        String kind = result.closure().fastening().kind().word();
        return moved.isEmpty() ? "" : "; " + kind + " " + Counted.runs(moved) + " moved";
    }

    List<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>();
        closures.forEach((name, closure) -> assumed.addAll(assumed(name, closure)));
        return assumed;
    }

    private List<Assumed> assumed(String name, Closure closure) {
        List<Assumed> assumed = new ArrayList<>();
        Fastening fastening = closure.fastening();
        if (!fastening.hasHoles()) {
            return assumed;
        }
        String reach = tape.printSmall(ClosureCalculation.reach(tape));
        assumed.add(
                closure.isUpright()
                        ? new Assumed(
                                name + ": where an upright hole begins",
                                reach + " above the button's centre, running down",
                                "dressmakers' association standards; one pattern designer centres"
                                        + " the hole on the button instead")
                        : new Assumed(
                                name + ": where a level hole begins",
                                reach + " past the centre line toward the edge, running inward",
                                "Buttons and Buttonholes, Extension Bulletin 576, 1965"));
        if (fastening.ease().isEmpty()) {
            assumed.add(
                    new Assumed(
                            name + ": working ease of the holes",
                            "none",
                            "for thick cloth "
                                    + reach
                                    + " more is usual (Extension Bulletin 576); a trial decides"));
        }
        if (fastening.button().orElseThrow().isTakenAsHalfABall()) {
            assumed.add(
                    new Assumed(
                            name + ": height of the domed button",
                            "half its diameter",
                            "half a ball, the highest dome; write `thick` or `girth`"));
        }
        boolean hasBulk =
                results.stream()
                        .anyMatch(r -> r.name().equals(name) && !r.layout().bulks().isEmpty());
        if (hasBulk && machine.footRoom().isEmpty()) {
            assumed.add(
                    new Assumed(
                            name + ": what the buttonhole foot needs beyond a hole",
                            tape.printSmall(machine.footRoom(tape)),
                            "common practice, no source; try it against a seam and write `machine:"
                                    + " {foot room: …}`"));
        }
        return assumed;
    }

    List<Open> open() {
        return closures.entrySet().stream()
                .filter(e -> results.stream().noneMatch(r -> r.name().equals(e.getKey())))
                .map(
                        e ->
                                new Open(
                                        e.getKey() + ": the length of the placket",
                                        "where its buttons and holes come, and its strip",
                                        "Lay a tape along the finished edge, from the top edge to"
                                                + " the bottom edge."))
                .toList();
    }

    Figures figures() {
        Figures figures = new Figures();
        closures.forEach(
                (name, closure) ->
                        figures.inside(
                                name,
                                results.stream()
                                        .filter(r -> r.name().equals(name))
                                        .findFirst()
                                        .map(ClosureWorksheet::figures)));
        return figures;
    }

    private static Figures figures(ClosureResult result) {
        Fastening fastening = result.closure().fastening();
        Figures figures =
                new Figures()
                        .text("kind", fastening.kind().word())
                        .toldLength(
                                "edge_length", result.length(), result.name() + ": the placket");
        result.gap()
                .ifPresentOrElse(
                        gap ->
                                figures.toldLength(
                                        "even_gap", gap, result.name() + ": from button to button"),
                        () -> figures.length("even_gap", Optional.empty()));
        return figures.length("uneven_by", result.solved().uneven())
                .length(
                        "hole",
                        fastening.hasHoles() ? Optional.of(result.hole()) : Optional.empty())
                .length("extension", result.closure().overlap().extension())
                .length("rows_apart", result.closure().overlap().rowsApart())
                .text(
                        "holes",
                        Optional.of(fastening)
                                .filter(Fastening::hasHoles)
                                .map(f -> f.holes().word()))
                .text(
                        "laps",
                        Optional.of(result.closure())
                                .filter(Closure::isLapped)
                                .map(c -> c.overlap().laps().word()))
                .count("to_buy", result.toBuy())
                .list("marks", result.marks().stream().map(mark -> figures(result, mark)).toList())
                .list("counts", result.advice().stream().map(ClosureWorksheet::figures).toList());
    }

    /** Of the last one a maker is told when it moves: it tells how the others do. */
    private static Figures figures(ClosureResult result, ClosureResult.Mark mark) {
        Fastening fastening = result.closure().fastening();
        Figures figures = new Figures().count("number", mark.number());
        if (mark.number() == result.marks().size()) {
            String one = fastening.kind().one() + " " + mark.number();
            figures.toldLength(
                    "from_top", mark.fromTop(), result.name() + ": " + one + ", from the top");
        } else {
            figures.length("from_top", mark.fromTop());
        }
        if (fastening.hasHoles()) {
            figures.length("start", mark.start())
                    .length("end", mark.end())
                    .text("hole", mark.holes().word());
        }
        figures.claim("by_hand", mark.byHand());
        return figures.text("why", mark.why());
    }

    private static Figures figures(ClosureResult.Advice advice) {
        return new Figures()
                .count("count", advice.count())
                .length("gap", advice.solved().gap())
                .length("uneven_by", advice.solved().uneven())
                .count("by_hand", advice.solved().byHand().size())
                .count("unmet", advice.solved().unmet().size());
    }
}
