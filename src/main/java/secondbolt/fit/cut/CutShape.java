package secondbolt.fit.cut;

import java.util.List;
import java.util.Optional;
import secondbolt.fit.alter.PieceChanges;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * A piece in a shape that copies of it were cut in.
 *
 * @param had the alterations it had; nothing if it is not told and matters
 * @param piece as it was cut; as drawn if that is not told
 * @param copies how many were cut so
 */
public record CutShape(Optional<List<Alteration>> had, Piece piece, int copies) {
    /** Copies the alterations. */
    public CutShape {
        had = had.map(List::copyOf);
    }

    /** Its name. */
    public String name() {
        return piece.name();
    }

    /** Whether it must be asked which alterations it had. */
    public boolean isAsked() {
        return had.isEmpty();
    }

    /** What its alterations ask of a pattern, in order. */
    public PieceChanges changes(Pattern pattern) {
        return changes(had.orElse(List.of()), pattern);
    }

    /** What alterations ask of a pattern, in order. */
    public static PieceChanges changes(List<Alteration> alterations, Pattern pattern) {
        return alterations.stream()
                .map(alteration -> PieceChanges.of(alteration, pattern))
                .reduce(PieceChanges.NONE, PieceChanges::and);
    }
}
