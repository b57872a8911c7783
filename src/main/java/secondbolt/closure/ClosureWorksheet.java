package secondbolt.closure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.draw.Drawing;
import secondbolt.fit.FitResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Figures;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Table;
import secondbolt.worksheet.Worksheet;

/** The closures of a garment, worked out. */
public final class ClosureWorksheet implements Worksheet {
    private final Map<String, Closure> closures;
    private final Optional<FitResult> fit;
    private final Tape tape;
    private final List<ClosureResult> results;

    private ClosureWorksheet(Map<String, Closure> closures, Optional<FitResult> fit, Tape tape) {
        this.closures = closures;
        this.fit = fit;
        this.tape = tape;
        this.results = ClosureCalculation.all(closures, fit, tape);
    }

    /**
     * Works out the closures of a project.
     *
     * @param fit the altered pattern, if there is one; closures on its edges need it
     * @param tape the project is measured with
     */
    public static Worksheet of(Map<String, Closure> closures, Optional<FitResult> fit, Tape tape) {
        return new ClosureWorksheet(new LinkedHashMap<>(closures), fit, tape);
    }

    @Override
    public String name() {
        return "closures";
    }

    @Override
    public String title() {
        return "Buttons and buttonholes";
    }

    @Override
    public Object view() {
        return new ClosureView(results.stream().map(this::view).toList());
    }

    private ClosureView.One view(ClosureResult result) {
        List<ClosureView.Fact> facts = new ArrayList<>();
        facts.add(fact("Placket, edge to edge", result.length()));
        result.gap().ifPresent(gap -> facts.add(fact("From button to button", gap)));
        facts.add(small("Buttonhole, between its bars", result.hole().roundedUpTo(tape.mark())));
        facts.add(small("Centre line to finished edge", result.closure().extension()));
        facts.add(new ClosureView.Fact("Holes", holes(result), ""));
        facts.add(
                new ClosureView.Fact(
                        "Laps", result.closure().laps().word() + ", from the wearer's side", ""));
        List<ClosureView.Row> rows = result.marks().stream().map(this::row).toList();
        return new ClosureView.One(result.name(), result.name(), seen(result), facts, rows);
    }

    private static String seen(ClosureResult result) {
        return PlacketPicture.edgeIsAbove(result)
                ? "The wearer's right front, which lies over, seen from outside: top edge to the left,"
                        + " finished edge above."
                : "The wearer's left front, which lies over, seen from outside: top edge to the left,"
                        + " finished edge below.";
    }

    private String holes(ClosureResult result) {
        return result.marks().size()
                + (result.marks().size() == 1 ? " hole, " : " holes, ")
                + result.closure().holes().word()
                + (result.closure().holes() == Closure.Holes.LEVEL
                        ? ": they begin outside the centre line and run inward"
                        : ": begin and end are from the top edge");
    }

    private ClosureView.Fact fact(String label, Length length) {
        return new ClosureView.Fact(label, tape.print(length), tape.other().print(length));
    }

    private ClosureView.Fact small(String label, Length length) {
        return new ClosureView.Fact(
                label, tape.printSmall(length), tape.other().printSmall(length));
    }

    private ClosureView.Row row(ClosureResult.ButtonMark mark) {
        return new ClosureView.Row(
                mark.number(),
                tape.print(mark.fromTop()),
                tape.other().print(mark.fromTop()),
                place(mark.start()),
                place(mark.end()));
    }

    /**
     * A place outside what it is counted from is told by a word, which is sooner seen than a sign.
     */
    private String place(Length from) {
        return tape.print(from.size()) + (from.isNegative() ? " outside" : "");
    }

    @Override
    public Map<String, Drawing> pictures() {
        Map<String, Drawing> pictures = new LinkedHashMap<>();
        results.forEach(result -> pictures.put(result.name(), PlacketPicture.of(result, tape)));
        return pictures;
    }

