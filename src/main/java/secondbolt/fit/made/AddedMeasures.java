package secondbolt.fit.made;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.alter.WidenShare;
import secondbolt.fit.alter.WidthSharing;
import secondbolt.fit.cut.CutShape;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeCalculation;
import secondbolt.garment.Role;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.wearer.BodyMeasure;

/**
 * What the alterations add at each measurement of the garment. A piece that is cut counts with what
 * it had when it was cut, whatever is written since: of a width its share of the amount; a length
 * is that of the piece that gains least.
 */
public final class AddedMeasures {
    /** What a change of the sides adds to. */
    public static final List<BodyMeasure> ALL_ROUND =
            List.of(BodyMeasure.BUST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private static final Map<Limb, List<BodyMeasure>> GIRTHS =
            Map.of(
                    Limb.SLEEVE, List.of(BodyMeasure.UPPER_ARM, BodyMeasure.WRIST),
                    Limb.LEG,
                            List.of(
                                    BodyMeasure.THIGH,
                                    BodyMeasure.KNEE,
                                    BodyMeasure.CALF,
                                    BodyMeasure.ANKLE));

    private static final Map<Limb, List<BodyMeasure>> ENDS =
            Map.of(
                    Limb.SLEEVE, List.of(BodyMeasure.WRIST),
                    Limb.LEG, List.of(BodyMeasure.ANKLE));

    private final FitResult result;
    private final Map<BodyMeasure, Length> levels;
    private final Map<BodyMeasure, Length> added = new LinkedHashMap<>();

    private AddedMeasures(FitResult result, Map<BodyMeasure, Length> levels) {
        this.result = result;
        this.levels = levels;
    }

    /**
     * All round the body or a limb, or in length; negative if they take away.
     *
     * @param levels how far down the pieces bust, waist and hip lie, where that is known
     */
    public static Map<BodyMeasure, Length> of(FitResult result, Map<BodyMeasure, Length> levels) {
        AddedMeasures all = new AddedMeasures(result, levels);
        all.lines().forEach(all::length);
        all.widens().forEach(all::width);
        return Collections.unmodifiableMap(all.added);
    }

    private Pattern pattern() {
        return result.pattern();
    }

    /** The alterations that a piece has, or will have when it is cut. */
    private List<Alteration> ofPiece(Piece piece) {
        return result.cut().whole(piece).flatMap(CutShape::had).orElseGet(result::alterations);
    }

    private Stream<Alteration> all() {
        return pattern().pieces().stream().flatMap(piece -> ofPiece(piece).stream());
    }

    private Set<String> lines() {
        Set<String> lines = new LinkedHashSet<>();
        all().flatMap(AddedMeasures::lengthen).forEach(l -> lines.add(l.line()));
        return lines;
    }

    private static Stream<Alteration.Lengthen> lengthen(Alteration alteration) {
        return alteration.accept(
                new Alteration.Visitor<Stream<Alteration.Lengthen>>() {
                    @Override
                    public Stream<Alteration.Lengthen> lengthen(Alteration.Lengthen lengthen) {
                        return Stream.of(lengthen);
                    }

                    @Override
                    public Stream<Alteration.Lengthen> widen(Alteration.Widen widen) {
                        return Stream.empty();
                    }
                });
    }

    private Set<Alteration.Widen> widens() {
        Set<Alteration.Widen> widens = new LinkedHashSet<>();
        all().flatMap(AddedMeasures::widen).forEach(widens::add);
        return widens;
    }

    private static Stream<Alteration.Widen> widen(Alteration alteration) {
        return alteration.accept(
                new Alteration.Visitor<Stream<Alteration.Widen>>() {
                    @Override
                    public Stream<Alteration.Widen> lengthen(Alteration.Lengthen lengthen) {
                        return Stream.empty();
                    }

                    @Override
                    public Stream<Alteration.Widen> widen(Alteration.Widen widen) {
                        return Stream.of(widen);
                    }
                });
    }

    private void length(String line) {
        List<Piece> carry =
                pattern().pieces().stream().filter(p -> p.lines().containsKey(line)).toList();
        boolean hasOutside = carry.stream().anyMatch(AddedMeasures::isOutside);
        Optional<Length> by =
                carry.stream()
                        .filter(piece -> !hasOutside || isOutside(piece))
                        .map(piece -> by(piece, line))
                        .reduce(Length::orShorter);
        pattern()
                .meanings()
                .line(line)
                .ifPresent(meaning -> by.ifPresent(b -> add(meaning.serves(), b)));
    }

    private static boolean isOutside(Piece piece) {
        return piece.cuts().containsKey(Role.MAIN);
    }

    private Length by(Piece piece, String line) {
        return ofPiece(piece).stream()
                .flatMap(AddedMeasures::lengthen)
                .filter(l -> l.line().equals(line))
                .map(l -> l.pieces().getOrDefault(piece.name(), l.by()))
                .reduce(Length.ZERO, Length::plus);
    }

    /** A line between waist and crotch is crossed in front and at the back by what goes between. */
    private void add(Serves line, Length by) {
        SizeCalculation.alteredAt(line).ifPresent(m -> add(m, by));
        if (line == Serves.CROTCH_DEPTH) {
            add(BodyMeasure.CROTCH_LENGTH, by.times(2));
        }
        if (line == Serves.CROTCH_DEPTH || line == Serves.LEG) {
            add(BodyMeasure.OUTSIDE_LEG, by);
        }
    }

    private void add(BodyMeasure measure, Length by) {
        added.merge(measure, by, Length::plus);
    }

    private void width(Alteration.Widen widen) {
        List<WidenShare> shares = WidthSharing.of(widen, pattern()).shares();
        if (isAtTheSide(widen) || isOutsideOfLegs(widen)) {
            shares.stream()
                    .filter(this::isOutside)
                    .findFirst()
                    .or(() -> shares.stream().findFirst())
                    .map(share -> really(share, widen))
                    .ifPresent(by -> ALL_ROUND.forEach(m -> add(m, at(widen, by, m))));
        }
        shares.stream()
                .filter(share -> isOutside(share) && limb(share).isPresent())
                .findFirst()
                .ifPresent(share -> addToLimbs(share, widen));
    }

    private boolean isAtTheSide(Alteration.Widen widen) {
        Set<String> sides = pattern().meanings().edgeNames(Serves.SIDE).keySet();
        return widen.edges().stream().anyMatch(sides::contains);
    }

    /** The outside of a leg runs up to the waist. */
    private boolean isOutsideOfLegs(Alteration.Widen widen) {
        return pattern().pieces().stream()
                .filter(piece -> Limb.of(piece, pattern().meanings()).equals(Optional.of(Limb.LEG)))
                .anyMatch(piece -> isOutsideOf(piece, widen));
    }

    private boolean isOutsideOf(Piece leg, Alteration.Widen widen) {
        return widen.edges().stream()
                .anyMatch(edge -> pattern().meanings().serves(leg.name(), edge, Serves.OUTSEAM));
    }

    private Optional<Limb> limb(WidenShare share) {
        return Limb.of(share.pieces(), pattern());
    }

    private boolean isOutside(WidenShare share) {
        return pieces(share).allMatch(AddedMeasures::isOutside);
    }

    private Stream<Piece> pieces(WidenShare share) {
        return share.pieces().stream().flatMap(name -> pattern().find(name).stream());
    }

    /** What of a share its pieces have: each edge takes the same part of it. */
    private Length really(WidenShare share, Alteration.Widen widen) {
        int edges =
                pieces(share)
                        .mapToInt(
                                piece ->
                                        share.cutEdgesOf(piece)
                                                * Collections.frequency(ofPiece(piece), widen))
                        .sum();
        return share.each().times(edges);
    }

    /** What a change of the sides adds at a measurement. */
    private Length at(Alteration.Widen widen, Length by, BodyMeasure measure) {
        if (widen.from().isEmpty()) {
            return by;
        }
        Length level = levels.get(measure);
        if (level == null) {
            // Where it lies is not known: a taper is taken to serve the hip, the usual reason.
            return measure == BodyMeasure.HIP ? by : Length.ZERO;
        }
        double share = WidenShare.ramp(widen.from(), widen.to(), level.millimetres());
        return Length.ofComputedMillimetres(by.millimetres() * share);
    }

    /** What each arm or leg gets; of a taper only what lies at its end. */
    private void addToLimbs(WidenShare share, Alteration.Widen widen) {
        Length each = Limb.each(really(share, widen), share.pieces(), pattern());
        (widen.from().isPresent() ? ENDS : GIRTHS)
                .get(limb(share).orElseThrow())
                .forEach(m -> add(m, each));
    }
}
