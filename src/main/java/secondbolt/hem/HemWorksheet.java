package secondbolt.hem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.cloth.Cloth;
import secondbolt.draw.Drawing;
import secondbolt.figure.Figures;
import secondbolt.fit.FitResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/** The hems of a garment, worked out. */
public final class HemWorksheet {
    /** An inch; common practice, no source. */
    private static final Length USUAL_JUMP = Length.ofInches(1, 1);

    private final List<HemResult> results;
    private final Map<String, Cloth> cloths;
    private final Tape tape;

    private HemWorksheet(List<HemResult> results, Map<String, Cloth> cloths, Tape tape) {
        this.results = results;
        this.cloths = cloths;
        this.tape = tape;
    }

    /**
     * Works out the hems of a project.
     *
     * @param fit the altered pattern
     * @param hems by name, at least one; their edges must be there, which reading has checked
     * @param cloths by name; none if they are not told
     * @param tape the project is measured with
     */
    public static HemWorksheet of(
            FitResult fit, Map<String, Hem> hems, Map<String, Cloth> cloths, Tape tape) {
        return new HemWorksheet(
                HemCalculation.all(fit, hems, tape), new LinkedHashMap<>(cloths), tape);
    }

    /** Each hem worked out, in the maker's order. */
    public List<HemResult> results() {
        return results;
    }

    /** Its page, sheets and figures. */
    public Worksheet worksheet() {
        return Worksheet.of("hems", "Hems", new Notes(findings(), assumed(), open()))
                .showing(() -> List.of(new Block.Own("hems", view(), pictures())))
                .printing(this::sheets)
                .telling(this::figures);
    }

    Object view() {
        return new HemView(results.stream().map(this::view).toList());
    }

    private HemView.One view(HemResult result) {
        Optional<HemEdge> shown = shown(result);
        return new HemView.One(
                result.name(),
                shown.isPresent() ? result.name() : "",
                shown.map(HemWorksheet::caption).orElse(""),
                facts(result),
                result.edges().stream().map(this::row).toList(),
                result.hem().depth().isPresent() ? HemWords.pressing(result, tape) : List.of());
    }

    /** The edge whose turned part differs most from its line. */
    private static Optional<HemEdge> shown(HemResult result) {
        return result.edges().stream()
                .filter(edge -> edge.turned().isPresent())
                .max(
                        Comparator.comparing(
                                (HemEdge edge) -> edge.surplus().orElse(Length.ZERO).size()));
    }

    private static String caption(HemEdge edge) {
        return edge.edge()
                + " with the piece above it, reduced: heavy the fold, thin the edge that is turned"
                + " up with its mirrored ends, dashed the line it lands on. A picture, not for"
                + " measuring.";
    }

    private List<HemView.Fact> facts(HemResult result) {
        List<HemView.Fact> facts = new ArrayList<>();
        Hem hem = result.hem();
        hem.depth()
                .ifPresent(
                        depth ->
                                facts.add(
                                        fact(
                                                hem.turned() == Hem.Turned.FACED
                                                        ? "Depth of the facing"
                                                        : "Depth, finished",
                                                depth)));
        usual(result).ifPresent(facts::add);
        facts.add(new HemView.Fact("Turned", hem.turned().word(), ""));
        if (hem.turned() != Hem.Turned.FACED) {
            facts.add(fact("Cloth turned up below the fold", result.turnedUp()));
        }
        facts.add(fact("Fold, all round", result.foldAllRound()));
        result.surplusAllRound()
                .filter(s -> hem.turned() != Hem.Turned.FACED)
                .ifPresent(
                        s ->
                                facts.add(
                                        fact(
                                                s.isNegative()
                                                        ? "Turned edge too short, all round"
                                                        : "Turned edge too long, all round",
                                                s.size())));
        hem.fromFloor().ifPresent(floor -> facts.add(fact("Fold above the floor", floor)));
        result.marks()
                .ifPresent(
                        marks ->
                                facts.add(
                                        new HemView.Fact(
                                                "Level marks, all round",
                                                marks
                                                        + ", one every "
                                                        + tape.print(
                                                                HemCalculation.markEvery(tape)),
                                                "")));
        facts.add(
                new HemView.Fact(
                        "Hangs before it is levelled",
                        result.hang().first() ? result.hang().hours() + " h" : "no",
                        ""));
        hem.jump().ifPresent(jump -> facts.addAll(jump(jump)));
        return facts;
    }

