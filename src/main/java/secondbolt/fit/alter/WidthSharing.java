package secondbolt.fit.alter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.Role;
import secondbolt.measure.Length;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.JoinedPieces;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * Which pieces a change of width goes through, and what each takes.
 *
 * <p>Pieces sewn to one another along the edges named go round the body and share the amount. Any
 * other piece with such an edge follows what it is sewn to: a band gains what the waist it is sewn
 * to gains; a half lining, a facing or an interfacing moves as far as its partner does. A piece
 * that no join ties to them stays as it is where its edge has only the name that every rectangle's
 * has, as a pocket's {@code left}. Derived: every seam that met must meet again.
 */
public final class WidthSharing {
    /** Names that tell how an edge lies on its piece, not what it serves. */
    private static final Set<String> OF_ANY_PIECE = Set.of("top", "right", "bottom", "left");

    /** An edge that gains less than this for each millimetre does not go across its piece. */
    private static final double HARDLY = 0.2;

    private static final double SAME_MM = 1;

    private final Alteration.Widen widen;
    private final Pattern pattern;
    private final JoinedPieces joined;
    private final List<BodyRing> rings;
    private final Map<String, WidenShare> found = new LinkedHashMap<>();
    private final List<WidenShare> shares = new ArrayList<>();
    private final List<String> guessed = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    private WidthSharing(Alteration.Widen widen, Pattern pattern) {
        this.widen = widen;
        this.pattern = pattern;
        this.joined = JoinedPieces.of(pattern);
        this.rings =
                BodyRing.of(pattern, widen.edges()).stream()
                        .filter(ring -> ring.ply() == Role.MAIN || isClosed(ring, pattern, widen))
                        .toList();
    }

    private static boolean isClosed(BodyRing ring, Pattern pattern, Alteration.Widen widen) {
        return ring.isClosed(pattern, widen.edges());
    }

    /** Works it out for one change of width. */
    public static WidthSharing of(Alteration.Widen widen, Pattern pattern) {
        WidthSharing sharing = new WidthSharing(widen, pattern);
        sharing.goRound();
        sharing.follow();
        sharing.layOn();
        return sharing;
    }

    /** What every piece takes, those that share the amount together. */
    public List<WidenShare> shares() {
        return List.copyOf(shares);
    }

    /** The pieces taken to follow though no join says so, or no join says what goes round. */
    public List<String> guessed() {
        return List.copyOf(guessed);
    }

    /** The pieces that have an edge of the name and stay as they are. */
    public List<String> leftAsTheyAre() {
        return List.copyOf(left);
    }

    private boolean isOfAnyPiece() {
        return OF_ANY_PIECE.containsAll(widen.edges());
    }

    private List<Piece> concerned() {
        return pattern.pieces().stream()
                .filter(piece -> !WidenShare.edgesOn(piece, widen.edges()).isEmpty())
                .toList();
    }

    private boolean isOpen(Piece piece) {
        return !found.containsKey(piece.name());
    }

    private boolean isOutside(Piece piece) {
        return BodyRing.ply(piece) == Role.MAIN;
    }

    /** The rings share the amount; what no join tells of, by its cloth. */
    private void goRound() {
        Optional<BodyRing> first =
                concerned().stream()
                        .flatMap(p -> rings.stream().filter(r -> r.pieces().contains(p.name())))
                        .filter(ring -> ring.ply() == Role.MAIN)
                        .findFirst();
        for (BodyRing ring : rings) {
            boolean isOther = ring.ply() == Role.MAIN && !first.filter(ring::equals).isPresent();
            if (!(isOther && isOfAnyPiece())) {
                share(ring.pieces());
            }
        }
        if (first.isEmpty()) {
            noJoinTells();
        }
    }

    private void noJoinTells() {
        List<Piece> open = concerned().stream().filter(this::isOpen).toList();
        boolean sewn = isOfAnyPiece() && open.stream().anyMatch(p -> isOutside(p) && isSewn(p));
        Map<Role, Set<String>> byCloth = new LinkedHashMap<>();
        for (Piece piece : open) {
            Set<String> base =
                    byCloth.computeIfAbsent(BodyRing.ply(piece), ply -> new LinkedHashSet<>());
            if ((!sewn || isSewn(piece))
                    && joined.partners(piece.name()).stream().noneMatch(base::contains)) {
                base.add(piece.name());
            }
        }
        byCloth.values().removeIf(Set::isEmpty);
        boolean isOnlyLining = !byCloth.containsKey(Role.MAIN);
        byCloth.forEach(
                (cloth, pieces) -> {
                    if (cloth == Role.MAIN || isOnlyLining) {
                        share(pieces);
                        if (pieces.size() > 1) {
                            guessed.addAll(pieces);
                        }
                    }
                });
    }

    private boolean isSewn(Piece piece) {
        return joined.isSewn(piece.name());
    }

    private boolean areSewn(String one, Piece other) {
        return joined.partners(one).contains(other.name());
    }

    private void share(Set<String> pieces) {
        int edges = 0;
        for (Piece piece : pattern.pieces()) {
            int named = WidenShare.sidesOn(piece, widen.edges());
            edges += pieces.contains(piece.name()) ? named * piece.timesRoundTheBody() : 0;
        }
        put(new WidenShare(widen.edges(), pieces, widen.by(), edges, widen.from(), widen.to()));
    }

