package secondbolt.fit.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import secondbolt.fit.alter.Altered;
import secondbolt.fit.alter.PieceChanges;
import secondbolt.fit.alter.TapedGap;
import secondbolt.fit.seam.EdgeStretch;
import secondbolt.fit.seam.Lengths;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.fit.seam.SewnLengths;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/** Alters every piece that an alteration concerns, and checks every seam before and after. */
public final class FitCalculation {
    /** Computed lengths that differ by less are the same. */
    private static final Length SAME = Length.ofMillimetres(1).dividedBy(100);

    private FitCalculation() {}

    /** The pattern altered; it must have passed {@link FitCheck}. */
    public static FitResult work(Pattern pattern, List<Alteration> alterations, Tape tape) {
        return work(pattern, alterations, EdgeStretch.NONE, tape);
    }

    /**
     * The same of cloth that stretches.
     *
     * @param stretch how far its edges stretch
     */
    public static FitResult work(
            Pattern pattern, List<Alteration> alterations, EdgeStretch stretch, Tape tape) {
        List<Altered> altered = new ArrayList<>();
        PieceChanges changes = PieceChanges.NONE;
        SewnLengths lines = new SewnLengths(pattern.allowance());
        List<Piece> pieces = pattern.pieces();
        for (Alteration alteration : alterations) {
            PieceChanges asked = PieceChanges.of(alteration, pattern);
            changes = changes.and(asked);
            List<Piece> now = altered(pattern, pieces, asked, changes);
            altered.add(
                    new Altered(
                            alteration, changed(lines, pieces, now), asked.open(pattern), asked));
            pieces = now;
        }
        Lengths before = Lengths.of(pattern);
        Lengths after = before.after(pattern, pieces);
        return new FitResult(
                pattern,
                altered,
                pieces,
                pattern.seams().stream()
                        .map(seam -> SeamCheck.of(seam, before, after, stretch, tape))
                        .toList(),
                before,
                after,
                TapedGap.of(pattern, changes.lengthens()),
                stretch);
    }

    /**
     * The pieces with one alteration more. All changes of length come before those of width, so a
     * piece that it concerns is altered anew from what is drawn.
     */
    private static List<Piece> altered(
            Pattern pattern, List<Piece> pieces, PieceChanges asked, PieceChanges all) {
        List<Piece> now = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece drawn = pattern.pieces().get(i);
            now.add(asked.concern(drawn) ? all.on(drawn, pattern.meanings()) : pieces.get(i));
        }
        return now;
    }

    private static List<Altered.Change> changed(
            SewnLengths lines, List<Piece> before, List<Piece> after) {
        List<Altered.Change> changed = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            changed.addAll(changed(lines, before.get(i), after.get(i)));
        }
        return changed;
    }

    private static List<Altered.Change> changed(SewnLengths lines, Piece before, Piece after) {
        List<Altered.Change> changed = new ArrayList<>();
        if (before.shape().equals(after.shape())) {
            return changed;
        }
        Map<String, Length> now = lines.of(after);
        lines.of(before)
                .forEach(
                        (edge, was) -> {
                            Length is = now.get(edge);
                            if (is.minus(was).size().isLongerThan(SAME)) {
                                changed.add(
                                        new Altered.Change(
                                                new PieceEdge(before.name(), edge), was, is));
                            }
                        });
        return changed;
    }
}
