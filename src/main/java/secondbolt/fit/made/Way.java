package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.fit.seam.Lengths;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * A way down the garment, over one piece after the other where they are sewn together.
 *
 * @param steps from the top
 */
record Way(List<Step> steps) {
    Way {
        steps = List.copyOf(steps);
    }

    /** How a piece is crossed. */
    enum Kind {
        /** From the highest point of an edge straight down. */
        DOWN,
        /** Along an edge. */
        ALONG,
        /** From the middle of an edge square to it. */
        ACROSS,
        /** The same, and half of it, for it is folded in two. */
        FOLDED
    }

    /**
     * Over one piece.
     *
     * @param kind how
     * @param piece which
     * @param from the edge it begins at; the edge itself if it goes along one
     * @param to the edge it ends at
     */
    record Step(Kind kind, String piece, String from, String to) {
        PieceEdge end() {
            return new PieceEdge(piece, to);
        }
    }

    Step last() {
        return steps.get(steps.size() - 1);
    }

    /** The pieces it goes over. */
    Set<String> pieces() {
        Set<String> pieces = new LinkedHashSet<>();
        steps.forEach(step -> pieces.add(step.piece()));
        return pieces;
    }

    /** The same with one step more, below. */
    Way and(Step step) {
        List<Step> longer = new ArrayList<>(steps);
        longer.add(step);
        return new Way(longer);
    }

    /** The same with a step before. */
    Way after(Step step) {
        List<Step> longer = new ArrayList<>(List.of(step));
        longer.addAll(steps);
        return new Way(longer);
    }

    /** The same with one piece folded in two. */
    Way folded(String piece) {
        return new Way(
                steps.stream()
                        .map(
                                step ->
                                        step.piece().equals(piece)
                                                ? new Step(
                                                        Kind.FOLDED, piece, step.from(), step.to())
                                                : step)
                        .toList());
    }

    String pieceWords() {
        return pieces().stream().collect(Collectors.joining(" + "));
    }

    /** How long it is; nothing if a piece does not tell. */
    Optional<Length> length(Function<String, Piece> pieces, Lengths lengths, Pattern pattern) {
        double mm = 0;
        for (Step step : steps) {
            Optional<Double> one = mm(step, pieces.apply(step.piece()), lengths, pattern);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            mm += one.get();
        }
        return Optional.of(Length.ofComputedMillimetres(mm));
    }

    private static Optional<Double> mm(Step step, Piece piece, Lengths lengths, Pattern pattern) {
        SewnPiece sewn = new SewnPiece(piece, pattern);
        return switch (step.kind()) {
            case DOWN -> Optional.of(sewn.downMm(step.from(), step.to()));
            case ALONG ->
                    lengths.edge(new PieceEdge(step.piece(), step.from())).map(Length::millimetres);
            case ACROSS -> acrossMm(step, sewn);
            case FOLDED -> acrossMm(step, sewn).map(mm -> mm / 2);
        };
    }

    private static Optional<Double> acrossMm(Step step, SewnPiece sewn) {
        return sewn.piece()
                .shape()
                .asTaped()
                .map(taped -> LowerEdge.boxMm(sewn.piece(), taped, step.from(), sewn.pattern()))
                .or(() -> sewn.acrossMm(step.from(), step.to()));
    }
}
