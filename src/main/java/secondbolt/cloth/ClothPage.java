package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.file.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;

/** Makes the text of the cloth page. */
final class ClothPage {
    private static final String OPEN = "open";
    private static final String AS_MEASURED =
            "Figures as measured, before the wash: what the wash does to it is still open.";
    private static final String FINISHED = "Figures of the cloth trimmed and washed.";

    private final Tape tape;

    private ClothPage(Tape tape) {
        this.tape = tape;
    }

    static ClothView view(List<ClothResult> results, Tape tape) {
        ClothPage page = new ClothPage(tape);
        List<ClothView.One> cloths = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            cloths.add(page.one(results.get(i), picture(i)));
        }
        List<ClothView.Stock> stocks =
                ClothStock.of(results).stream()
                        .filter(stock -> stock.cloths().size() > 1)
                        .map(page::stock)
                        .toList();
        return new ClothView(cloths, stocks);
    }

    /** The name of the picture of a cloth, by its place in the file. */
    static String picture(int index) {
        return "cloth-" + (index + 1);
    }

    private ClothView.One one(ClothResult result, String picture) {
        Optional<ClothYield> yielded = result.best();
        return new ClothView.One(
                result.name(),
                yielded.isPresent() ? picture : "",
                ClothDrawing.CAPTION,
                yielded.isEmpty() ? "" : result.finished().isPresent() ? FINISHED : AS_MEASURED,
                facts(result),
                flaws(result.cloth().condition().flaws()),
                yielded.map(this::rectangles).orElse(List.of()),
                yielded.map(y -> lengths(y, tape)).orElse(List.of()),
                yielded.map(y -> lengths(y, tape.other())).orElse(List.of()));
    }

    private ClothView.Both both(Function<Tape, String> print) {
        return new ClothView.Both(print.apply(tape), print.apply(tape.other()));
    }

    private ClothView.Both size(AcrossAlong<Length> size) {
        return both(t -> t.print(size.across()) + " × " + t.print(size.along()));
    }

    private static ClothView.Fact fact(String label, ClothView.Both value) {
        return new ClothView.Fact(label, value);
    }

    private static ClothView.Fact fact(String label, String value) {
        return new ClothView.Fact(label, new ClothView.Both(value, ""));
    }

    private List<ClothView.Fact> facts(ClothResult result) {
        Textile textile = result.cloth().textile();
        List<ClothView.Fact> facts = new ArrayList<>();
        facts.add(fact("Used for", textile.roleOrMain().word()));
        facts.add(fact("Fibre", fibre(textile)));
        result.cloth()
                .extent()
                .toOptional()
                .ifPresent(e -> facts.add(fact("As measured, across × along", size(e.size()))));
        facts.add(fact("In the wash, across", change(result.left().across())));
        facts.add(fact("In the wash, along", change(result.left().along())));
        boolean open = result.finished().isEmpty();
        String as = open ? ", as measured, before the wash" : "";
        if (open) {
            facts.add(fact("Trimmed and washed, across × along", OPEN));
        }
        result.best().ifPresent(y -> yielded(facts, y, as, open));
        heaviness(facts, result.heaviness(), result.changes());
        return facts;
    }

    private void yielded(List<ClothView.Fact> facts, ClothYield y, String as, boolean open) {
        facts.add(
                fact(open ? "Trimmed" + as : "Trimmed and washed, across × along", size(y.size())));
        facts.add(fact("Sound" + as, both(t -> t.print(y.soundArea()))));
        facts.add(fact("Not sound, or kept clear" + as, both(t -> t.print(y.flawedArea()))));
        if (!y.soundForHiddenArea().equals(y.soundArea())) {
            facts.add(
                    fact(
                            "Sound for hidden pieces" + as,
                            both(t -> t.print(y.soundForHiddenArea()))));
        }
    }

    private void heaviness(
            List<ClothView.Fact> facts, ClothResult.Heaviness heaviness, boolean changes) {
        facts.add(
                fact(
                        "Mass, dry, untrimmed",
                        heaviness.mass().map(m -> both(t -> t.print(m))).orElse(open())));
        facts.add(
                fact("Weight", heaviness.weight().map(w -> both(t -> t.print(w))).orElse(open())));
        heaviness
                .washedWeight()
                .filter(w -> changes)
                .ifPresent(w -> facts.add(fact("Weight after the wash", both(t -> t.print(w)))));
    }

    private static ClothView.Both open() {
        return new ClothView.Both(OPEN, "");
    }

    private static String fibre(Textile textile) {
        String fibre =
                textile.fibre().flatMap(a -> a.toOptional()).map(Fibre::words).orElse("unknown");
        return textile.knownBy().map(by -> fibre + " (" + by.word() + ")").orElse(fibre);
    }

    private static String change(Optional<Share> left) {
        if (left.isEmpty()) {
            return OPEN;
        }
        int way = left.get().compareTo(Share.WHOLE);
        if (way == 0) {
            return "no change";
        }
        return way < 0
                ? "draws in by " + left.get().lost().percent(2)
                : "grows by " + left.get().plus(Share.ofPercent(-100)).percent(2);
    }

    private List<ClothView.FlawRow> flaws(List<Flaw> flaws) {
        List<ClothView.FlawRow> rows = new ArrayList<>();
        for (int i = 0; i < flaws.size(); i++) {
            Sides<Length> bounds = flaws.get(i).patch().bounds();
            rows.add(
                    new ClothView.FlawRow(
                            FlawLetters.letter(i),
                            flaws.get(i).what(),
                            fromTo(bounds.left(), bounds.right()),
                            fromTo(bounds.top(), bounds.bottom()),
                            use(flaws.get(i).kind())));
        }
        return rows;
    }

    private ClothView.Both fromTo(Length from, Length to) {
        return both(t -> t.print(from) + " to " + t.print(to));
    }

    private static String use(Flaw.Kind kind) {
        return switch (kind) {
            case UNSOUND -> "keep off";
            case HIDDEN_USE -> "hidden pieces only";
            case FEATURE -> "avoid";
        };
    }

    private List<ClothView.RectangleRow> rectangles(ClothYield y) {
        List<ClothView.RectangleRow> rows = new ArrayList<>();
        for (Box box : y.rectangles()) {
            rows.add(
                    new ClothView.RectangleRow(
                            rows.size() + 1,
                            both(t -> t.print(start(t, box.leftMm()))),
                            both(t -> t.print(start(t, box.topMm()))),
                            both(t -> t.print(inside(t, box.leftMm(), box.rightMm()))),
                            both(t -> t.print(inside(t, box.topMm(), box.bottomMm())))));
        }
        return rows;
    }

    /** The first mark of the tape inside, so that what is measured off is there for certain. */
    private static Length start(Tape tape, double fromMm) {
        return Length.ofComputedMillimetres(fromMm).roundedUpTo(tape.mark());
    }

    private static Length inside(Tape tape, double fromMm, double toMm) {
        return Length.ofComputedMillimetres(toMm)
                .roundedDownTo(tape.mark())
                .minus(start(tape, fromMm));
    }

    private List<ClothView.LengthRow> lengths(ClothYield y, Tape system) {
        return y.lengths().stream()
                .filter(length -> length.bolt().tape() == system)
                .map(
                        length ->
                                new ClothView.LengthRow(
                                        system.print(length.bolt().width()),
                                        both(t -> t.printInHand(length.byArea())),
                                        isTooShort(length, system)
                                                ? new ClothView.Both("none", "")
                                                : both(
                                                        t ->
                                                                t.printInHand(
                                                                        length.clearRunOrZero()))))
                .toList();
    }

    /** Less than one step of what shops cut is no run that a piece could be laid on. */
    private static boolean isTooShort(ClothYield.EquivalentLength length, Tape system) {
        return length.clearRunOrZero().isShorterThan(system.shopStep());
    }

    private ClothView.Stock stock(ClothStock stock) {
        List<ClothView.Fact> facts = new ArrayList<>();
        facts.add(
                fact(
                        "Untrimmed, as measured",
                        stock.untrimmedArea().map(a -> both(t -> t.print(a))).orElse(open())));
        facts.add(
                fact(
                        "Sound, trimmed and washed",
                        stock.soundArea().map(a -> both(t -> t.print(a))).orElse(open())));
        facts.add(
                fact(
                        "Mass, dry, untrimmed",
                        stock.mass().map(m -> both(t -> t.print(m))).orElse(open())));
        String names =
                stock.cloths().stream().map(ClothResult::name).collect(Collectors.joining(", "));
        return new ClothView.Stock(stock.role().word(), names, facts);
    }
}
