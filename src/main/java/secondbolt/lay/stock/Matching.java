package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.garment.Direction;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.lay.placement.Orientation;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.Match;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Which pieces must lie at the same place of the repeat as which others, so that stripes or checks
 * run on over their seams.
 *
 * <p>Two pieces match where the places at which they meet, on the sewing line, are whole repeats
 * apart on the cloth. All matched pieces lie the same way up, since few checks look the same upside
 * down. Common practice, no source.
 */
public final class Matching {
    /** What a maker may be out by and not see it; common practice, no source. */
    static final double SEEN_MM = 1;

    private final LayPlan plan;
    private final Stock stock;
    private final int count;
    private final List<LayPiece> pieces = new ArrayList<>();
    private final ClothYield.Repeat repeat;
    private final int[] group;
    private final double[] x;
    private final double[] y;
    private final Map<Integer, Stock.Fixed> fixedGroups = new HashMap<>();
    private final List<List<PinPoint>> points = new ArrayList<>();
    private final List<UnmetMatch> unmet = new ArrayList<>();
    private final List<Apart> apart = new ArrayList<>();

    private Matching(LayPlan plan, List<LayPiece> wanted, Stock stock) {
        this.plan = plan;
        this.stock = stock;
        count = wanted.size();
        pieces.addAll(wanted);
        stock.fixed().forEach(fixed -> pieces.add(fixed.piece()));
        repeat = stock.repeat();
        group = new int[pieces.size()];
        x = new double[group.length];
        y = new double[group.length];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
            points.add(new ArrayList<>());
            if (i >= count) {
                fix(i, stock.fixed().get(i - count));
            }
        }
    }

    /**
     * A match that is not met, because another one before it rules it out.
     *
     * @param match which
     * @param axis across or along
     * @param off by how much the lines miss each other there, above zero
     */
    public record UnmetMatch(Match match, Direction axis, Length off) {}

    /**
     * A match with a copy that is cut, which is not held.
     *
     * @param match which
     * @param cut the copy that is cut
     * @param other what it must match
     * @param off by how much the lines miss each other, where both are cut; nothing where the other
     *     is laid without regard to it
     */
    public record Apart(Match match, String cut, String other, Optional<Length> off) {}

    /**
     * Matches pieces.
     *
     * @param trial how pieces may lie, and which match
     * @param wanted single copies that have no place yet
     * @param stock the cloths, with the copies that have one
     */
    static Matching of(Trial trial, List<LayPiece> wanted, Stock stock) {
        Matching matching = new Matching(trial.plan(), wanted, stock);
        if (matching.repeat.isAny()) {
            trial.matches().forEach(matching::match);
        }
        return matching;
    }

    /** A copy that has its place holds all that match with it, if its place tells where. */
    private void fix(int piece, Stock.Fixed fixed) {
        boolean isUpright = fixed.turnDegrees() == turn(piece);
        if (isUpright && fixed.at().isPresent() && !stock.matching(fixed).isEmpty()) {
            Point from = begins(fixed.repeat());
            x[piece] = fixed.at().get().xMm() - from.xMm();
            y[piece] = fixed.at().get().yMm() - from.yMm();
            fixedGroups.put(piece, fixed);
        }
    }

    private Point begins(ClothYield.Repeat of) {
        return stock.isTold() ? of.begins().orElseThrow() : Point.ORIGIN;
    }

    /** The copy that has its place and holds a piece. */
    Optional<Stock.Fixed> holds(int piece) {
        return Optional.ofNullable(fixedGroups.get(group[piece]));
    }

    /**
     * How far a piece that is held is moved, but for whole repeats, from where the pattern begins.
     */
    Point place(int piece) {
        return new Point(x[piece], y[piece]);
    }

    /** Matches with what is cut that are not held. */
    List<Apart> apart() {
        return List.copyOf(apart);
    }

    /** What could not be matched. */
    List<UnmetMatch> unmet() {
        return List.copyOf(unmet);
    }

    /** Where a piece meets others, to pin it by. */
    List<PinPoint> points(int piece) {
        return points.get(piece);
    }

    /** Whether any piece is matched. */
    boolean isAny() {
        return IntStream.range(0, count).anyMatch(this::isMatched);
    }

    /** Whether a piece is matched with another. */
    boolean isMatched(int piece) {
        return !points.get(piece).isEmpty();
    }

    /** The repeat that is heeded. */
    ClothYield.Repeat repeat() {
        return repeat;
    }

    /** How a matched piece is turned. */
    int turn(int piece) {
        return turn(pieces.get(piece));
    }

    private int turn(LayPiece piece) {
        return plan.grain(piece.piece()) == Piece.Grain.ACROSS ? 90 : 0;
    }

    /**
     * The largest piece that is matched with this one, or with one that is; of several equally
     * large ones the first, so that all that match have one leader.
     */
    int leader(int piece) {
        int leader = -1;
        for (int i = 0; i < group.length; i++) {
            boolean isLarger = leader < 0 || pieces.get(i).areaMm2() > pieces.get(leader).areaMm2();
            leader = group[i] == group[piece] && isLarger ? i : leader;
        }
        return leader;
    }

    /** How far a piece is moved where its leader is not moved, but for whole repeats. */
    Point fromLeader(int piece) {
        int leader = leader(piece);
        return new Point(x[piece] - x[leader], y[piece] - y[leader]);
    }

    /** The outline of a matched piece as it is turned. */
    Outline turned(int piece) {
        return orientation(pieces.get(piece)).applyTo(pieces.get(piece).outline());
    }

    private Orientation orientation(LayPiece piece) {
        return Orientation.turned(turn(piece));
    }

    private void match(Match match) {
        MatchPoints meets = MatchPoints.of(match, pieces);
        for (MatchPoints.CopyPair pair : meets.pairs()) {
            join(match, pair);
        }
    }

    private void join(Match match, MatchPoints.CopyPair pair) {
        int a = pair.first().piece();
        int b = pair.second().piece();
        if (isLoose(a) || isLoose(b)) {
            tellLoose(match, a, b);
            return;
        }
        Point at = orientation(pieces.get(a)).applyTo(pair.first().at());
        Point other = orientation(pieces.get(b)).applyTo(pair.second().at());
        double dx = x[a] + at.xMm() - other.xMm() - x[b];
        double dy = y[a] + at.yMm() - other.yMm() - y[b];
        if (a >= count && b >= count) {
            tellCut(match, a, b, Math.max(off(dx, repeat.acrossMm()), off(dy, repeat.alongMm())));
        } else if (group[a] == group[b] || (holds(a).isPresent() && holds(b).isPresent())) {
            tellOff(match, Direction.ACROSS, off(dx, repeat.acrossMm()));
            tellOff(match, Direction.ALONG, off(dy, repeat.alongMm()));
        } else if (holds(b).isPresent()) {
            move(group[a], group[b], -dx, -dy);
        } else {
            move(group[b], group[a], dx, dy);
        }
        pin(a, pair.first(), match.first().value());
        pin(b, pair.second(), match.second().value());
    }

    private void move(int old, int joined, double dx, double dy) {
        for (int i = 0; i < group.length; i++) {
            if (group[i] == old) {
                group[i] = joined;
                x[i] += dx;
                y[i] += dy;
            }
        }
    }

    /** Whether a copy has its place, and that does not tell where others must lie. */
    private boolean isLoose(int piece) {
        return piece >= count && holds(piece).isEmpty();
    }

    private void tellLoose(Match match, int a, int b) {
        int cut = isLoose(a) ? a : b;
        int other = cut == a ? b : a;
        if (other < count && stock.fixed().get(cut - count).repeat().isAny()) {
            apart.add(new Apart(match, words(cut), words(other), Optional.empty()));
        }
    }

    private void tellCut(Match match, int a, int b, double offMm) {
        boolean isKnown = stock.isTold() || holds(a).get().cloth().equals(holds(b).get().cloth());
        if (isKnown && offMm > SEEN_MM) {
            Length off = Length.ofComputedMillimetres(offMm);
            apart.add(new Apart(match, words(a), words(b), Optional.of(off)));
        }
    }

    private String words(int piece) {
        return pieces.get(piece).words();
    }

    private void pin(int piece, MatchPoints.CopyPoint point, PieceEdge part) {
        PinPoint pin = PinPoint.match(part.edge(), point.at());
        if (!points.get(piece).contains(pin)) {
            points.get(piece).add(pin);
        }
    }

    /** How far a distance is off whole repeats, zero or more; zero where nothing repeats. */
    static double off(double by, double everyMm) {
        return everyMm > 0 ? Math.abs(by - Math.rint(by / everyMm) * everyMm) : 0;
    }

    private void tellOff(Match match, Direction axis, double offMm) {
        boolean told = unmet.stream().anyMatch(g -> g.match().equals(match) && g.axis() == axis);
        if (offMm > SEEN_MM && !told) {
            unmet.add(new UnmetMatch(match, axis, Length.ofComputedMillimetres(offMm)));
        }
    }

    /** The seams that match below a dart only. */
    public static List<String> belowDarts(List<Match> matches, List<LayPiece> pieces) {
        List<String> below = new ArrayList<>();
        for (Match match : matches) {
            for (PieceEdge part : List.of(match.first().value(), match.second().value())) {
                boolean hasDart =
                        pieces.stream()
                                .filter(p -> p.piece().name().equals(part.piece()))
                                .flatMap(p -> p.piece().features().darts().stream())
                                .anyMatch(dart -> dart.edge().equals(part.edge()));
                if (hasDart && !below.contains(part.toString())) {
                    below.add(part.toString());
                }
            }
        }
        return below;
    }
}
