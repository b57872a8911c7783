package secondbolt.hem.turned;

import java.util.Optional;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Point;
import secondbolt.shape.cut.TurnedEdge;

/**
 * One edge of a hem, after the alterations.
 *
 * @param edge which
 * @param piece it belongs to, altered
 * @param fold how long its fold is, as drawn, once
 * @param turned how it comes out turned up by the depth, if it is drawn and the depth is told
 * @param handling what is done with it
 * @param ends what lies at both ends of it
 * @param isIncluded whether the outline includes the allowance, so that the fold lies inside it
 */
public record HemEdge(
        PieceEdge edge,
        Piece piece,
        Length fold,
        Optional<TurnedEdge> turned,
        Handling handling,
        Ends ends,
        boolean isIncluded) {
    /**
     * The edges it meets.
     *
     * @param start at the start of its drawn line
     * @param end at its end
     */
    public record Ends(Neighbour start, Neighbour end) {
        static final Ends UNKNOWN =
                new Ends(
                        new Neighbour("", Neighbour.Kind.SQUARE),
                        new Neighbour("", Neighbour.Kind.SQUARE));

        /** How far both sides lean out together, in radians. */
        double leans(TurnedEdge turned) {
            return start.leans(turned.start()) + end.leans(turned.end());
        }

        /** The same, with no mitre where there is no room for one. */
        Ends mitred(TurnedEdge turned) {
            return new Ends(
                    start.mitred(turned.isMitredAtStart()), end.mitred(turned.isMitredAtEnd()));
        }
    }

    /**
     * An edge it meets.
     *
     * @param name of the edge
     * @param kind how the hem ends there
     */
    public record Neighbour(String name, Kind kind) {
        /** How a hem ends. */
        public enum Kind {
            /** At a side, whose end is cut mirrored. */
            SIDE,
            /** On the fold of the cloth, where its other half goes on. */
            FOLD,
            /** At another hem, with a mitre. */
            HEM,
            /** At another hem, too deep or too near for a mitre: one is folded over the other. */
            HEM_OVER,
            /** As the pattern prints it, or not known. */
            SQUARE
        }

        private Neighbour mitred(boolean isMitred) {
            return kind == Kind.HEM && !isMitred ? new Neighbour(name, Kind.HEM_OVER) : this;
        }

        private double leans(TurnedEdge.End end) {
            return kind == Kind.SIDE ? end.leansRadians() : 0;
        }

        /** By how much the mirrored end takes in; negative if it lets out. */
        Length takesIn(TurnedEdge.End end) {
            return kind == Kind.SIDE ? mm(end.takesInMm()) : Length.ZERO;
        }
    }

    /**
     * What is done with an edge.
     *
     * <p>That less than half a hundredth presses flat, and that up to five hundredths shrink into
     * firm cotton, is common practice without a source.
     */
    public enum Handling {
        /** Its shape or the depth is not known. */
        OPEN("not known"),
        /** A facing of its shape is sewn on. */
        FACE("sewn to a facing of its own shape"),
        /** It lies on its line as it is. */
        FLAT("press flat"),
        /** It is a little longer than its line. */
        EASE("ease-stitch and shrink"),
        /** It is much longer than its line. */
        TOO_FULL("too full to shrink in"),
        /** It is shorter than its line. */
        SHORT("too short: clip or face");

        private final String words;

        Handling(String words) {
            this.words = words;
        }

        /** What to do, in words. */
        public String words() {
            return words;
        }
    }

    /** How often it goes round the body, at least once. */
    public int times() {
        return Math.max(1, piece.timesRoundTheBody());
    }

    Length foldAllRound() {
        return fold.times(times());
    }

    /** The edge that is sewn down, once. */
    public Optional<Length> cutEdge() {
        return turned.map(t -> mm(t.outerMm()));
    }

    /** The line it lands on, once. */
    public Optional<Length> landsOn() {
        return turned.map(t -> mm(t.landingMm()));
    }

    /** How much longer than its line it is, once; negative if shorter. */
    public Optional<Length> surplus() {
        return turned.map(t -> mm(t.surplusMm()));
    }

    /** How much longer than its line it is, all round; negative if shorter. */
    public Optional<Length> surplusAllRound() {
        return surplus().map(s -> s.times(times()));
    }

    /** The surplus as a share of the line it lands on; nothing where no line is left. */
    public Optional<Double> fullness() {
        return turned.filter(t -> t.landingMm() > 0).map(t -> t.surplusMm() / t.landingMm());
    }

    /** How far all of it turns round the body, in radians. */
    double turnsAllRound() {
        return turned.map(t -> t.turnsRadians() * times()).orElse(0.0);
    }

    /**
     * How far all its panels spread toward the fold, in radians: the angle between their sides,
     * whether the fold is drawn round or straight from side to side. Derived: as far as the fold
     * turns, and as its sides lean out from square to it; along the grain, as at the side of an
     * apron, what lies at its ends is no side.
     */
    double spreadsAllRound() {
        return turned.map(t -> t.turnsRadians() + (isAcross(t) ? ends.leans(t) : 0)).orElse(0.0)
                * times();
    }

    /** Whether it runs across the grain rather than along it. */
    private boolean isAcross(TurnedEdge turned) {
        Point start = turned.fold().start();
        Point end = turned.fold().end();
        boolean isLevel = Math.abs(end.xMm() - start.xMm()) >= Math.abs(end.yMm() - start.yMm());
        return isLevel != (piece.grain() == Piece.Grain.ACROSS);
    }

    /** By how much the mirrored end at its start takes in, once; negative if it lets out. */
    public Length takesInAtStart() {
        return turned.map(t -> ends.start().takesIn(t.start())).orElse(Length.ZERO);
    }

    /** The same at its end. */
    public Length takesInAtEnd() {
        return turned.map(t -> ends.end().takesIn(t.end())).orElse(Length.ZERO);
    }

    /** A computed length, rounded as all of them are. */
    public static Length mm(double mm) {
        return Length.ofComputedMillimetres(mm);
    }
}
