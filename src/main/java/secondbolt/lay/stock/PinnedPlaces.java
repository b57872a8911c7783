package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.ToldLie;
import secondbolt.lay.placement.AllowedPositions;
import secondbolt.lay.placement.Orientation;
import secondbolt.lay.placement.Placement;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.lay.plan.Lies;
import secondbolt.lay.plan.Placing;
import secondbolt.lay.stock.Pinned.Why;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * Finds which pieces still fit where they are pinned. Of two that are in each other's way the one
 * that is written first keeps its place.
 */
final class PinnedPlaces {
    /**
     * How far a piece may be off its place, since the boundaries of curved cloth are polygons. Our
     * own choice, no source.
     */
    private static final double OFF_MM = 0.05;

    private final CuttingProgress progress;
    private final Stock stock;
    private final List<LayPiece> rest;
    private final Trial trial;
    private final List<PieceEdge> kept;
    private final PlacementRules rules;
    private final Map<Integer, Held> held = new LinkedHashMap<>();
    private final List<Pinned.Misfit> misfits = new ArrayList<>();
    private final List<Pinned.Near> near = new ArrayList<>();

    /** A piece that keeps its place. */
    private record Held(Placing placing, Placement placement, Outline outline) {}

    /** Why it does not fit, and what is in its way. */
    private record Hindrance(Why why, String other) {
        static Hindrance of(Why why) {
            return new Hindrance(why, "");
        }
    }

    private PinnedPlaces(CuttingProgress progress, Stock stock, List<LayPiece> rest, Trial trial) {
        this.progress = progress;
        this.stock = stock;
        this.rest = rest;
        this.trial = trial;
        this.kept = stock.keptEdges();
        this.rules = new PlacementRules(stock, trial);
    }

    /**
     * Looks at every pinned place on the cloths of a stock, in the order written. What is pinned of
     * pieces that are not wanted at all is another design's, and is passed over.
     *
     * @param stock the cloths as they are spread, less what is cut
     * @param rest what is still to be laid
     * @param wanted the names of the pieces that are wanted
     */
    static Pinned of(
            CuttingProgress progress,
            Stock stock,
            List<LayPiece> rest,
            List<String> wanted,
            Trial trial) {
        if (progress.plan().pinned().isEmpty()) {
            return Pinned.NONE;
        }
        PinnedPlaces places = new PinnedPlaces(progress, stock, rest, trial);
        for (Placing pin : progress.plan().pinned()) {
            int cloth = places.cloth(pin);
            if (cloth >= 0 && wanted.contains(pin.piece().value())) {
                places.hold(pin, cloth);
            } else if (cloth < 0 && places.isMissed(pin)) {
                places.misfits.add(new Pinned.Misfit(pin, Why.CLOTH, ""));
            }
        }
        places.match();
        return new Pinned(
                places.held.values().stream().map(Held::placement).toList(),
                places.misfits,
                places.near);
    }

    /** Whether it lies on a cloth of this role that is not spread, and is to be laid. */
    private boolean isMissed(Placing pin) {
        return progress.roles().get(pin.cloth().value()) == stock.role()
                && rest.stream().anyMatch(p -> p.piece().name().equals(pin.piece().value()));
    }

    private int cloth(Placing pin) {
        return IntStream.range(0, stock.spreads().size())
                .filter(i -> stock.spreads().get(i).name().equals(pin.cloth().value()))
                .findFirst()
                .orElse(-1);
    }

    private void hold(Placing pin, int cloth) {
        List<Integer> own =
                IntStream.range(0, rest.size())
                        .filter(i -> rest.get(i).piece().name().equals(pin.piece().value()))
                        .filter(i -> !held.containsKey(i))
                        .boxed()
                        .sorted(Comparator.comparing((Integer i) -> !isCopy(rest.get(i), pin)))
                        .toList();
        Hindrance first = own.isEmpty() ? Hindrance.of(Why.NOT_NEEDED) : null;
        for (int item : own) {
            Optional<Hindrance> hindrance = hold(pin, item, cloth);
            if (hindrance.isEmpty()) {
                return;
            }
            first = first == null ? hindrance.get() : first;
        }
        misfits.add(new Pinned.Misfit(pin, first.why(), first.other()));
    }

