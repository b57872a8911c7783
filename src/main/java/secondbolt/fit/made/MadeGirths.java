package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import secondbolt.closure.placket.DrawnLaps;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.seam.Lengths;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.FinishedMeasure;

/**
 * How far round the garment goes at its waist, hem and wrist, at a bust, waist or hip of which
 * every piece tells how far down it lies, and at the underarm; round one limb where pieces go round
 * a limb. Pieces sewn to one another down their length go round together.
 *
 * @param result the pattern, altered
 * @param laps what lies double where it closes
 */
record MadeGirths(FitResult result, DrawnLaps laps) {
    private static final List<Serves> ROUND = List.of(Serves.WAIST, Serves.HEM, Serves.WRIST);
    private static final List<Serves> LEVELS = List.of(Serves.BUST, Serves.WAIST, Serves.HIP);

    private static final Map<Serves, BodyMeasure> MEASURES =
            Map.of(
                    Serves.WAIST, BodyMeasure.WAIST,
                    Serves.WRIST, BodyMeasure.WRIST,
                    Serves.BUST, BodyMeasure.BUST,
                    Serves.HIP, BodyMeasure.HIP);

    /** A cuff goes round the wrist, not the edge that is sewn to it. */
    private static final Optional<BodyMeasure> WRIST = Optional.of(BodyMeasure.WRIST);

    private static final Optional<Limb> SLEEVE = Optional.of(Limb.SLEEVE);

    List<Made> all() {
        List<Made> all = new ArrayList<>();
        Rounds rounds = new Rounds(pattern(), result.before());
        for (Set<String> round : rounds.all()) {
            List<Made> own = new ArrayList<>();
            upperEdges(round).ifPresent(own::add);
            for (Serves serves : ROUND) {
                edges(round, serves).ifPresent(own::add);
            }
            for (Serves serves : LEVELS) {
                if (own.stream().noneMatch(made -> made.tells(MEASURES.get(serves)))) {
                    level(round, serves)
                            .filter(made -> own.stream().noneMatch(o -> isAlike(o, made)))
                            .ifPresent(own::add);
                }
            }
            if (own.stream().noneMatch(made -> made.tells(BodyMeasure.BUST))) {
                underarm(round).ifPresent(own::add);
            }
            if (own.isEmpty()) {
                lowerEdges(round, rounds).ifPresent(own::add);
            }
            all.addAll(own);
        }
        return all;
    }

    /** A waist edge that does not close is told, and then no line at its height. */
    private static boolean isAlike(Made one, Made other) {
        return one.what().equals(other.what());
    }

    private Pattern pattern() {
        return result.pattern();
    }

    private Optional<Made> edges(Set<String> round, Serves serves) {
        return edges(
                round,
                (sewn, edge) ->
                        serves == Serves.HEM
                                ? LowerEdge.hems(sewn).contains(edge)
                                : sewn.serves(edge, serves) && !sewn.serves(edge, Serves.HEM),
                serves.word(),
                Optional.ofNullable(MEASURES.get(serves)));
    }

    /** What is called waist and lies elsewhere, as at the neck of a cape. */
    private Optional<Made> upperEdges(Set<String> round) {
        return edges(
                round,
                (sewn, edge) -> new CalledWaist(sewn.piece(), pattern()).isElsewhere(edge),
                "upper edge",
                Optional.empty());
    }

    /** Where nothing says what the edges serve, as of a tier between two others. */
    private Optional<Made> lowerEdges(Set<String> round, Rounds rounds) {
        boolean isRound = round.size() > 1 || rounds.isSewnToItself(round.iterator().next());
        return isRound
                ? edges(round, MadeGirths::isLowest, "lower edge", Optional.empty())
                : Optional.empty();
    }

    private static boolean isLowest(SewnPiece piece, String edge) {
        return !piece.isDown(edge)
                && piece.edges()
                        .filter(e -> !piece.isDown(e))
                        .allMatch(e -> piece.bottomMm(e) <= piece.bottomMm(edge));
    }

    private Optional<Made> edges(
            Set<String> round,
            BiPredicate<SewnPiece, String> isThere,
            String word,
            Optional<BodyMeasure> measure) {
        List<EdgeSum.Term> terms = new ArrayList<>();
        for (String name : round) {
            Piece piece = pattern().find(name).orElseThrow();
            SewnPiece sewn = new SewnPiece(piece, pattern());
            sewn.edges()
                    .filter(edge -> isThere.test(sewn, edge))
                    .map(edge -> new PieceEdge(name, edge))
                    .filter(edge -> !isGathered(edge))
                    .forEach(e -> terms.add(new EdgeSum.Term(piece.timesRoundTheBody(), e)));
        }
        if (terms.isEmpty()) {
            return Optional.empty();
        }
        Set<String> pieces = new LinkedHashSet<>();
        terms.forEach(term -> pieces.add(term.piece()));
        // A godet goes round at the hem and does not reach the waist: there its panels meet.
        RoundEnds ends = new RoundEnds(pattern(), pieces, laps);
        for (EdgeSum.Term term : terms) {
            Piece piece = pattern().find(term.piece()).orElseThrow();
            ends.beside(new SewnPiece(piece, pattern()), term.edge().edge());
        }
        boolean isEnd = terms.stream().noneMatch(term -> isSewn(term.edge()));
        boolean counts = ends.areClosed() && (isEnd || !measure.equals(WRIST));
        boolean isLimb = Limb.of(round, pattern()).isPresent() && !isRoundTheBody(terms);
        Length ofBands = ends.lapOfBands();
        boolean isBand = ofBands.isPositive();
        Length all = isBand ? ofBands : ends.over();
        Length over = isLimb ? Limb.each(all, round, pattern()) : all;
        return Optional.of(
                new Made(
                        words(word, isLimb, pieces) + (isBand ? ", less its lap" : ends.words()),
                        measure.filter(m -> counts).stream()
                                .map(FinishedMeasure.class::cast)
                                .toList(),
                        each(result.before(), terms, isLimb, round).minus(over),
                        each(result.after(), terms, isLimb, round).minus(over),
                        isBand ? List.of() : ends.meeting()));
    }

