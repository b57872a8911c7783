package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.fit.alter.PieceAlteration;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.piece.Piece;
import secondbolt.wearer.BodyMeasure;

/**
 * How far down the pieces bust, waist and hip lie, as far as marks or lines of that name tell:
 * {@code bust}, {@code bust point}, {@code bust line} and so on, or lines that the maker says it
 * of; on a drawn piece with a side.
 */
final class BodyLevels {
    private static final List<BodyMeasure> MEASURES =
            List.of(BodyMeasure.BUST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private BodyLevels() {}

    /** From the top of the first piece that tells, after what was lengthened. */
    static Map<BodyMeasure, Length> of(List<Piece> pieces, Meanings meanings) {
        Map<BodyMeasure, Length> levels = new LinkedHashMap<>();
        for (BodyMeasure measure : MEASURES) {
            pieces.stream()
                    .filter(piece -> hasSide(piece, meanings))
                    .flatMap(piece -> level(piece, measure.word(), meanings).stream())
                    .findFirst()
                    .ifPresent(level -> levels.put(measure, level));
        }
        return levels;
    }

    private static boolean hasSide(Piece piece, Meanings meanings) {
        return piece.shape().asDrawn().isPresent() && meanings.has(piece, Serves.SIDE);
    }

    private static Optional<Length> level(Piece piece, String word, Meanings meanings) {
        double topMm = PieceAlteration.topMm(piece);
        Stream<Length> marks =
                piece.features().marks().stream()
                        .filter(mark -> isNamed(mark.what(), word))
                        .map(mark -> Length.ofComputedMillimetres(mark.at().yMm() - topMm));
        Stream<Length> lines =
                piece.lines().entrySet().stream()
                        .filter(line -> isLevel(line.getKey(), word, meanings))
                        .map(Map.Entry::getValue);
        return Stream.concat(marks, lines).findFirst();
    }

    /** What the maker says of a line goes before its name. */
    private static boolean isLevel(String line, String word, Meanings meanings) {
        return Optional.ofNullable(meanings.told().get(line))
                .filter(Serves::isOfALine)
                .map(serves -> serves.word().equals(word))
                .orElseGet(() -> isNamed(line, word));
    }

    private static boolean isNamed(String name, String word) {
        return Stream.of("", " point", " line", " level").anyMatch(end -> name.equals(word + end));
    }
}
