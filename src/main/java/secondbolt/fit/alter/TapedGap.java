package secondbolt.fit.alter;

import java.util.ArrayList;
import java.util.List;
import secondbolt.garment.PieceEdge;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * A line of a piece known by tape that is really moved, and of which the maker does not say which
 * edges it crosses.
 *
 * @param piece as written
 * @param name the line's
 * @param line what is taken, and what is open
 */
public record TapedGap(Piece piece, String name, TapedLine line) {
    /** The lines of all pieces for which something is not told. */
    public static List<TapedGap> of(Pattern pattern, List<Alteration.Lengthen> lengthens) {
        List<TapedGap> gaps = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            TapedLine.moved(piece, lengthens, pattern.meanings())
                    .forEach(
                            (name, line) -> {
                                if (!line.isTold()) {
                                    gaps.add(new TapedGap(piece, name, line));
                                }
                            });
        }
        return gaps;
    }

    /** Whether it is because of this line that an edge's length is open. */
    public boolean concerns(PieceEdge edge) {
        return piece.name().equals(edge.piece()) && line.open().contains(edge.edge());
    }
}
