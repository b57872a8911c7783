package secondbolt.fit.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.fault.Fault;
import secondbolt.fit.alter.Altered;
import secondbolt.fit.alter.PieceChanges;
import secondbolt.fit.alter.TapedGap;
import secondbolt.fit.cut.CutCopy;
import secondbolt.fit.cut.CutShape;
import secondbolt.fit.cut.CutShapes;
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

    /** The pattern altered, nothing of it cut yet; it must have passed {@link FitCheck}. */
    public static FitResult work(Pattern pattern, List<Alteration> alterations, Tape tape) {
        return work(pattern, alterations, EdgeStretch.NONE, List.of(), tape);
    }

    /**
     * The pattern altered, but for what is cut; it must have passed {@link FitCheck}.
     *
     * @param stretch how far its edges stretch
     * @param copies every copy that is cut and not spoilt
     */
    public static FitResult work(
            Pattern pattern,
            List<Alteration> alterations,
            EdgeStretch stretch,
            List<CutCopy> copies,
            Tape tape) {
        CutShapes cut = CutShapes.of(pattern, alterations, copies);
        List<Altered> altered = new ArrayList<>();
        PieceChanges changes = PieceChanges.NONE;
        SewnLengths lines = new SewnLengths(pattern.allowance());
        List<Piece> pieces = pattern.pieces();
        List<Alteration> seen = new ArrayList<>();
        for (Alteration alteration : alterations) {
            PieceChanges asked = PieceChanges.of(alteration, pattern);
            seen.add(alteration);
            changes = changes.and(asked);
            List<Piece> now =
                    kept(cut, pattern, pieces, altered(pattern, pieces, asked, changes), seen);
            altered.add(
                    new Altered(
                            alteration, changed(lines, pieces, now), asked.open(pattern), asked));
            pieces = now;
        }
        pieces = asCut(cut, pieces);
        Lengths before = Lengths.of(pattern);
        Lengths after = before.after(pattern, pieces);
        return new FitResult(
                pattern,
                altered,
                pieces,
                pattern.seams().stream()
                        .map(
                                seam ->
                                        SeamCheck.of(seam, before, after, stretch, tape)
                                                .asking(cut::isAsked))
                        .toList(),
                before,
                after,
                TapedGap.of(pattern, changes.lengthens()).stream()
                        .filter(gap -> cut.whole(gap.piece()).isEmpty())
                        .toList(),
                stretch,
                cut,
                cutSeams(pattern, cut, pieces, before, stretch, tape));
    }

    /** A piece that is cut follows only those of the alterations that it had. */
    private static List<Piece> kept(
            CutShapes cut,
            Pattern pattern,
            List<Piece> before,
            List<Piece> after,
            List<Alteration> seen) {
        List<Piece> now = new ArrayList<>();
        for (int i = 0; i < after.size(); i++) {
            Piece drawn = pattern.pieces().get(i);
            Optional<List<Alteration>> had = cut.whole(drawn).flatMap(CutShape::had);
            Piece follows = after.get(i);
            if (had.isPresent()) {
                List<Alteration> own = seen.stream().filter(had.get()::contains).toList();
                boolean isNew = own.contains(seen.get(seen.size() - 1));
                follows =
                        isNew
                                ? CutShape.changes(own, pattern).on(drawn, pattern.meanings())
                                : before.get(i);
            }
            now.add(follows);
        }
        return now;
    }

    /** With the shapes of the pieces of which no copy is left to cut. */
    private static List<Piece> asCut(CutShapes cut, List<Piece> pieces) {
        return pieces.stream()
                .map(piece -> cut.whole(piece).map(CutShape::piece).orElse(piece))
                .toList();
    }

    /**
     * The seams that do not meet once each piece of which copies are cut has their shape; pieces
     * that were cut with the same alterations are sewn to each other.
     */
    private static List<SeamCheck> cutSeams(
            Pattern pattern,
            CutShapes cut,
            List<Piece> pieces,
            Lengths before,
            EdgeStretch stretch,
            Tape tape) {
        List<SeamCheck> apart = new ArrayList<>();
        Set<List<Alteration>> sets = new LinkedHashSet<>();
        cut.shapes().forEach(shape -> shape.had().ifPresent(sets::add));
        for (List<Alteration> had : sets) {
            Map<String, Piece> cutSo = new LinkedHashMap<>();
            cut.shapes().stream()
                    .filter(shape -> shape.had().filter(had::equals).isPresent())
                    .forEach(shape -> cutSo.put(shape.name(), shape.piece()));
            List<Piece> so = pieces.stream().map(p -> cutSo.getOrDefault(p.name(), p)).toList();
            if (!so.equals(pieces)) {
                Lengths lengths = before.after(pattern, so);
                pattern.seams().stream()
                        .filter(s -> s.edges().stream().anyMatch(e -> cutSo.containsKey(e.piece())))
                        .map(seam -> SeamCheck.of(seam, before, lengths, stretch, tape))
                        .filter(SeamCheck::isBroken)
                        .forEach(apart::add);
            }
        }
        return apart;
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
            Piece before = pieces.get(i);
            now.add(
                    Fault.during(
                            drawn.name(),
                            () ->
                                    asked.concern(drawn)
                                            ? all.on(drawn, pattern.meanings())
                                            : before));
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
