package secondbolt.fit.cut;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.fit.alter.PieceChanges;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * The shapes in which pieces are cut.
 *
 * <p>A piece that the alterations as written do not change is not asked about: it has one shape,
 * whether it was cut before them or after.
 *
 * @param shapes of each piece that is cut, one for each set of alterations it was cut with
 */
public record CutShapes(List<CutShape> shapes) {
    /** Nothing is cut. */
    public static final CutShapes NONE = new CutShapes(List.of());

    /** Copies the list. */
    public CutShapes {
        shapes = List.copyOf(shapes);
    }

    /**
     * The shapes of what is cut.
     *
     * @param alterations as they are written now
     * @param cut every copy; one that names no piece of the pattern is passed over
     */
    public static CutShapes of(Pattern pattern, List<Alteration> alterations, List<CutCopy> cut) {
        if (cut.isEmpty()) {
            return NONE;
        }
        Map<List<Alteration>, PieceChanges> changes = new HashMap<>();
        List<CutShape> shapes = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Map<Optional<List<Alteration>>, Integer> copies = new LinkedHashMap<>();
            Piece now = with(alterations, piece, pattern, changes);
            boolean isChanged = !now.shape().equals(piece.shape());
            for (CutCopy copy : cut) {
                if (copy.piece().equals(piece.name())) {
                    Optional<List<Alteration>> had =
                            isChanged ? copy.had() : copy.had().or(() -> Optional.of(alterations));
                    copies.merge(had, 1, Integer::sum);
                }
            }
            copies.forEach(
                    (had, count) ->
                            shapes.add(
                                    new CutShape(
                                            had,
                                            with(had.orElse(List.of()), piece, pattern, changes),
                                            count)));
        }
        return new CutShapes(shapes);
    }

    /** What alterations ask of the pattern is the same for every piece of it. */
    private static Piece with(
            List<Alteration> alterations,
            Piece piece,
            Pattern pattern,
            Map<List<Alteration>, PieceChanges> changes) {
        return changes.computeIfAbsent(alterations, any -> CutShape.changes(any, pattern))
                .on(piece, pattern.meanings());
    }

    /** The one shape of a piece of which no copy is left to cut; nothing of any other. */
    public Optional<CutShape> whole(Piece piece) {
        List<CutShape> own = of(piece.name());
        int copies = own.stream().mapToInt(CutShape::copies).sum();
        boolean isOne =
                own.stream().noneMatch(CutShape::isAsked)
                        && own.stream().map(shape -> shape.piece().shape()).distinct().count() == 1;
        int wanted = piece.cuts().values().stream().mapToInt(Piece.Cut::count).sum();
        return isOne && copies >= wanted ? Optional.of(own.get(0)) : Optional.empty();
    }

    /** The shapes of one piece. */
    public List<CutShape> of(String piece) {
        return shapes.stream().filter(shape -> shape.name().equals(piece)).toList();
    }

    /** Whether it must be asked which alterations a piece had. */
    public boolean isAsked(String piece) {
        return of(piece).stream().anyMatch(CutShape::isAsked);
    }
}
