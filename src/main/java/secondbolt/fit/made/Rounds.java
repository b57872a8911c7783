package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
 * Which pieces of the outside go round together: those sewn to one another down their length. What
 * an edge serves tells it; of an edge of which that is not known, that it runs down to the lower
 * edge of its piece.
 *
 * @param pattern the pattern
 * @param drawn how long its edges are as drawn
 */
record Rounds(Pattern pattern, Lengths drawn) {
    /** Smaller than this share of the largest piece, one that no join ties is sewn on flat. */
    private static final double A_PATCH = 0.25;

    /** The names of the pieces, each round by itself, in the order of the pieces. */
    List<Set<String>> all() {
        List<Set<String>> rounds = new ArrayList<>();
        outside().forEach(piece -> rounds.add(new LinkedHashSet<>(Set.of(piece.name()))));
        for (Seam seam : pattern.seams()) {
            if (goesRound(seam) && isKnown(seam)) {
                join(pieces(seam), rounds);
            }
        }
        List<Set<String>> more = new ArrayList<>();
        rounds.forEach(round -> more.add(new LinkedHashSet<>(round)));
        for (Seam seam : pattern.seams()) {
            if (goesRound(seam)) {
                join(pieces(seam), more);
            }
        }
        more.stream()
                .filter(round -> round.size() > 1 && isOnTheBody(round))
                .forEach(round -> join(round, rounds));
        double largestMm2 = outside().stream().mapToDouble(Rounds::boxMm2).max().orElse(0);
        rounds.removeIf(round -> !isWhole(round, largestMm2));
        return rounds;
    }

    private List<Piece> outside() {
        return pattern.pieces().stream()
                .filter(piece -> piece.cuts().containsKey(Role.MAIN))
                .filter(piece -> piece.seen() == Piece.Seen.OUTSIDE)
                .filter(piece -> piece.shape().asDrawn().isPresent())
                .toList();
    }

