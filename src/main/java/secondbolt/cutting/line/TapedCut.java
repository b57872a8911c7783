package secondbolt.cutting.line;

import java.util.Optional;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Box;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;

/**
 * A piece known by tape as it is cut: its box with what its edges are allowed.
 *
 * @param piece after the alterations
 * @param half what is cut as taped: all of it, or the half beside the fold
 * @param fold where it lies on the fold, if it is taped half
 * @param whole all of it, opened out
 */
public record TapedCut(Piece piece, Outline half, Optional<EdgeLine> fold, Box whole) {}
