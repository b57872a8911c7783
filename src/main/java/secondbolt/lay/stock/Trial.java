package secondbolt.lay.stock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import secondbolt.garment.Role;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.plan.Interfacing;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.Match;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.piece.Piece;

/**
 * One way of laying: as the maker wrote it, or with something let go.
 *
 * @param plan as she wrote it
 * @param gap between two cutting lines
 * @param isFolded whether the cloth is folded
 * @param free pieces that may lie any way
 * @param matches where stripes or checks meet
 */
public record Trial(
        LayPlan plan, Length gap, boolean isFolded, Set<String> free, List<Match> matches) {
    private static final List<Integer> ANY = List.of(0, 45, 90, 135, 180, 225, 270, 315);

    /** As the maker wrote it. */
    public static Trial asWritten(LayPlan plan) {
        return new Trial(
                plan, plan.gapOrUsual(), plan.isFolded(), Set.of(), plan.rules().matches());
    }

    /**
     * The same on the cloths of a role.
     *
     * @param pieces all that are wanted; those of nonwoven interfacing may lie any way
     */
    public static Trial asWritten(LayPlan plan, Role role, List<LayPiece> pieces) {
        boolean anyWay =
                role == Role.INTERFACING
                        && plan.interfacing().filter(Interfacing::isNonwoven).isPresent();
        return anyWay ? asWritten(plan).freeing(names(pieces)) : asWritten(plan);
    }

    /** Interfacing from a bolt lies single; nonwoven has no grain. */
    public static Trial ofInterfacing(LayPlan plan, List<LayPiece> pieces, boolean anyWay) {
        return new Trial(
                plan, plan.gapOrUsual(), false, anyWay ? names(pieces) : Set.of(), List.of());
    }

    private Trial with(Length newGap) {
        return new Trial(plan, newGap, isFolded, free, matches);
    }

    private Trial single() {
        return new Trial(plan, gap, false, free, matches);
    }

    private Trial freeing(Set<String> pieces) {
        return new Trial(plan, gap, isFolded, pieces, matches);
    }

    private Trial without(Match match) {
        List<Match> rest = matches.stream().filter(m -> !m.equals(match)).toList();
        return new Trial(plan, gap, isFolded, free, rest);
    }

    /**
     * What else can be tried, by the words that tell of it.
     *
     * @param lay what did not fit
     * @param pieces all that are wanted
     */
    public static Map<String, Trial> others(
            LayPlan plan, StockLay lay, List<LayPiece> pieces, Tape tape) {
        Map<String, Trial> others = new LinkedHashMap<>();
        Trial written = asWritten(plan, lay.role(), pieces);
        Length gap = plan.gapOrUsual();
        Length half = gap.dividedBy(2);
        if (plan.isFolded()) {
            others.put("the cloth in a single layer", written.single());
        }
        if (gap.isPositive()) {
            others.put(
                    "a gap of " + tape.printSmall(half) + " instead of " + tape.printSmall(gap),
                    written.with(half));
        }
        if (written.free.isEmpty()) {
            grains(plan, lay, pieces)
                    .forEach((words, set) -> others.put(words, written.freeing(set)));
        }
        for (Match match : written.matches()) {
            others.put("no match of " + match.words(), written.without(match));
        }
        return others;
    }

    private static Map<String, Set<String>> grains(
            LayPlan plan, StockLay lay, List<LayPiece> pieces) {
        Map<String, Set<String>> grains = new LinkedHashMap<>();
        List<LayPiece> bound =
                pieces.stream().filter(p -> plan.grain(p.piece()) != Piece.Grain.ANY).toList();
        Set<String> hidden = names(bound.stream().filter(LayPiece::isHidden).toList());
        if (!hidden.isEmpty()) {
            grains.put(
                    "the hidden pieces (" + String.join(", ", hidden) + ") at any grain", hidden);
        }
        double most = pieces.stream().mapToDouble(LayPiece::areaMm2).max().orElse(0);
        Set<String> small = names(bound.stream().filter(p -> p.areaMm2() * 10 < most).toList());
        // On a one-way cloth a piece that is seen shades when it is turned.
        boolean oneWay = lay.spreads().stream().anyMatch(SpreadCloth::isOneWay);
        if (!small.isEmpty() && !oneWay) {
            grains.put("the small pieces (" + String.join(", ", small) + ") at any grain", small);
        }
        return grains;
    }

    private static Set<String> names(List<LayPiece> pieces) {
        Set<String> names = new TreeSet<>();
        pieces.forEach(piece -> names.add(piece.piece().name()));
        return names;
    }

    /**
     * How a piece may be turned. On a one-way cloth all pieces of one grain lie the same way, so
     * that they shade alike; only what nobody sees may be turned about.
     */
    public List<Integer> turns(LayPiece piece, boolean oneWay) {
        Piece.Grain grain =
                free.contains(piece.piece().name()) ? Piece.Grain.ANY : plan.grain(piece.piece());
        List<Integer> turns =
                switch (grain) {
                    case ALONG -> List.of(0, 180);
                    case ACROSS -> List.of(90, 270);
                    case BIAS -> List.of(45, 135, 225, 315);
                    case ANY -> ANY;
                };
        boolean anyWay = grain == Piece.Grain.ANY && piece.isHidden();
        return oneWay && !anyWay ? turns.subList(0, 1) : turns;
    }
}
