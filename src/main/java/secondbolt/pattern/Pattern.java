package secondbolt.pattern;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.wearer.PatternSizes;

/**
 * A paper pattern, as the maker wrote it.
 *
 * @param rights whose it is
 * @param sizes what it says of its sizes
 * @param allowance the seam allowance, if told
 * @param pieces in her order
 * @param seams what is joined to what
 * @param openings what must let the body through
 * @param meanings what its edges and lines serve
 */
public record Pattern(
        Rights rights,
        PatternSizes sizes,
        Optional<Allowance> allowance,
        List<Piece> pieces,
        List<Seam> seams,
        List<Opening> openings,
        Meanings meanings) {
    /** Copies the lists. */
    public Pattern {
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        openings = List.copyOf(openings);
    }

    /** Whose pattern it is. */
    public enum Rights {
        /** Drafted or traced by herself. */
        MINE("mine"),
        /** Bought: its outlines are not for others. */
        BOUGHT("bought"),
        /** Not known. */
        UNKNOWN("unknown");

        private final String word;

        Rights(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /**
     * The pattern's seam allowance.
     *
     * @param of how wide
     * @param isIncluded whether the outlines as written include it
     */
    public record Allowance(Length of, boolean isIncluded) {}

    /** The same pattern with other pieces. */
    public Pattern with(List<Piece> newPieces) {
        return new Pattern(rights, sizes, allowance, newPieces, seams, openings, meanings);
    }

    /** The same pattern, in which these edges are known to be turned up as hems. */
    public Pattern withTurned(Set<PieceEdge> turned) {
        return new Pattern(
                rights, sizes, allowance, pieces, seams, openings, meanings.withTurned(turned));
    }

    /** The piece of this name, if there is one. */
    public Optional<Piece> find(String name) {
        return pieces.stream().filter(piece -> piece.name().equals(name)).findFirst();
    }
}