    private static boolean isCopy(LayPiece piece, Placing pin) {
        return pin.copy().filter(number -> number == piece.copy()).isPresent();
    }

    /** Holds a piece at a place; what hinders it if it cannot lie there. */
    private Optional<Hindrance> hold(Placing pin, int item, int cloth) {
        LayPiece piece = rest.get(item);
        ToldLie told = new ToldLie(piece, pin.lies());
        if (!told.isOfItsLayers()) {
            return Optional.of(Hindrance.of(Why.LAYERS));
        }
        List<Orientation> ways = told.orientations();
        if (ways.isEmpty()) {
            return Optional.of(Hindrance.of(Why.HAND));
        }
        List<PlacementRule> allowed =
                rules.of(piece).stream()
                        .filter(r -> r.allows(cloth) && ways.contains(r.orientation()))
                        .toList();
        if (allowed.isEmpty()) {
            return Optional.of(Hindrance.of(isKept(piece) ? Why.FEATURE : Why.GRAIN));
        }
        Optional<Placement> at =
                allowed.stream().flatMap(rule -> at(pin, item, cloth, rule).stream()).findFirst();
        if (at.isEmpty()) {
            return Optional.of(Hindrance.of(isKept(piece) ? Why.FEATURE : Why.FOLD));
        }
        Outline outline = at.get().applyTo(piece.outline());
        Optional<Hindrance> hindrance = hindrance(piece, cloth, outline);
        if (hindrance.isEmpty()) {
            near(pin, cloth, outline);
            held.put(item, new Held(pin, at.get(), outline));
        }
        return hindrance;
    }

    private boolean isKept(LayPiece piece) {
        return kept.stream().anyMatch(edge -> PlacementRules.isOf(piece, edge));
    }

    /** The place as written, or the one that a rule allows there if it is hardly off. */
    private Optional<Placement> at(Placing pin, int item, int cloth, PlacementRule rule) {
        Box box = rule.orientation().applyTo(rest.get(item).outline()).box();
        double leftMm = pin.lies().layer() == Lies.Layer.ON_FOLD ? 0 : pin.at().xMm();
        double x = leftMm - box.leftMm();
        double y = pin.at().yMm() - box.topMm();
        double allowedX = nearest(rule.across(), x);
        double allowedY = nearest(rule.along(), y);
        boolean isThere = Math.hypot(allowedX - x, allowedY - y) <= OFF_MM;
        return isThere
                ? Optional.of(
                        // A zero below zero would be another number than the lay's own.
                        new Placement(
                                item, cloth, rule.orientation(), allowedX + 0.0, allowedY + 0.0))
                : Optional.empty();
    }

    private static double nearest(AllowedPositions positions, double mm) {
        return positions.isAny(Double.POSITIVE_INFINITY)
                ? positions.nearest(mm, Double.POSITIVE_INFINITY)
                : Double.POSITIVE_INFINITY;
    }

    private Optional<Hindrance> hindrance(LayPiece piece, int cloth, Outline outline) {
        SpreadCloth spread = stock.spreads().get(cloth);
        Region within = outline.shrunk(OFF_MM);
        int grade = StockSearch.grade(piece, kept);
        Region allowed = spread.uncut().container(kept).grades().get(grade);
        if (!within.minus(spread.whole()).isEmpty() && !within.minus(allowed).isEmpty()) {
            return Optional.of(Hindrance.of(isKept(piece) ? Why.FEATURE : Why.EDGE));
        }
        if (!within.intersection(spread.asSpread(progress.taken(spread.name()))).isEmpty()) {
            return Optional.of(Hindrance.of(Why.CUT));
        }
        if (!within.minus(allowed).isEmpty()) {
            return Optional.of(Hindrance.of(Why.FLAW));
        }
        return there(cloth)
                .filter(other -> !within.intersection(Region.of(other.outline())).isEmpty())
                .findFirst()
                .map(other -> new Hindrance(Why.OVERLAP, words(other)));
    }

