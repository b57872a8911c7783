package secondbolt.fit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.file.value.Quoted;
import secondbolt.fit.made.AddedMeasures;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeCalculation;
import secondbolt.fit.size.SizeResult;
import secondbolt.garment.Role;
import secondbolt.garment.Serves;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Meaning;
import secondbolt.pattern.Meanings;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sentence;

/**
 * What the figures of the fit take for granted, or leave open, of what edges and lines serve.
 *
 * @param result the pattern, altered
 * @param made what its pieces measure
 * @param size the wearer beside it
 */
record MeaningGaps(FitResult result, MadeMeasures made, SizeResult size) {
    /** What a rectangle's edges are called, which says nothing of the body. */
    private static final Set<String> OF_RECTANGLES = Set.of("top", "bottom", "left", "right");

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

    /** What no figure counts, because it is not known what an edge or a line serves. */
    List<Open> open() {
        return Stream.concat(
                        unmeasured().stream(),
                        result.alterations().stream().flatMap(a -> open(a).stream()))
                .distinct()
                .toList();
    }

    /**
     * A garment's pieces that measure nothing, or nothing round or along, while it is not known
     * what some of their edges serve: their names may be of another language than the trade's
     * words.
     */
    private Optional<Open> unmeasured() {
        boolean isLong = !made.lengths().isEmpty();
        boolean isRound = !made.girths().isEmpty();
        List<String> names = unknown();
        if (size.measurements().isEmpty() || names.isEmpty() || (isLong && isRound)) {
            return Optional.empty();
        }
        List<String> brings = new ArrayList<>();
        if (!isLong) {
            brings.add(
                    "how long it is: shoulder for a top, cap for a sleeve, waist for a skirt"
                            + " or trousers, with the edge down to the end as side, inseam,"
                            + " outseam or underarm, and the end as hem or wrist");
        }
        if (!isRound) {
            brings.add(
                    "how far round it goes: waist, hem or wrist, with what is sewn up beside"
                            + " it as side, inseam, outseam, centre back or underarm; round"
                            + " under the arms, armhole and side");
        }
        return Optional.of(
                new Open(
                        "what the edges " + String.join(", ", names) + " serve",
                        (isLong || isRound
                                        ? (isLong ? "how far round" : "how long")
                                        : "how long and how far round")
                                + " it will be: no such measure of the pieces is shown, and the"
                                + " ease is not held against them",
                        "Write under `pattern` what they serve, as in `meaning: {"
                                + Quoted.of(names.get(0))
                                + ": …}`. "
                                + brings.stream()
                                        .map(Sentence::capital)
                                        .collect(Collectors.joining(". ", "", "."))));
    }

    /** The names of edges of drawn pieces of which nothing is known, rectangles left out. */
    private List<String> unknown() {
        Set<String> names = new TreeSet<>();
        result.pieces().stream()
                .filter(piece -> piece.cuts().containsKey(Role.MAIN))
                .filter(piece -> piece.shape().asDrawn().isPresent())
                .forEach(
                        piece -> {
                            names.addAll(piece.shape().edgeNames());
                            piece.fold().ifPresent(names::remove);
                        });
        names.removeIf(name -> meanings().isKnown(List.of(name)));
        names.removeAll(OF_RECTANGLES);
        return List.copyOf(names);
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
