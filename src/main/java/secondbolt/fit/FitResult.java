package secondbolt.fit;

import java.util.List;
import java.util.Optional;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A pattern altered and checked.
 *
 * @param pattern as written
 * @param alterations as written, in order
 * @param pieces after the alterations
 * @param seams each checked before and after
 * @param followers edges whose length an alteration changed
 */
public record FitResult(
        Pattern pattern,
        List<Alteration> alterations,
        List<Piece> pieces,
        List<SeamCheck> seams,
        List<Follower> followers) {
    /** Copies the lists. */
    public FitResult {
        alterations = List.copyOf(alterations);
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        followers = List.copyOf(followers);
    }

    /**
     * An edge that an alteration changed further down.
     *
     * @param alteration which
     * @param edge what changed
     * @param before its length before this alteration
     * @param after its length after it
     */
    public record Follower(Alteration alteration, PieceEdge edge, Length before, Length after) {}

    /** The same pattern without its alterations. */
    public FitResult unaltered(Tape tape) {
        return FitCalculation.work(pattern, List.of(), tape);
    }

    /** The altered piece of this name, if there is one. */
    public Optional<Piece> find(String name) {
        return pieces.stream().filter(piece -> piece.name().equals(name)).findFirst();
    }

    /**
     * How long edges are together before the alterations, darts and pleats left out.
     *
     * @throws java.util.NoSuchElementException if there is none of that name; {@link FitCheck}
     *     tells
     */
    public Length lengthBefore(EdgeSum edges) {
        return new Lengths(pattern, pattern.pieces()).of(edges);
    }

    /**
     * How long edges are together after them, darts and pleats left out.
     *
     * @throws java.util.NoSuchElementException if there is none of that name; {@link FitCheck}
     *     tells
     */
    public Length lengthAfter(EdgeSum edges) {
        return new Lengths(pattern, pieces).of(edges);
    }

    /**
     * The edges of a sum of which it is not known whether the alterations changed them: of a piece
     * known by tape, where the maker has not said which edges a line crosses.
     */
    public List<EdgeSum.Term> open(EdgeSum edges) {
        return new Lengths(pattern, pieces).open(edges);
    }

    /**
     * What to do about such an edge, as an order.
     *
     * @param edge one of them
     * @param tape to print with
     */
    public String findOut(EdgeSum.Term edge, Tape tape) {
        return TapedGaps.of(this, tape).findOut(List.of(edge));
    }
}
