package secondbolt.fit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import secondbolt.file.value.Quoted;
import secondbolt.fit.made.AddedMeasures;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeCalculation;
import secondbolt.fit.size.SizeResult;
import secondbolt.garment.Serves;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Meaning;
import secondbolt.pattern.Meanings;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Open;

/**
 * What the figures of the fit take for granted, or leave open, of what edges and lines serve.
 *
 * @param result the pattern, altered
 * @param size the wearer beside it
 */
record MeaningGaps(FitResult result, SizeResult size) {
    static MeaningGaps of(FitResult result, SizeResult size) {
        return new MeaningGaps(result, size);
    }

    private Meanings meanings() {
        return result.pattern().meanings();
    }

    /** The meanings that the figures rest on and that the maker has not said: one line for all. */
    List<Assumed> assumed() {
        Map<String, Meaning> used = used();
        used.values().removeIf(meaning -> meaning.how() == Meaning.How.TOLD);
        List<String> words = new ArrayList<>();
        used.forEach((name, meaning) -> words.add(words(name, meaning.serves())));
        return words.isEmpty()
                ? List.of()
                : List.of(
                        new Assumed(
                                "what edges and lines serve",
                                String.join(", ", words),
                                "by the trade's words in their names, or by what they are sewn to;"
                                        + " if one serves something else, write it under `pattern`,"
                                        + " as in `meaning: {"
                                        + Quoted.of(used.keySet().iterator().next())
                                        + ": …}`"));
    }

    private static String words(String name, Serves serves) {
        return "`" + name + "`" + (name.equals(serves.word()) ? "" : " (" + serves.word() + ")");
    }

    /** The edges and lines that some figure rests on. */
    private Map<String, Meaning> used() {
        Map<String, Meaning> used = new TreeMap<>();
        Map<String, Meaning> sides = meanings().edgeNames(Serves.SIDE);
        for (Alteration alteration : result.alterations()) {
            alteration.accept(
                    new Alteration.Visitor<Boolean>() {
                        @Override
                        public Boolean lengthen(Alteration.Lengthen lengthen) {
                            meanings()
                                    .line(lengthen.line())
                                    .filter(line -> isCompared(altered(line)))
                                    .ifPresent(line -> used.put(lengthen.line(), line));
                            return true;
                        }

                        @Override
                        public Boolean widen(Alteration.Widen widen) {
                            if (isCompared(AddedMeasures.ALL_ROUND)) {
                                widen.edges().stream()
                                        .filter(sides::containsKey)
                                        .forEach(edge -> used.put(edge, sides.get(edge)));
                            }
                            return true;
                        }
                    });
        }
        return used;
    }

    private static List<BodyMeasure> altered(Meaning line) {
        return SizeCalculation.alteredAt(line.serves()).stream().toList();
    }

    /** Whether the pattern tells what it measures at one of these. */
    private boolean isCompared(Collection<BodyMeasure> measures) {
        return size.measurements().stream()
                .filter(m -> m.pattern().isPresent() || m.finished().isPresent())
                .anyMatch(m -> measures.contains(m.name()));
    }

    /** Alterations that no figure counts, because it is not known what they are made at. */
    List<Open> open() {
        return result.alterations().stream().flatMap(a -> open(a).stream()).distinct().toList();
    }

    private Optional<Open> open(Alteration alteration) {
        return alteration.accept(
                new Alteration.Visitor<Optional<Open>>() {
                    @Override
                    public Optional<Open> lengthen(Alteration.Lengthen lengthen) {
                        boolean isOpen =
                                meanings().line(lengthen.line()).isEmpty()
                                        && isCompared(SizeCalculation.lengths());
                        return isOpen ? Optional.of(line(lengthen)) : Optional.empty();
                    }

                    @Override
                    public Optional<Open> widen(Alteration.Widen widen) {
                        boolean isOpen =
                                !meanings().isKnown(widen.edges())
                                        && isCompared(AddedMeasures.ALL_ROUND);
                        return isOpen ? Optional.of(edges(widen)) : Optional.empty();
                    }
                });
    }

    private static Open line(Alteration.Lengthen lengthen) {
        return new Open(
                "what the line " + lengthen.line() + " serves",
                "which length of the body `"
                        + lengthen.words()
                        + "` adds to: it is counted at none",
                "Write it under `pattern`, as in `meaning: {"
                        + Quoted.of(lengthen.line())
                        + ": body}`, or sleeve, crotch depth, leg. Write hip only if it lies where the"
                        + " hip is: the garment is measured round there. A line that adds to none"
                        + " of these, as below the hip of a skirt, needs no word.");
    }

    private static Open edges(Alteration.Widen widen) {
        String names = String.join(", ", widen.edges());
        return new Open(
                "what " + names + (widen.edges().size() > 1 ? " serve" : " serves"),
                "whether `" + widen.words() + "` adds to bust, waist and hip: it is not counted",
                "If the body is wider by it, write under `pattern` `meaning: {"
                        + String.join(
                                ", ",
                                widen.edges().stream().map(e -> Quoted.of(e) + ": side").toList())
                        + "}`; else what it serves, as `hem` or `wrist`.");
    }
}
