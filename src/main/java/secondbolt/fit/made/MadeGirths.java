package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.seam.Lengths;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
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
 */
record MadeGirths(FitResult result) {
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
        for (Set<String> round : rounds()) {
            List<Made> own = new ArrayList<>();
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
                lowerEdges(round).ifPresent(own::add);
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

    private List<Set<String>> rounds() {
        List<Set<String>> rounds = new ArrayList<>();
        pattern().pieces().stream()
                .filter(piece -> piece.cuts().containsKey(Role.MAIN))
                .filter(piece -> piece.shape().asDrawn().isPresent())
                .forEach(piece -> rounds.add(new LinkedHashSet<>(Set.of(piece.name()))));
        for (Seam seam : pattern().seams()) {
            if (goesRound(seam.first().value()) && goesRound(seam.second().value())) {
                Set<String> joined = new LinkedHashSet<>();
                seam.edges().forEach(edge -> joined.add(edge.piece()));
                join(joined, rounds);
            }
        }
        rounds.removeIf(round -> !isWhole(round));
        return rounds;
    }

    private static void join(Set<String> joined, List<Set<String>> rounds) {
        List<Set<String>> met =
                rounds.stream().filter(r -> r.stream().anyMatch(joined::contains)).toList();
        if (met.size() > 1) {
            Set<String> all = met.get(0);
            met.subList(1, met.size()).forEach(all::addAll);
            rounds.removeIf(round -> round != all && all.containsAll(round));
        }
    }

    private boolean goesRound(EdgeSum side) {
        return side.pieceEdges().stream().allMatch(this::goesRound);
    }

    /** Sewn there, pieces go on round the body; at a centre front lie bands and facings. */
    private boolean goesRound(PieceEdge edge) {
        return pattern()
                .meanings()
                .edge(edge.piece(), edge.edge())
                .map(m -> m.serves().isLengthwise() && m.serves() != Serves.CENTRE_FRONT)
                .orElseGet(() -> edge.edge().equals("left") || edge.edge().equals("right"));
    }

    /** A piece by itself, which no seam ties to others that go round: not a facing or a band. */
    private boolean isWhole(Set<String> round) {
        Piece piece = pattern().find(round.iterator().next()).orElseThrow();
        boolean isSewn =
                pattern().seams().stream()
                        .flatMap(seam -> seam.edges().stream())
                        .anyMatch(edge -> edge.piece().equals(piece.name()));
        return round.size() > 1
                || !isSewn
                || isSewnToItself(piece.name())
                || pattern().meanings().has(piece, Serves.WAIST)
                || Limb.of(piece, pattern().meanings()).isPresent();
    }

    /** Its two sides are sewn to each other: a tier, a tube, a gore cut several times. */
    private boolean isSewnToItself(String piece) {
        return pattern().seams().stream()
                .filter(s -> goesRound(s.first().value()) && goesRound(s.second().value()))
                .anyMatch(s -> s.edges().stream().allMatch(e -> e.piece().equals(piece)));
    }

    private Optional<Made> edges(Set<String> round, Serves serves) {
        return edges(
                round,
                (sewn, edge) ->
                        sewn.serves(edge, serves)
                                && (serves == Serves.HEM || !sewn.serves(edge, Serves.HEM)),
                serves.word(),
                Optional.ofNullable(MEASURES.get(serves)));
    }

    /** Where nothing says what the edges serve, as of a tier between two others. */
    private Optional<Made> lowerEdges(Set<String> round) {
        boolean isRound = round.size() > 1 || isSewnToItself(round.iterator().next());
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
        RoundEnds ends = new RoundEnds(pattern(), round);
        for (String name : round) {
            Piece piece = pattern().find(name).orElseThrow();
            SewnPiece sewn = new SewnPiece(piece, pattern());
            List<PieceEdge> there =
                    sewn.edges()
                            .filter(edge -> isThere.test(sewn, edge))
                            .map(edge -> new PieceEdge(name, edge))
                            .filter(edge -> !isGathered(edge))
                            .toList();
            there.forEach(e -> terms.add(new EdgeSum.Term(piece.timesRoundTheBody(), e)));
            there.forEach(e -> ends.beside(sewn, e.edge()));
        }
        if (terms.isEmpty()) {
            return Optional.empty();
        }
        Set<String> pieces = new LinkedHashSet<>();
        terms.forEach(term -> pieces.add(term.piece()));
        boolean isEnd = terms.stream().noneMatch(term -> isSewn(term.edge()));
        boolean isWhole = pieces.containsAll(round);
        boolean counts = ends.areClosed() && isWhole && (isEnd || !measure.equals(WRIST));
        boolean isLimb = Limb.of(round, pattern()).isPresent() && !isRoundTheBody(terms);
        return Optional.of(
                new Made(
                        words(word, isLimb, pieces) + ends.words(),
                        measure.filter(m -> counts).stream()
                                .map(FinishedMeasure.class::cast)
                                .toList(),
                        each(result.before(), terms, isLimb, round),
                        each(result.after(), terms, isLimb, round),
                        ends.meeting()));
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
                piece -> {
                    double topMm = piece.piece().shape().asDrawn().orElseThrow().box().topMm();
                    return piece.piece().lines().keySet().stream()
                            .filter(line -> isLevel(line, serves))
                            .findFirst()
                            .map(l -> topMm + piece.piece().lines().get(l).millimetres());
                });
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
                piece -> piece.edge(Serves.ARMHOLE).map(piece::bottomMm));
    }

    private Optional<Made> across(
            Set<String> round,
            String words,
            BodyMeasure measure,
            Function<SewnPiece, Optional<Double>> level) {
        double beforeMm = 0;
        double afterMm = 0;
        RoundEnds ends = new RoundEnds(pattern(), round);
        for (String name : round) {
            SewnPiece drawn = new SewnPiece(pattern().find(name).orElseThrow(), pattern());
            SewnPiece altered = new SewnPiece(result.find(name).orElseThrow(), pattern());
            Optional<Double> yMm = level.apply(drawn);
            Optional<Double> nowMm = level.apply(altered);
            if (yMm.isEmpty()
                    || nowMm.isEmpty()
                    || Limb.of(drawn.piece(), pattern().meanings()).equals(SLEEVE)) {
                return Optional.empty();
            }
            SewnPiece.Level there = drawn.level(yMm.get());
            ends.at(drawn, there.left());
            ends.at(drawn, there.right());
            beforeMm += drawn.piece().timesRoundTheBody() * there.mm();
            afterMm += drawn.piece().timesRoundTheBody() * altered.level(nowMm.get()).mm();
        }
        return Optional.of(
                new Made(
                        "round " + words + " of " + String.join(", ", round) + ends.words(),
                        ends.areClosed() ? List.of(measure) : List.of(),
                        Length.ofComputedMillimetres(beforeMm),
                        Length.ofComputedMillimetres(afterMm),
                        ends.meeting()));
    }

    private boolean isLevel(String line, Serves serves) {
        return pattern().meanings().line(line).filter(m -> m.serves() == serves).isPresent();
    }
}
