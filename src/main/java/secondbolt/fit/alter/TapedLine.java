package secondbolt.fit.alter;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Meaning;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;

/**
 * Which edges a lengthen or shorten line of a piece known by tape crosses: those the maker says.
 *
 * <p>Where she does not say, an edge is taken to cross only if it serves as a lengthwise edge, such
 * as {@code side} or {@code centre front}, and it is too long to lie wholly above or wholly below
 * the line; and only if it is not longer than the box is from corner to corner. Of any other edge
 * it is not known. Derived: a lengthwise edge that fits on neither side of the line lies on both.
 *
 * @param crossing the edges that follow the line
 * @param open the edges of which it is not known; none if she says
 * @param isTold whether she says
 */
public record TapedLine(Set<String> crossing, Set<String> open, boolean isTold) {
    /** Names of edges that say how they run, not what they serve. */
    private static final Set<String> LENGTHWISE =
            Set.of("left", "right", "fold", "selvage", "selvedge");

    static TapedLine of(Piece piece, PieceShape.Taped taped, String line, Meanings meanings) {
        List<String> told = taped.crosses().get(line);
        if (told != null) {
            return new TapedLine(new LinkedHashSet<>(told), Set.of(), true);
        }
        Set<String> crossing = new LinkedHashSet<>();
        Set<String> open = new LinkedHashSet<>();
        for (Map.Entry<String, Length> edge : taped.edges().entrySet()) {
            boolean lengthwise = isLengthwise(piece, edge.getKey(), meanings);
            boolean crosses =
                    lengthwise && mustCross(taped, edge.getValue(), piece.lines().get(line));
            (crosses ? crossing : open).add(edge.getKey());
        }
        return new TapedLine(crossing, open, false);
    }

    /** The lines of a taped piece that an alteration really moves, each with its edges. */
    static Map<String, TapedLine> moved(
            Piece piece, List<Alteration.Lengthen> lengthens, Meanings meanings) {
        Map<String, TapedLine> moved = new LinkedHashMap<>();
        Optional<PieceShape.Taped> taped = piece.shape().asTaped();
        for (LengthenField.Cut cut : PieceAlteration.field(piece, lengthens).cuts()) {
            if (taped.isPresent() && cut.byMm() != 0) {
                moved.put(cut.name(), of(piece, taped.get(), cut.name(), meanings));
            }
        }
        return moved;
    }

    private static boolean mustCross(PieceShape.Taped taped, Length edge, Length at) {
        Length larger = at.orLonger(taped.along().minus(at));
        double cornerMm = Math.hypot(taped.across().millimetres(), taped.along().millimetres());
        return edge.isLongerThan(larger) && edge.millimetres() <= cornerMm;
    }

    /**
     * Whether an edge runs down the piece, as what it serves or its name says, or because it lies
     * on the fold.
     */
    public static boolean isLengthwise(Piece piece, String edge, Meanings meanings) {
        boolean isOnTheFold = piece.fold().filter(edge::equals).isPresent();
        if (isOnTheFold && piece.grain() == Piece.Grain.ALONG) {
            return true;
        }
        return meanings.edge(piece.name(), edge)
                .filter(meaning -> meaning.how() != Meaning.How.NAMED)
                // A hem may run any way.
                .filter(meaning -> meaning.serves() != Serves.HEM)
                .map(meaning -> meaning.serves().isLengthwise())
                .orElseGet(() -> isLengthwise(edge));
    }

    /** A name says it only if it has no other word, as {@code side pleat} has. */
    private static boolean isLengthwise(String edge) {
        return LENGTHWISE.containsAll(Serves.strangeWords(edge))
                && Serves.edgeNamed(edge)
                        .map(Serves::isLengthwise)
                        .orElseGet(
                                () ->
                                        Stream.of(
                                                        edge.toLowerCase(Locale.ROOT)
                                                                .split("[\\s_-]+", -1))
                                                .anyMatch(LENGTHWISE::contains));
    }
}