    private List<HemView.Fact> jump(Length jump) {
        return List.of(
                fact("Lining's fold above the garment's", jump),
                new HemView.Fact(
                        "Jump",
                        "the lining is cut to its outline and its fold sewn so much higher; that"
                                + " length falls in a pleat. Usual is "
                                + tape.print(USUAL_JUMP)
                                + " (common practice, no source)",
                        ""));
    }

    private Optional<HemView.Fact> usual(HemResult result) {
        return result.hem()
                .garment()
                .filter(garment -> !garment.usual().isEmpty())
                .map(
                        garment ->
                                new HemView.Fact(
                                        "Usual for a hem of this kind",
                                        garment.word()
                                                + ": "
                                                + garment.usual().stream()
                                                        .map(this::usual)
                                                        .collect(Collectors.joining("; "))
                                                + " ("
                                                + garment.source()
                                                + ")",
                                        ""));
    }

    private String usual(Garment.Usual usual) {
        String range =
                usual.least().equals(usual.most())
                        ? tape.printBoth(usual.least())
                        : tape.printBoth(usual.least()) + " to " + tape.printBoth(usual.most());
        return usual.of().isEmpty() ? range : usual.of() + " " + range;
    }

    private HemView.Fact fact(String label, Length length) {
        return new HemView.Fact(label, tape.print(length), tape.other().print(length));
    }

    private HemView.Row row(HemEdge edge) {
        return new HemView.Row(
                edge.edge().toString(),
                HemWords.shape(edge, tape),
                Integer.toString(edge.times()),
                both(Optional.of(edge.fold())),
                both(edge.cutEdge()),
                both(edge.landsOn()),
                longer(edge),
                edge.handling().words());
    }

    private HemView.Both both(Optional<Length> length) {
        return length.map(l -> new HemView.Both(tape.print(l), tape.other().print(l)))
                .orElseGet(() -> new HemView.Both("not known", ""));
    }

    private HemView.Both longer(HemEdge edge) {
        if (edge.surplus().isEmpty()) {
            return new HemView.Both("not known", "");
        }
        Length surplus = edge.surplus().get();
        String sign = surplus.isNegative() ? "−" : "";
        String share = edge.fullness().map(f -> ", " + HemWords.percent(Math.abs(f))).orElse("");
        return new HemView.Both(
                sign + print(tape, surplus.size()) + share,
                sign + print(tape.other(), surplus.size()));
    }

    private static String print(Tape tape, Length length) {
        boolean small = length.isShorterThan(Length.ofMillimetres(10));
        return small ? tape.printSmall(length) : tape.print(length);
    }

    Map<String, Drawing> pictures() {
        Map<String, Drawing> pictures = new LinkedHashMap<>();
        for (HemResult result : results) {
            shown(result)
                    .ifPresent(edge -> pictures.put(result.name(), FoldPicture.of(result, edge)));
        }
        return pictures;
    }