    private void put(WidenShare share) {
        shares.add(share);
        share.pieces().forEach(piece -> found.put(piece, share));
    }

    /** What is sewn across to what has gained gains as much, one piece after the other. */
    private void follow() {
        followAll(false);
        followAll(true);
    }

    private void followAll(boolean alsoWhatStays) {
        boolean again = true;
        while (again) {
            again = false;
            for (Seam seam : pattern.seams()) {
                again |= followAlong(seam, alsoWhatStays);
            }
        }
    }

    private boolean followAlong(Seam seam, boolean alsoWhatStays) {
        Set<Piece> open = new LinkedHashSet<>();
        double gainMm = 0;
        double forEach = 0;
        boolean isTold = false;
        for (EdgeSum side : List.of(seam.first().value(), seam.second().value())) {
            double sign = side.equals(seam.first().value()) ? 1 : -seam.gather().doubleValue();
            for (EdgeSum.Term term : side.terms()) {
                Piece piece = pattern.find(term.piece()).orElseThrow();
                EdgeGain gain = new EdgeGain(piece, widen.edges());
                WidenShare share = found.get(piece.name());
                if (share != null) {
                    isTold = true;
                    gainMm += sign * term.count() * gain.ofMm(term.edge().edge(), share);
                } else if (gain.isOfNothing()) {
                    isTold |= alsoWhatStays;
                } else {
                    open.add(piece);
                    forEach += sign * term.count() * gain.forEachMm(term.edge().edge());
                }
            }
        }
        return isTold
                && !open.isEmpty()
                && Math.abs(forEach) >= HARDLY
                && followBy(open, Length.ofComputedMillimetres(-gainMm / forEach));
    }

    private boolean followBy(Set<Piece> open, Length each) {
        boolean isOtherWay = each.isNegative() != widen.by().isNegative();
        boolean isTooMuch = each.size().isLongerThan(widen.by().size());
        if (!each.equals(Length.ZERO) && (isOtherWay || isTooMuch)) {
            return false;
        }
        Set<String> names = new LinkedHashSet<>();
        open.forEach(piece -> names.addAll(together(piece.name())));
        for (String name : names) {
            Piece piece = pattern.find(name).orElseThrow();
            put(new EdgeGain(piece, widen.edges()).share(each));
        }
        return true;
    }

    /** A piece and those that go round with it. */
    private Set<String> together(String piece) {
        return rings.stream()
                .filter(ring -> ring.pieces().contains(piece))
                .map(BodyRing::pieces)
                .findFirst()
                .orElse(Set.of(piece));
    }

    /** What is left lies on a partner and moves as far, or stays. */
    private void layOn() {
        for (Piece piece : concerned()) {
            if (isOpen(piece)) {
                Optional<WidenShare> partner = partner(piece);
                if (partner.isPresent()) {
                    put(partner.get().alsoOn(piece));
                    follow();
                }
            }
        }
        shares.removeIf(share -> share.by().equals(Length.ZERO));
        concerned().stream()
                .map(Piece::name)
                .filter(p -> shares.stream().noneMatch(s -> s.pieces().contains(p)))
                .forEach(left::add);
    }

    private Optional<WidenShare> partner(Piece piece) {
        boolean mayLieOn = !isOutside(piece) || !isOfAnyPiece();
        Optional<WidenShare> sewn =
                mayLieOn
                        ? concerned().stream()
                                .filter(
                                        other ->
                                                isGoingRound(other) && areSewn(other.name(), piece))
                                .map(other -> found.get(other.name()))
                                .findFirst()
                        : Optional.empty();
        if (sewn.isPresent() || !mayLieOn) {
            return sewn;
        }
        Optional<WidenShare> like =
                concerned().stream()
                        .filter(other -> isGoingRound(other) && areAlike(other, piece))
                        .map(other -> found.get(other.name()))
                        .findFirst()
                        .or(() -> isOfAnyPiece() && !isTied(piece) ? Optional.empty() : outside());
        like.ifPresent(share -> guessed.add(piece.name()));
        return like;
    }

    private boolean isGoingRound(Piece piece) {
        WidenShare share = found.get(piece.name());
        return share != null && isOutside(piece) && !share.by().equals(Length.ZERO);
    }

    /** Whether it is sewn to something that is not known to stay as it is. */
    private boolean isTied(Piece piece) {
        return pattern.pieces().stream()
                .filter(other -> !other.equals(piece) && areSewn(other.name(), piece))
                .anyMatch(other -> BodyRing.ply(other) == BodyRing.ply(piece));
    }

    /** The share of the outside. */
    private Optional<WidenShare> outside() {
        return concerned().stream()
                .filter(this::isGoingRound)
                .map(piece -> found.get(piece.name()))
                .findFirst();
    }

    /** Whether they are as wide: an edge across both has one name and one length. */
    private boolean areAlike(Piece one, Piece other) {
        Map<String, Length> lengths = other.shape().edgeLengths();
        EdgeGain gain = new EdgeGain(one, widen.edges());
        return one.shape().edgeLengths().entrySet().stream()
                .anyMatch(
                        edge ->
                                lengths.containsKey(edge.getKey())
                                        && isSame(edge.getValue(), lengths.get(edge.getKey()))
                                        && Math.abs(gain.forEachMm(edge.getKey())) >= HARDLY);
    }

    private static boolean isSame(Length one, Length other) {
        return Math.abs(one.minus(other).millimetres()) <= SAME_MM;
    }
}
