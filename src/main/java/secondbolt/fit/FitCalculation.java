package secondbolt.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** Alters every piece that an alteration concerns, and checks every seam before and after. */
public final class FitCalculation {
    /** Computed lengths that differ by less are the same. */
    private static final Length SAME = Length.ofMillimetres(1).dividedBy(100);

    private FitCalculation() {}

    /** The pattern altered; it must have passed {@link FitCheck}. */
    public static FitResult work(Pattern pattern, List<Alteration> alterations, Tape tape) {
        List<Piece> altered = alter(pattern, alterations);
        Lengths before = new Lengths(pattern, pattern.pieces());
        Lengths after = new Lengths(pattern, altered);
        List<SeamCheck> seams =
                pattern.seams().stream()
                        .map(seam -> SeamCheck.of(seam, before, after, tape))
                        .toList();
        return new FitResult(pattern, alterations, altered, seams, followers(pattern, alterations));
    }

    /** All pieces after these alterations. */
    static List<Piece> alter(Pattern pattern, List<Alteration> alterations) {
        List<Alteration.Lengthen> lengthens = new ArrayList<>();
        List<WidenShare> shares = new ArrayList<>();
        sort(pattern, alterations, lengthens, shares);
        return pattern.pieces().stream()
                .map(piece -> PieceAlteration.apply(piece, lengthens, shares, pattern.meanings()))
                .toList();
    }

    /** One piece of a pattern after these alterations, whatever is marked on it. */
    static Piece alterOne(Pattern pattern, List<Alteration> alterations, Piece piece) {
        List<Alteration.Lengthen> lengthens = new ArrayList<>();
        List<WidenShare> shares = new ArrayList<>();
        sort(pattern, alterations, lengthens, shares);
        return PieceAlteration.apply(piece, lengthens, shares, pattern.meanings());
    }

    /** The changes of length among them, in order. */
    static List<Alteration.Lengthen> lengthens(Pattern pattern, List<Alteration> alterations) {
        List<Alteration.Lengthen> lengthens = new ArrayList<>();
        sort(pattern, alterations, lengthens, new ArrayList<>());
        return lengthens;
    }

    private static void sort(
            Pattern pattern,
            List<Alteration> alterations,
            List<Alteration.Lengthen> lengthens,
            List<WidenShare> shares) {
        for (Alteration alteration : alterations) {
            alteration.accept(
                    new Alteration.Visitor<Boolean>() {
                        @Override
                        public Boolean lengthen(Alteration.Lengthen lengthen) {
                            return lengthens.add(lengthen);
                        }

                        @Override
                        public Boolean widen(Alteration.Widen widen) {
                            return shares.addAll(WidenShare.of(widen, pattern));
                        }
                    });
        }
    }

    /** What each alteration changes beyond the ones before it. */
    private static List<FitResult.Follower> followers(
            Pattern pattern, List<Alteration> alterations) {
        List<FitResult.Follower> followers = new ArrayList<>();
        List<Piece> before = pattern.pieces();
        for (int i = 0; i < alterations.size(); i++) {
            List<Piece> after = alter(pattern, alterations.subList(0, i + 1));
            for (int p = 0; p < before.size(); p++) {
                followers.addAll(changed(alterations.get(i), before.get(p), after.get(p)));
            }
            before = after;
        }
        return followers;
    }

    private static List<FitResult.Follower> changed(
            Alteration alteration, Piece before, Piece after) {
        List<FitResult.Follower> changed = new ArrayList<>();
        if (before.shape().equals(after.shape())) {
            return changed;
        }
        Map<String, Length> now = after.shape().edgeLengths();
        before.shape()
                .edgeLengths()
                .forEach(
                        (edge, was) -> {
                            Length is = now.get(edge);
                            if (is.minus(was).size().isLongerThan(SAME)) {
                                changed.add(
                                        new FitResult.Follower(
                                                alteration,
                                                new PieceEdge(before.name(), edge),
                                                was,
                                                is));
                            }
                        });
        return changed;
    }
}