    List<Sheet> sheets() {
        List<String> asked = new ArrayList<>();
        List<Sheet> made = new ArrayList<>();
        for (HemResult result : results) {
            List<Drawing> guides = GuideDrawing.of(result, tape);
            for (int i = 0; i < guides.size(); i++) {
                String part = guides.size() == 1 ? "" : ", part " + (i + 1);
                asked.add("hem guide " + result.name());
                made.add(guide(result, part, guides.get(i)));
            }
            if (result.hem().fromFloor().isPresent()) {
                asked.add("hem level " + result.name());
                made.add(level(result));
            }
        }
        List<String> names = SheetName.forEach(asked);
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            sheets.add(made.get(i).named(names.get(i)));
        }
        return List.copyOf(sheets);
    }

    private Sheet guide(HemResult result, String part, Drawing drawing) {
        List<String> warnings = new ArrayList<>(HemWords.HEAT);
        HemFindings.of(result, cloths, tape).stream()
                .filter(Finding::isWarning)
                .forEach(f -> warnings.add(f.text() + " " + f.remedy()));
        List<List<String>> rows = new ArrayList<>();
        for (HemEdge edge : result.edges()) {
            HemView.Row row = row(edge);
            rows.add(
                    List.of(
                            row.edge()
                                    + ", "
                                    + (edge.times() == 1 ? "once" : row.times() + " times"),
                            row.fold().own(),
                            row.cut().own(),
                            row.lands().own(),
                            row.longer().own(),
                            row.advice()));
        }
        return new Sheet(
                "hem guide",
                "Hem guide: " + result.name() + part,
                subjects(result),
                drawing,
                List.of(
                        new Block.Steps(HemWords.pressing(result, tape)),
                        new Block.Warnings(warnings),
                        new Block.Rows(
                                Table.of(
                                        List.of(
                                                "Edge",
                                                "Fold",
                                                "Turned edge",
                                                "Lands on",
                                                "Longer by",
                                                "What to do"),
                                        rows))),
                Sheet.Size.HOME);
    }

    /** The hem and the edges it turns. */
    private static Set<Subject> subjects(HemResult result) {
        Set<Subject> shown = new HashSet<>();
        shown.add(new Subject.Hem(result.name()));
        result.edges().forEach(edge -> shown.add(new Subject.Edge(edge.edge())));
        return shown;
    }

    private Sheet level(HemResult result) {
        List<List<String>> rows = new ArrayList<>();
        Length floor = result.hem().fromFloor().orElseThrow();
        rows.add(List.of("Fold", tape.print(floor), tape.other().print(floor)));
        LevelDrawing.trim(result)
                .ifPresent(
                        trim ->
                                rows.add(
                                        List.of(
                                                "Trim",
                                                tape.print(trim),
                                                tape.other().print(trim))));
        List<String> warnings =
                result.hem().turned() != Hem.Turned.FACED && LevelDrawing.trim(result).isEmpty()
                        ? List.of(
                                "The allowance reaches the floor: turn it up and pin it before you"
                                        + " mark, so that it does not stand on the floor.")
                        : List.of();
        return new Sheet(
                "hem level",
                "Level strip: " + result.name(),
                subjects(result),
                LevelDrawing.of(result, tape),
                List.of(
                        new Block.Steps(HemWords.level(result, tape)),
                        new Block.Warnings(warnings),
                        new Block.Rows(Table.of(List.of("Line", "Above the floor", ""), rows))),
                Sheet.Size.HOME);
    }

    List<Finding> findings() {
        return results.stream()
                .flatMap(result -> HemFindings.of(result, cloths, tape).stream())
                .toList();
    }

    List<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>();
        for (HemResult result : results) {
            if (result.hem().turned() == Hem.Turned.TWICE) {
                assumed.add(
                        new Assumed(
                                result.name() + ": turn of the raw edge",
                                tape.printSmall(Hem.rawEdge(tape)),
                                "It's Fun to Sew a Cotton School Dress, 4-H bulletin L-87"));
            }
            if (result.hem().hang().isEmpty() && result.hang().first()) {
                assumed.add(
                        new Assumed(
                                result.name() + ": how long it hangs before it is levelled",
                                result.hang().hours() + " h",
                                "a machine maker's how-to, for bias and circular skirts; write"
                                        + " `hang`"));
            }
        }
        boolean isJudged =
                results.stream().flatMap(r -> r.edges().stream()).anyMatch(HemWorksheet::isJudged);
        if (isJudged) {
            assumed.add(
                    new Assumed(
                            "how much fullness the cloth takes",
                            "less than 0.5 % presses flat, up to 5 % shrinks in",
                            "common practice for firm cotton, no source; wool shrinks in more,"
                                    + " polyester hardly at all: try on a scrap"));
        }
        return assumed;
    }

    private static boolean isJudged(HemEdge edge) {
        return edge.handling() == HemEdge.Handling.EASE
                || edge.handling() == HemEdge.Handling.TOO_FULL;
    }

    List<Open> open() {
        List<Open> open = new ArrayList<>();
        for (HemResult result : results) {
            if (result.hem().depth().isEmpty()) {
                open.add(
                        new Open(
                                result.name() + ": the depth of its facing",
                                "the pressing card, and the two edges of the facing",
                                "Decide how deep the facing is, and write it as `depth`."));
            }
            for (HemEdge edge : result.edges()) {
                if (edge.piece().shape().asDrawn().isEmpty()) {
                    open.add(
                            new Open(
                                    result.name() + ": how the fold of " + edge.edge() + " curves",
                                    "how much longer its turned edge is, and its pressing card",
                                    "Stretch a thread between both ends of its hem line and look"
                                        + " how far the line bulges from it; draw the piece with"
                                        + " `outline` and that curve. If it is straight, the turned"
                                        + " edge lies flat."));
                }
            }
        }
        return open;
    }

    Figures figures() {
        Figures figures = new Figures();
        results.forEach(result -> figures.inside(result.name(), HemFigures.of(result)));
        return figures;
    }
}