    private static Set<String> pieces(Seam seam) {
        Set<String> pieces = new LinkedHashSet<>();
        seam.edges().forEach(edge -> pieces.add(edge.piece()));
        return pieces;
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

    private boolean goesRound(Seam seam) {
        return goesRound(seam.first().value())
                && goesRound(seam.second().value())
                && seam.edges().stream().noneMatch(edge -> liesOn(edge, seam));
    }

    private boolean goesRound(EdgeSum side) {
        return side.pieceEdges().stream().allMatch(this::goesRound);
    }

    /** Sewn there, pieces go on round the body; at a centre front lie bands and facings. */
    private boolean goesRound(PieceEdge edge) {
        if (isKnown(edge)) {
            return isOutside(edge.piece());
        }
        return isOutside(edge.piece())
                && pattern.meanings().edge(edge.piece(), edge.edge()).isEmpty()
                && sewn(edge.piece()).runsToTheEnd(edge.edge());
    }

    private boolean isOutside(String name) {
        return outside().stream().anyMatch(piece -> piece.name().equals(name));
    }

    private boolean isKnown(Seam seam) {
        return seam.edges().stream().allMatch(this::isKnown);
    }

    /** Whether its name, or what it serves, tells that it goes down a side. */
    private boolean isKnown(PieceEdge edge) {
        return pattern.meanings()
                .edge(edge.piece(), edge.edge())
                .map(m -> m.serves().isLengthwise() && m.serves() != Serves.CENTRE_FRONT)
                .orElseGet(() -> edge.edge().equals("left") || edge.edge().equals("right"));
    }

    private SewnPiece sewn(String piece) {
        return new SewnPiece(pattern.find(piece).orElseThrow(), pattern);
    }

    /**
     * A facing, a band or a pocket lies on what goes round: its other side ends free or is sewn to
     * the lining alone, and it is less than half as wide below as what it is sewn to, or that goes
     * on round by another seam.
     */
    private boolean liesOn(PieceEdge edge, Seam seam) {
        if (pieces(seam).size() == 1 || !hasAFreeSide(edge)) {
            return false;
        }
        for (PieceEdge other : seam.edges()) {
            if (!other.piece().equals(edge.piece())) {
                boolean isTakenTwice = seamsAt(other).stream().anyMatch(s -> !s.equals(seam));
                boolean isNarrow =
                        below(edge).times(2).compareTo(below(other)) < 0
                                && (!isKnown(edge) || isCentreBack(edge));
                if (isTakenTwice || isNarrow) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Two backs meet there, each the other's mirror image; what else is sewn on is a facing. */
    private boolean isCentreBack(PieceEdge edge) {
        return pattern.meanings()
                .edge(edge.piece(), edge.edge())
                .filter(m -> m.serves() == Serves.CENTRE_BACK)
                .isPresent();
    }

    private boolean hasAFreeSide(PieceEdge edge) {
        SewnPiece piece = sewn(edge.piece());
        return LowerEdge.across(piece).stream()
                .flatMap(lower -> piece.edges().filter(e -> piece.meet(e, lower)))
                .filter(piece::isDown)
                .filter(e -> !e.equals(edge.edge()) && !piece.isFold(e))
                .map(e -> new PieceEdge(edge.piece(), e))
                .anyMatch(e -> !isNamed(e) && seamsAt(e).stream().noneMatch(this::isOfTheOutside));
    }

    private boolean isOfTheOutside(Seam seam) {
        return pieces(seam).stream().allMatch(this::isOutside);
    }

    private boolean isNamed(PieceEdge edge) {
        return pattern.meanings().edge(edge.piece(), edge.edge()).isPresent();
    }

    private Length below(PieceEdge edge) {
        return LowerEdge.across(sewn(edge.piece())).stream()
                .map(e -> drawn.edge(new PieceEdge(edge.piece(), e)).orElse(Length.ZERO))
                .reduce(Length.ZERO, Length::plus);
    }

    private List<Seam> seamsAt(PieceEdge edge) {
        return pattern.seams().stream().filter(seam -> seam.edges().contains(edge)).toList();
    }

    /**
     * A pair of legs of which nothing tells what is the crotch would be taken for one body: so a
     * side that is known must be there, a piece on the fold or cut once, or nothing but pieces of
     * two sides.
     */
    private boolean isOnTheBody(Set<String> round) {
        return pattern.seams().stream()
                        .filter(seam -> isKnown(seam) && goesRound(seam))
                        .anyMatch(seam -> round.containsAll(pieces(seam)))
                || round.stream()
                        .map(name -> pattern.find(name).orElseThrow())
                        .anyMatch(p -> p.fold().isPresent() || p.timesRoundTheBody() == 1)
                || round.stream()
                        .map(this::sewn)
                        .allMatch(p -> p.edges().filter(p::isDown).count() <= 2);
    }

    /** A piece by itself, which no seam ties to others that go round: not a facing or a band. */
    private boolean isWhole(Set<String> round, double largestMm2) {
        String name = round.iterator().next();
        Piece piece = pattern.find(name).orElseThrow();
        boolean isSewn =
                pattern.seams().stream()
                        .flatMap(seam -> seam.edges().stream())
                        .anyMatch(edge -> edge.piece().equals(name));
        return round.size() > 1
                || (!isSewn && !isAPatch(piece, largestMm2))
                || isSewnToItself(name)
                || pattern.meanings().has(piece, Serves.WAIST)
                || Limb.of(piece, pattern.meanings()).isPresent();
    }

    /** A pocket that no join tells of; common practice, no source. */
    private static boolean isAPatch(Piece piece, double largestMm2) {
        return boxMm2(piece) < A_PATCH * largestMm2;
    }

    private static double boxMm2(Piece piece) {
        var box = piece.shape().asDrawn().orElseThrow().box();
        return box.widthMm() * box.heightMm() * (piece.fold().isPresent() ? 2 : 1);
    }

    /**
     * Its two sides are sewn to each other: a tier, a tube, a gore cut several times. Of mirror
     * images each closes by itself, as a sleeve does.
     */
    boolean isSewnToItself(String piece) {
        boolean isPair =
                pattern.find(piece).orElseThrow().cuts().values().stream()
                        .anyMatch(Piece.Cut::mirrored);
        return pattern.seams().stream()
                .filter(this::goesRound)
                .filter(seam -> isKnown(seam) || (!isPair && seam.edges().size() > 1))
                .anyMatch(s -> s.edges().stream().allMatch(e -> e.piece().equals(piece)));
    }
}