    @Override
    public List<Sheet> sheets() {
        List<String> names = SheetName.forEach(results.stream().map(ClosureResult::name).toList());
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            sheets.add(sheet(names.get(i), results.get(i)));
        }
        return sheets;
    }

    private Sheet sheet(String name, ClosureResult result) {
        List<String> warnings =
                ClosureFindings.of(result, tape).stream()
                        .filter(f -> f.level().compareTo(Finding.Level.CAUTION) >= 0)
                        .map(f -> f.text() + " " + f.remedy())
                        .toList();
        return new Sheet(
                name,
                "Buttonhole strips: " + result.name(),
                StripDrawing.of(result, tape),
                instructions(result),
                warnings,
                table(result));
    }

    private List<String> instructions(ClosureResult result) {
        boolean right = result.closure().laps() == Closure.Laps.RIGHT_OVER_LEFT;
        String over = right ? "right" : "left";
        String under = right ? "left" : "right";
        return List.of(
                "The marks printed on the pattern no longer hold: use these.",
                "Cut both strips out along the heavy lines.",
                "Lay the strip HOLES on the wearer's "
                        + over
                        + " front, right side of the cloth up: heavy long edge on the finished edge,"
                        + " top line on the finished top edge.",
                "Prick through both ends of each hole and each cross; mark with chalk or thread.",
                "Lay the strip BUTTONS on the wearer's "
                        + under
                        + " front in the same way; a button's centre comes on each cross.",
                "Work and open a trial hole on a scrap with the same layers and interfacing first.");
    }

    private Table table(ClosureResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (ClosureResult.ButtonMark mark : result.marks()) {
            ClosureView.Row row = row(mark);
            rows.add(
                    List.of(
                            Integer.toString(row.number()),
                            row.fromTop(),
                            row.other(),
                            row.start(),
                            row.end()));
        }
        boolean upright = result.closure().holes() == Closure.Holes.UPRIGHT;
        String from = upright ? " from the top" : " from the centre";
        return new Table(
                List.of("Button", "From the top", "", "Hole begins" + from, "Hole ends"), rows);
    }

    @Override
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (ClosureResult result : results) {
            findings.addAll(ClosureFindings.of(result, tape));
            followed(result).ifPresent(findings::add);
        }
        return findings;
    }

    /** What the alterations moved on a closure that lies on edges of the pattern. */
    private Optional<Finding> followed(ClosureResult result) {
        Optional<Length> before = result.closure().placket().lengthBefore(fit);
        if (before.isEmpty()
                || before.get().minus(result.length()).size().isShorterThan(tape.mark())) {
            return Optional.empty();
        }
        ClosureResult was =
                ClosureCalculation.work(result.name(), result.closure(), before.get(), tape);
        List<String> moved = new ArrayList<>();
        for (int i = 0; i < was.marks().size(); i++) {
            Length by = result.marks().get(i).fromTop().minus(was.marks().get(i).fromTop());
            if (!by.size().isShorterThan(tape.mark())) {
                moved.add(Integer.toString(i + 1));
            }
        }
        return Optional.of(
                new Finding(
                        result.name(),
                        Finding.Level.NOTE,
                        "The alterations take the placket from "
                                + tape.print(before.get())
                                + " to "
                                + tape.print(result.length())
                                + (moved.isEmpty()
                                        ? "."
                                        : "; buttons " + String.join(", ", moved) + " moved."),
                        "Use the printed strip; the marks on the pattern no longer hold."));
    }

    @Override
    public List<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>();
        closures.forEach((name, closure) -> assumed.addAll(assumed(name, closure)));
        return assumed;
    }

    private List<Assumed> assumed(String name, Closure closure) {
        List<Assumed> assumed = new ArrayList<>();
        String reach = tape.printSmall(ClosureCalculation.reach(tape));
        assumed.add(
                closure.holes() == Closure.Holes.UPRIGHT
                        ? new Assumed(
                                name + ": where an upright hole begins",
                                reach + " above the button's centre, running down",
                                "dressmakers' association standards; one pattern designer centres"
                                        + " the hole on the button instead")
                        : new Assumed(
                                name + ": where a level hole begins",
                                reach + " past the centre line toward the edge, running inward",
                                "Buttons and Buttonholes, Extension Bulletin 576, 1965"));
        if (closure.ease().isEmpty()) {
            assumed.add(
                    new Assumed(
                            name + ": working ease of the holes",
                            "none",
                            "for thick cloth "
                                    + tape.printSmall(ClosureCalculation.reach(tape))
                                    + " more is usual (Extension Bulletin 576); a trial decides"));
        }
        if (closure.button().isTakenAsHalfABall()) {
            assumed.add(
                    new Assumed(
                            name + ": height of the domed button",
                            "half its diameter",
                            "half a ball, the highest dome; write `thick` or `girth`"));
        }
        return assumed;
    }

    @Override
    public List<Open> open() {
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

    @Override
    public Figures figures() {
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
        return new Figures()
                .length("edge_length", result.length())
                .length("even_gap", result.gap())
                .length("hole", result.hole())
                .length("extension", result.closure().extension())
                .text("holes", result.closure().holes().word())
                .text("laps", result.closure().laps().word())
                .list("marks", result.marks().stream().map(ClosureWorksheet::figures).toList());
    }

    private static Figures figures(ClosureResult.ButtonMark mark) {
        return new Figures()
                .count("number", mark.number())
                .length("from_top", mark.fromTop())
                .length("start", mark.start())
                .length("end", mark.end())
                .claim("by_hand", false)
                .inside("why", Optional.empty());
    }
}
