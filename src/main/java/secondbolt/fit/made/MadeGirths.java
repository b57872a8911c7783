package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

/**
 * How far round the garment goes at its waist, hem and wrist, and at a bust or hip of which every
 * piece tells how far down it lies; round one limb where pieces go round a limb. Pieces sewn to one
 * another down their length go round together.
 *
 * @param result the pattern, altered
 */
record MadeGirths(FitResult result) {
    private static final List<Serves> ROUND = List.of(Serves.WAIST, Serves.HEM, Serves.WRIST);
    private static final List<Serves> LEVELS = List.of(Serves.BUST, Serves.HIP);

    List<Made> all() {
        List<Made> all = new ArrayList<>();
        for (Set<String> round : rounds()) {
            for (Serves serves : ROUND) {
                edges(round, serves).ifPresent(all::add);
            }
            for (Serves serves : LEVELS) {
                level(round, serves).ifPresent(all::add);
            }
        }
        return all;
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
                || pattern().meanings().has(piece, Serves.WAIST)
                || Limb.of(piece, pattern().meanings()).isPresent();
    }

    private Optional<Made> edges(Set<String> round, Serves serves) {
        List<EdgeSum.Term> terms = new ArrayList<>();
        for (String name : round) {
            Piece piece = pattern().find(name).orElseThrow();
            SewnPiece sewn = new SewnPiece(piece, pattern());
            sewn.edges()
                    .filter(edge -> sewn.serves(edge, serves))
                    .filter(edge -> serves == Serves.HEM || !sewn.serves(edge, Serves.HEM))
                    .map(edge -> new PieceEdge(name, edge))
                    .filter(edge -> !isGathered(edge))
                    .forEach(e -> terms.add(new EdgeSum.Term(piece.timesRoundTheBody(), e)));
        }
        return terms.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Made(
                                words(serves, terms, round),
                                Optional.of(serves),
                                each(result.before(), terms, round),
                                each(result.after(), terms, round)));
    }

    /** What is gathered in is not as far round as it is drawn. */
    private boolean isGathered(PieceEdge edge) {
        return pattern().seams().stream()
                .filter(Seam::isGathered)
                .anyMatch(seam -> seam.first().value().pieceEdges().contains(edge));
    }

    private Length each(Lengths lengths, List<EdgeSum.Term> terms, Set<String> round) {
        Length all = lengths.of(new EdgeSum(terms));
        return Limb.of(round, pattern()).isPresent() && !isRoundTheBody(terms)
                ? Limb.each(all, round, pattern())
                : all;
    }

    /** A pair of trousers has one waist. */
    private boolean isRoundTheBody(List<EdgeSum.Term> terms) {
        return terms.stream()
                .anyMatch(
                        t -> pattern().meanings().serves(t.piece(), t.edge().edge(), Serves.WAIST));
    }

    private String words(Serves serves, List<EdgeSum.Term> terms, Set<String> round) {
        Set<String> pieces = new LinkedHashSet<>();
        terms.forEach(term -> pieces.add(term.piece()));
        boolean ofEach =
                Limb.of(round, pattern()).isPresent()
                        && !isRoundTheBody(terms)
                        && Limb.count(round, pattern()) > 1;
        return "round the "
                + serves.word()
                + (ofEach ? " of each " : " of ")
                + String.join(", ", pieces);
    }

    private Optional<Made> level(Set<String> round, Serves serves) {
        double beforeMm = 0;
        double afterMm = 0;
        for (String name : round) {
            Piece drawn = pattern().find(name).orElseThrow();
            Piece altered = result.find(name).orElseThrow();
            Optional<String> line =
                    drawn.lines().keySet().stream().filter(l -> isLevel(l, serves)).findFirst();
            if (line.isEmpty()
                    || Limb.of(drawn, pattern().meanings()).equals(Optional.of(Limb.SLEEVE))) {
                return Optional.empty();
            }
            beforeMm += drawn.timesRoundTheBody() * widthMm(drawn, line.get());
            afterMm += drawn.timesRoundTheBody() * widthMm(altered, line.get());
        }
        return Optional.of(
                new Made(
                        "round the " + serves.word() + " of " + String.join(", ", round),
                        Optional.of(serves),
                        Length.ofComputedMillimetres(beforeMm),
                        Length.ofComputedMillimetres(afterMm)));
    }

    private boolean isLevel(String line, Serves serves) {
        return pattern().meanings().line(line).filter(m -> m.serves() == serves).isPresent();
    }

    private double widthMm(Piece piece, String line) {
        double topMm = piece.shape().asDrawn().orElseThrow().box().topMm();
        return new SewnPiece(piece, pattern())
                .widthMm(topMm + piece.lines().get(line).millimetres());
    }
}