    private boolean isSewn(PieceEdge edge) {
        return pattern().seams().stream().anyMatch(seam -> seam.edges().contains(edge));
    }

    /** What is gathered in is not as far round as it is drawn. */
    private boolean isGathered(PieceEdge edge) {
        return pattern().seams().stream()
                .filter(Seam::isGathered)
                .anyMatch(seam -> seam.first().value().pieceEdges().contains(edge));
    }

    private Length each(
            Lengths lengths, List<EdgeSum.Term> terms, boolean isLimb, Set<String> round) {
        Length all = lengths.of(new EdgeSum(terms));
        return isLimb ? Limb.each(all, round, pattern()) : all;
    }

    /** A pair of trousers has one waist. */
    private boolean isRoundTheBody(List<EdgeSum.Term> terms) {
        return terms.stream()
                .anyMatch(
                        t -> pattern().meanings().serves(t.piece(), t.edge().edge(), Serves.WAIST));
    }

    private String words(String word, boolean isLimb, Set<String> pieces) {
        boolean ofEach = isLimb && Limb.count(pieces, pattern()) > 1;
        return "round the " + word + (ofEach ? " of each " : " of ") + String.join(", ", pieces);
    }

    /** Where a line tells on every piece how far down it lies; none on a sleeve. */
    private Optional<Made> level(Set<String> round, Serves serves) {
        return across(
                round,
                "the " + serves.word(),
                MEASURES.get(serves),
                pieces -> {
                    Map<String, Double> levels = new LinkedHashMap<>();
                    pieces.forEach(
                            piece ->
                                    lineMm(piece.piece(), serves)
                                            .ifPresent(y -> levels.put(piece.piece().name(), y)));
                    return levels;
                });
    }

    private Optional<Double> lineMm(Piece piece, Serves serves) {
        double topMm = piece.shape().asDrawn().orElseThrow().box().topMm();
        return piece.lines().keySet().stream()
                .filter(line -> isLevel(line, serves))
                .findFirst()
                .map(line -> topMm + piece.lines().get(line).millimetres());
    }

    /**
     * At the lowest point of the armholes: where the finished bust or chest is measured. Common
     * practice, no source.
     */
    private Optional<Made> underarm(Set<String> round) {
        return across(
                round,
                "the bust, at the underarm,",
                BodyMeasure.BUST,
                new UnderarmLevels(pattern())::of);
    }

    private Optional<Made> across(
            Set<String> round,
            String words,
            BodyMeasure measure,
            Function<List<SewnPiece>, Map<String, Double>> levels) {
        List<SewnPiece> before = sewn(round, name -> pattern().find(name));
        List<SewnPiece> after = sewn(round, result::find);
        Map<String, Double> drawnMm = levels.apply(before);
        Map<String, Double> alteredMm = levels.apply(after);
        if (!drawnMm.keySet().containsAll(round)
                || !alteredMm.keySet().containsAll(round)
                || before.stream().anyMatch(this::isSleeve)) {
            return Optional.empty();
        }
        double beforeMm = 0;
        double afterMm = 0;
        RoundEnds ends = new RoundEnds(pattern(), round, laps);
        for (int i = 0; i < before.size(); i++) {
            String name = before.get(i).piece().name();
            SewnPiece.Level there = before.get(i).level(drawnMm.get(name));
            ends.at(before.get(i), there.left());
            ends.at(before.get(i), there.right());
            int times = before.get(i).piece().timesRoundTheBody();
            beforeMm += times * there.mm();
            afterMm += times * after.get(i).level(alteredMm.get(name)).mm();
        }
        return Optional.of(
                new Made(
                        "round " + words + " of " + String.join(", ", round) + ends.words(),
                        ends.areClosed() ? List.of(measure) : List.of(),
                        Length.ofComputedMillimetres(beforeMm).minus(ends.over()),
                        Length.ofComputedMillimetres(afterMm).minus(ends.over()),
                        ends.meeting()));
    }

    private List<SewnPiece> sewn(Set<String> round, Function<String, Optional<Piece>> find) {
        return round.stream()
                .map(name -> new SewnPiece(find.apply(name).orElseThrow(), pattern()))
                .toList();
    }

    private boolean isSleeve(SewnPiece piece) {
        return Limb.of(piece.piece(), pattern().meanings()).equals(SLEEVE);
    }

    private boolean isLevel(String line, Serves serves) {
        return pattern().meanings().line(line).filter(m -> m.serves() == serves).isPresent();
    }
}
