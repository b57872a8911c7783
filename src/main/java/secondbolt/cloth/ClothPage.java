package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothStock;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.textile.Stretch;
import secondbolt.textile.Textile;
import secondbolt.textile.extent.Flaw;
import secondbolt.textile.fibre.Fibre;

/**
 * What the page says of the cloths.
 *
 * @param tape to print with
 */
record ClothPage(Tape tape) {
    private static final String OPEN = "open";
    private static final String AS_MEASURED =
            "Figures as measured, before the wash: what the wash does to it is still open.";
    private static final String FINISHED = "Figures of the cloth trimmed and washed.";
    private static final String BY_AREA =
            "By area says how much sound cloth there is, not what can be cut from it: a long"
                    + " pattern piece needs the clear run, the longest clear piece at least that"
                    + " wide. Both are rounded down to what shops cut. Clear runs of several cloths"
                    + " never add up.";

    /** Each cloth by itself, then those that are used together. */
    List<Block> blocks(List<ClothResult> results, List<ClothStock> stocks) {
        List<Block> blocks = new ArrayList<>();
        Optional<ClothResult> first =
                results.stream().filter(r -> r.best().isPresent()).findFirst();
        results.forEach(
                result -> blocks.addAll(cloth(result, first.filter(result::equals).isPresent())));
        stocks.stream()
                .filter(stock -> stock.cloths().size() > 1)
                .forEach(stock -> blocks.addAll(together(stock)));
        return blocks;
    }

    private List<Block> cloth(ClothResult result, boolean isFirst) {
        Optional<ClothYield> yielded = result.best();
        ClothTables tables = new ClothTables(result.name(), tape);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(result.name()));
        yielded.map(y -> ClothDrawing.of(result, y, tape))
                .ifPresent(
                        d ->
                                blocks.add(
                                        new Block.Picture(
                                                d,
                                                isFirst
                                                        ? ClothDrawing.CAPTION
                                                        : ClothDrawing.CAPTION_AGAIN)));
        blocks.add(new Block.Facts(facts(result)));
        List<Flaw> flaws = result.cloth().condition().flaws();
        if (!flaws.isEmpty()) {
            blocks.add(tables.flaws(flaws));
        }
        yielded.ifPresent(
                y -> {
                    blocks.add(
                            new Block.Prose(
                                    result.finished().isPresent() ? FINISHED : AS_MEASURED));
                    if (!y.rectangles().isEmpty()) {
                        blocks.add(tables.rectangles(y.rectangles()));
                    }
                    blocks.add(tables.lengths(y.lengths()));
                    if (isFirst) {
                        blocks.add(new Block.Prose(BY_AREA));
                    }
                    blocks.add(tables.otherLengths(y.lengths()));
                });
        return blocks;
    }

    private Both size(AcrossAlong<Length> size) {
        return Both.of(tape, t -> t.print(size.across()) + " × " + t.print(size.along()));
    }

    private static <T> Fact known(String label, Optional<T> value, Function<T, Both> print) {
        return new Fact(label, value.map(print).orElse(Both.words(OPEN)));
    }

    private List<Fact> facts(ClothResult result) {
        Textile textile = result.cloth().textile();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("Used for", textile.roleOrMain().word()));
        facts.add(Fact.of("Fibre", fibre(textile)));
        if (textile.stretchOrNone().isAny()) {
            facts.add(Fact.of("Stretches, across and along", stretch(textile.stretchOrNone())));
        }
        result.cloth()
                .extent()
                .toOptional()
                .ifPresent(e -> facts.add(new Fact("As measured, across × along", size(e.size()))));
        facts.add(Fact.of("In the wash, across", change(result.left().across())));
        facts.add(Fact.of("In the wash, along", change(result.left().along())));
        boolean open = result.finished().isEmpty();
        if (open) {
            facts.add(Fact.of("Trimmed and washed, across × along", OPEN));
        }
        result.best().ifPresent(y -> facts.addAll(yielded(y, open)));
        facts.addAll(heaviness(result.heaviness(), result.changes()));
        return facts;
    }

    private static String stretch(Stretch stretch) {
        String no = "not";
        return stretch.across().map(s -> s.percent(0)).orElse(no)
                + ", "
                + stretch.along().map(s -> s.percent(0)).orElse(no);
    }

    private List<Fact> yielded(ClothYield y, boolean open) {
        String as = open ? ", as measured, before the wash" : "";
        List<Fact> facts = new ArrayList<>();
        facts.add(
                new Fact(
                        open ? "Trimmed" + as : "Trimmed and washed, across × along",
                        size(y.size())));
        facts.add(new Fact("Sound" + as, Both.of(tape, y.soundArea())));
        facts.add(new Fact("Not sound, or kept clear" + as, Both.of(tape, y.flawedArea())));
        if (!y.soundForHiddenArea().equals(y.soundArea())) {
            facts.add(
                    new Fact(
                            "Sound for hidden pieces" + as, Both.of(tape, y.soundForHiddenArea())));
        }
        return facts;
    }

    private List<Fact> heaviness(ClothResult.Heaviness heaviness, boolean changes) {
        List<Fact> facts = new ArrayList<>();
        facts.add(known("Mass, dry, untrimmed", heaviness.mass(), m -> Both.of(tape, m)));
        facts.add(known("Weight", heaviness.weight(), w -> Both.of(tape, w)));
        heaviness
                .washedWeight()
                .filter(w -> changes)
                .ifPresent(w -> facts.add(new Fact("Weight after the wash", Both.of(tape, w))));
        return facts;
    }

    private static String fibre(Textile textile) {
        String fibre =
                textile.fibre().flatMap(a -> a.toOptional()).map(Fibre::words).orElse("unknown");
        return textile.knownBy().map(by -> fibre + " (" + by.word() + ")").orElse(fibre);
    }

    private static String change(Optional<Share> left) {
        return left.map(l -> l.equals(Share.WHOLE) ? "no change" : WashFindings.change(l))
                .orElse(OPEN);
    }

    private List<Block> together(ClothStock stock) {
        String names =
                stock.cloths().stream().map(ClothResult::name).collect(Collectors.joining(", "));
        return List.of(
                new Block.Heading("Together: " + stock.role().word()),
                new Block.Prose(names),
                new Block.Facts(
                        List.of(
                                known(
                                        "Untrimmed, as measured",
                                        stock.untrimmedArea(),
                                        a -> Both.of(tape, a)),
                                known(
                                        "Sound, trimmed and washed",
                                        stock.soundArea(),
                                        a -> Both.of(tape, a)),
                                known(
                                        "Mass, dry, untrimmed",
                                        stock.mass(),
                                        m -> Both.of(tape, m)))));
    }
}
