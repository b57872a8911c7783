package secondbolt.fit.result;

import java.util.List;
import java.util.Optional;
import secondbolt.fit.alter.Altered;
import secondbolt.fit.alter.PieceChanges;
import secondbolt.fit.alter.TapedGap;
import secondbolt.fit.cut.CutShapes;
import secondbolt.fit.seam.EdgeStretch;
import secondbolt.fit.seam.Lengths;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * A pattern altered and checked.
 *
 * @param pattern as written
 * @param altered what each alteration came to, in order
 * @param pieces after the alterations
 * @param seams each checked before and after
 * @param before how long its edges were
 * @param after how long they are now
 * @param gaps what the tape does not tell of the lines that are moved
 * @param stretch how far its edges stretch
 * @param cut the shapes that pieces are cut in
 * @param cutSeams those that do not meet with what is cut as it is, beside {@code seams}
 */
public record FitResult(
        Pattern pattern,
        List<Altered> altered,
        List<Piece> pieces,
        List<SeamCheck> seams,
        Lengths before,
        Lengths after,
        List<TapedGap> gaps,
        EdgeStretch stretch,
        CutShapes cut,
        List<SeamCheck> cutSeams) {
    /** Copies the lists. */
    public FitResult {
        altered = List.copyOf(altered);
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        cutSeams = List.copyOf(cutSeams);
        gaps = List.copyOf(gaps);
    }

    /** The alterations as written, in order. */
    public List<Alteration> alterations() {
        return altered.stream().map(Altered::alteration).toList();
    }

    /** What all of them together ask of a piece; if it is cut, what it had. */
    PieceChanges changes(Piece piece) {
        return cut.whole(piece).map(shape -> shape.changes(pattern)).orElseGet(this::changes);
    }

    private PieceChanges changes() {
        return altered.stream().map(Altered::asked).reduce(PieceChanges.NONE, PieceChanges::and);
    }

    /** How long edges are together after the alterations when they are stretched. */
    public Length reach(EdgeSum edges) {
        return stretch.reach(edges, after);
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
        return before.of(edges);
    }

    /**
     * How long edges are together after them, darts and pleats left out.
     *
     * @throws java.util.NoSuchElementException if there is none of that name; {@link FitCheck}
     *     tells
     */
    public Length lengthAfter(EdgeSum edges) {
        return after.of(edges);
    }

    /**
     * The edges of a sum of which it is not known whether the alterations changed them: of a piece
     * known by tape, where the maker has not said which edges a line crosses.
     */
    public List<EdgeSum.Term> open(EdgeSum edges) {
        return after.open(edges);
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
