package secondbolt.fit;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.measure.Length;

/**
 * Which edges a lengthen or shorten line of a piece known by tape crosses: those the maker says.
 *
 * <p>Where she does not say, an edge is taken to cross only if its name is that of a lengthwise
 * edge, such as {@code side} or {@code centre front}, and it is too long to lie wholly above or
 * wholly below the line; and only if it is not longer than the box is from corner to corner. Of any
 * other edge it is not known. Derived: a lengthwise edge that fits on neither side of the line lies
 * on both.
 *
 * @param crossing the edges that follow the line
 * @param open the edges of which it is not known; none if she says
 * @param isTold whether she says
 */
record TapedLine(Set<String> crossing, Set<String> open, boolean isTold) {
    /** One of these makes the name of an edge lengthwise, if no other word speaks against it. */
    private static final Set<String> LENGTHWISE =
            Set.of(
                    "side",
                    "sides",
                    "left",
                    "right",
                    "inseam",
                    "outseam",
                    "underarm",
                    "fold",
                    "selvage",
                    "selvedge");

    /** Two of these together do, one from each: {@code centre front}, {@code inside leg}. */
    private static final List<List<Set<String>>> PAIRS =
            List.of(
                    List.of(Set.of("centre", "center"), Set.of("front", "back")),
                    List.of(
                            Set.of("inside", "inner", "outside", "outer"),
                            Set.of("leg", "sleeve", "arm")));

    /** These may stand beside them; any other word, as in {@code left armhole}, leaves it open. */
    private static final Set<String> BESIDE = Set.of("front", "back", "seam", "seams", "edge");

    static TapedLine of(Piece piece, PieceShape.Taped taped, String line) {
        List<String> told = taped.crosses().get(line);
        if (told != null) {
            return new TapedLine(new LinkedHashSet<>(told), Set.of(), true);
        }
        Set<String> crossing = new LinkedHashSet<>();
        Set<String> open = new LinkedHashSet<>();
        for (Map.Entry<String, Length> edge : taped.edges().entrySet()) {
            boolean lengthwise = isLengthwise(piece, edge.getKey());
            boolean crosses =
                    lengthwise && mustCross(taped, edge.getValue(), piece.lines().get(line));
            (crosses ? crossing : open).add(edge.getKey());
        }
        return new TapedLine(crossing, open, false);
    }

    /** The lines of a taped piece that an alteration really moves, each with its edges. */
    static Map<String, TapedLine> moved(Piece piece, List<Alteration.Lengthen> lengthens) {
        Map<String, TapedLine> moved = new LinkedHashMap<>();
        Optional<PieceShape.Taped> taped = piece.shape().asTaped();
        for (LengthenField.Cut cut : PieceAlteration.field(piece, lengthens).cuts()) {
            if (taped.isPresent() && cut.byMm() != 0) {
                moved.put(cut.name(), of(piece, taped.get(), cut.name()));
            }
        }
        return moved;
    }

    private static boolean mustCross(PieceShape.Taped taped, Length edge, Length at) {
        Length larger = at.orLonger(taped.along().minus(at));
        double cornerMm = Math.hypot(taped.across().millimetres(), taped.along().millimetres());
        return edge.isLongerThan(larger) && edge.millimetres() <= cornerMm;
    }

    /** Whether an edge runs down the piece, as its name says or because it lies on the fold. */
    static boolean isLengthwise(Piece piece, String edge) {
        boolean isOnTheFold = piece.fold().filter(edge::equals).isPresent();
        if (isOnTheFold && piece.grain() == Piece.Grain.ALONG) {
            return true;
        }
        Set<String> words = new LinkedHashSet<>(Arrays.asList(edge.split("[ -]+", -1)));
        Set<String> used = new LinkedHashSet<>(BESIDE);
        used.addAll(LENGTHWISE);
        boolean lengthwise = words.stream().anyMatch(LENGTHWISE::contains);
        for (List<Set<String>> pair : PAIRS) {
            if (pair.stream().allMatch(some -> words.stream().anyMatch(some::contains))) {
                lengthwise = true;
                pair.forEach(used::addAll);
            }
        }
        return lengthwise && used.containsAll(words);
    }
}
