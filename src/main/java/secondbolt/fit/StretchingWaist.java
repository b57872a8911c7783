package secondbolt.fit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.pattern.Bulge;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.EdgeLine;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * A waist edge that lies on the bias, as that of a circular skirt does, and stretches as it is
 * handled.
 *
 * <p>Source: The New Dressmaker, 1921, "Hanging a circular skirt": a circular skirt, being cut on
 * the bias, will always stretch more or less; it hangs two or three days before its lower edge is
 * turned up. Stay stitching: Indian Agricultural Statistics Research Institute, e-course of 2011:
 * on curved seams, just inside the seam line, as soon as the curved edge is cut.
 *
 * @param piece whose waist it is
 * @param edge the waist edge
 * @param turnsDegrees how far the edge turns from end to end, both halves of a piece on the fold
 *     together; 0 or more
 */
record StretchingWaist(Piece piece, String edge, long turnsDegrees) {
    private static final List<String> SOURCES =
            List.of(
                    Convention.COMMON_PRACTICE
                            + ": a quarter tried first, and the waist measured again for its band",
                    "Indian Agricultural Statistics Research Institute, e-course, 2011: the"
                            + " stay-stitching");

    private static final List<String> HANGING =
            List.of(
                    "a machine maker's how-to: hanging for a day",
                    "The New Dressmaker, 1921: hanging for two or three days with some weight");

    /**
     * Derived: an edge that turns by half a right angle and has one end on a thread is on the true
     * bias at its other; wherever it lies, some of it is 22 degrees or more off the thread.
     */
    private static final double STRONGLY_CURVED_DEGREES = 45 - 1e-6;

    /** Directions are compared from spot to spot, so that a turn past half a circle counts. */
    private static final int SPOTS = 48;

    /** The waist edges of a pattern, altered, that stretch. */
    static List<StretchingWaist> in(FitResult result) {
        Meanings meanings = result.pattern().meanings();
        return result.pieces().stream().flatMap(piece -> in(piece, meanings)).toList();
    }

    private static Stream<StretchingWaist> in(Piece piece, Meanings meanings) {
        return piece.shape().asDrawn().stream()
                .flatMap(drawn -> drawn.edges().stream())
                .filter(edge -> meanings.serves(piece.name(), edge.name(), Serves.WAIST))
                .flatMap(edge -> of(piece, edge).stream());
    }

    private static Optional<StretchingWaist> of(Piece piece, NamedEdge edge) {
        double turns = turnsDegrees(edge.line()) * (piece.fold().isPresent() ? 2 : 1);
        boolean stretches = turns >= STRONGLY_CURVED_DEGREES || piece.grain() == Piece.Grain.BIAS;
        return stretches
                ? Optional.of(new StretchingWaist(piece, edge.name(), Math.round(turns)))
                : Optional.empty();
    }

    private static double turnsDegrees(EdgeLine line) {
        double turned = 0;
        double before = directionRadians(line, 0);
        for (int i = 1; i <= SPOTS; i++) {
            double now = directionRadians(line, line.lengthMm() * i / SPOTS);
            turned += Math.IEEEremainder(now - before, 2 * Math.PI);
            before = now;
        }
        return Math.toDegrees(Math.abs(turned));
    }

    private static double directionRadians(EdgeLine line, double alongMm) {
        return StrictMath.atan2(line.directionAt(alongMm).yMm(), line.directionAt(alongMm).xMm());
    }

    /** The advice on it, quietly: nothing is wrong with such a skirt. */
    Finding finding(Pattern pattern) {
        String lies =
                piece.grain() == Piece.Grain.BIAS
                        ? " is cut on the bias"
                        : " turns by " + turnsDegrees + "°, so part of it lies on the bias";
        Finding found =
                new Finding(
                        "waist-stretches",
                        new Subject.Piece(piece.name()),
                        Level.NOTE,
                        "The "
                                + edge
                                + " of "
                                + piece.name()
                                + lies
                                + ", where cloth stretches as it is handled (The New Dressmaker, 1921).",
                        "Try a quarter of it first in scrap or an old sheet and measure that. Stay-stitch"
                                + " the edge just inside its seam allowance as soon as it is cut."
                                + band(pattern)
                                + hem(pattern.meanings()));
        return found.citing(
                hasAHem(pattern.meanings())
                        ? Stream.concat(SOURCES.stream(), HANGING.stream()).toList()
                        : SOURCES);
    }

    private String band(Pattern pattern) {
        Set<String> bands = new LinkedHashSet<>();
        for (Seam seam : pattern.seams()) {
            if (!seam.isGathered()) {
                joined(seam.first().value(), seam.second().value(), pattern).forEach(bands::add);
                joined(seam.second().value(), seam.first().value(), pattern).forEach(bands::add);
            }
        }
        return bands.isEmpty()
                ? ""
                : " Measure it again then, before you cut "
                        + String.join(" and ", bands)
                        + " to length.";
    }

    /** The straight bands that one side of a join is, if this waist is on the other. */
    private Stream<String> joined(EdgeSum mine, EdgeSum other, Pattern pattern) {
        boolean isHere =
                mine.terms().stream()
                        .anyMatch(t -> t.edge().equals(new PieceEdge(piece.name(), edge)));
        return isHere
                ? other.terms().stream().map(EdgeSum.Term::piece).filter(p -> isBand(p, pattern))
                : Stream.empty();
    }

    /** Straight on all sides, or called so: what it is sewn to decides its length. */
    private static boolean isBand(String name, Pattern pattern) {
        boolean isStraight = pattern.find(name).filter(Bulge::isStraightAllRound).isPresent();
        return isStraight || name.contains("band");
    }

    private String hem(Meanings meanings) {
        return hasAHem(meanings)
                ? " Let it hang before its hem is levelled: a day at least, or two or three with"
                        + " some weight at the edge; `hang` under `hems` says how long."
                : "";
    }

    private boolean hasAHem(Meanings meanings) {
        return meanings.has(piece, Serves.HEM);
    }
}