    private Stream<Held> there(int cloth) {
        return held.values().stream().filter(h -> h.placement().container() == cloth);
    }

    private String words(Held other) {
        return rest.get(other.placement().item()).words();
    }

    private void near(Placing pin, int cloth, Outline outline) {
        double leastMm = trial.gap().millimetres() - OFF_MM;
        Region own = Region.of(outline);
        there(cloth)
                .filter(o -> own.distanceMm(Region.of(o.outline())) < leastMm)
                .forEach(o -> near.add(new Pinned.Near(pin, words(o))));
    }

    /** Pieces that match keep their places all together, or none of them does. */
    private void match() {
        Matching matching = Matching.of(trial, rest, stock);
        for (int item : List.copyOf(held.keySet())) {
            Held own = held.get(item);
            if (own == null || !matching.isMatched(item)) {
                continue;
            }
            Optional<Stock.Fixed> by = matching.holds(item);
            if (by.isPresent()) {
                follow(matching, item, by.get());
                continue;
            }
            List<Integer> group =
                    IntStream.range(0, rest.size())
                            .filter(matching::isMatched)
                            .filter(i -> matching.leader(i) == matching.leader(item))
                            .boxed()
                            .toList();
            group.stream()
                    .filter(i -> !held.containsKey(i) || !meets(matching, i))
                    .findFirst()
                    .ifPresent(i -> let(group, i));
        }
    }

    /** What matches a piece that is cut keeps its place by itself, or does not. */
    private void follow(Matching matching, int item, Stock.Fixed cut) {
        Placement own = held.get(item).placement();
        Point at = matching.place(item);
        Point begins = stock.begins(own.container());
        double dx = own.acrossMm() - at.xMm() - begins.xMm();
        double dy = own.alongMm() - at.yMm() - begins.yMm();
        boolean isThere = stock.matching(cut).contains(own.container());
        if (!isThere || !isOn(matching, item, dx, dy)) {
            misfits.add(
                    new Pinned.Misfit(
                            held.remove(item).placing(), Why.MATCH_CUT, cut.piece().words()));
        }
    }

    private boolean isOn(Matching matching, int item, double dx, double dy) {
        ClothYield.Repeat repeat = matching.repeat();
        return held.get(item).placement().orientation().turnDegrees() == matching.turn(item)
                && Matching.off(dx, repeat.acrossMm()) <= Matching.SEEN_MM
                && Matching.off(dy, repeat.alongMm()) <= Matching.SEEN_MM;
    }

    /** Whether the pattern of the cloth runs on from the largest of its group into a piece. */
    private boolean meets(Matching matching, int item) {
        int leader = matching.leader(item);
        if (!held.containsKey(leader)) {
            return false;
        }
        Placement own = held.get(item).placement();
        Placement first = held.get(leader).placement();
        Optional<Point> begins = begins(own.container());
        Optional<Point> firstBegins = begins(first.container());
        boolean isTold = begins.isPresent() && firstBegins.isPresent();
        if (own.container() != first.container() && !isTold) {
            return false;
        }
        Point from = matching.fromLeader(item);
        double dx = own.acrossMm() - first.acrossMm() - from.xMm();
        double dy = own.alongMm() - first.alongMm() - from.yMm();
        if (own.container() != first.container()) {
            dx -= begins.orElseThrow().xMm() - firstBegins.orElseThrow().xMm();
            dy -= begins.orElseThrow().yMm() - firstBegins.orElseThrow().yMm();
        }
        return isOn(matching, item, dx, dy);
    }

    private Optional<Point> begins(int cloth) {
        return stock.spreads().get(cloth).repeat().begins();
    }

    private void let(List<Integer> group, int because) {
        String other = rest.get(because).words();
        for (int item : group) {
            Held own = held.remove(item);
            if (own != null) {
                misfits.add(
                        new Pinned.Misfit(own.placing(), Why.MATCH, item == because ? "" : other));
            }
        }
    }
}
