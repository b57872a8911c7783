package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.fit.size.BodyMeasure;
import secondbolt.fit.size.SizeCalculation;
import secondbolt.measure.Length;

/**
 * How far down the pieces bust, waist and hip lie, as far as marks or lines of that name tell:
 * {@code bust}, {@code bust point}, {@code bust line} and so on, on a drawn piece with a side.
 */
final class BodyLevels {
    private static final List<BodyMeasure> MEASURES =
            List.of(BodyMeasure.BUST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private BodyLevels() {}

    /** From the top of the first piece that tells, after what was lengthened. */
    static Map<BodyMeasure, Length> of(List<Piece> pieces) {
        Map<BodyMeasure, Length> levels = new LinkedHashMap<>();
        for (BodyMeasure measure : MEASURES) {
            pieces.stream()
                    .filter(BodyLevels::hasSide)
                    .flatMap(piece -> level(piece, measure.word()).stream())
                    .findFirst()
                    .ifPresent(level -> levels.put(measure, level));
        }
        return levels;
    }

    private static boolean hasSide(Piece piece) {
        return piece.shape().asDrawn().isPresent()
                && piece.shape().edgeLengths().keySet().stream().anyMatch(SizeCalculation::isSide);
    }

    private static Optional<Length> level(Piece piece, String word) {
        double topMm = PieceAlteration.topMm(piece);
        Stream<Length> marks =
                piece.features().marks().stream()
                        .filter(mark -> isNamed(mark.what(), word))
                        .map(mark -> Length.ofComputedMillimetres(mark.at().yMm() - topMm));
        Stream<Length> lines =
                piece.lines().entrySet().stream()
                        .filter(line -> isNamed(line.getKey(), word))
                        .map(Map.Entry::getValue);
        return Stream.concat(marks, lines).findFirst();
    }

    private static boolean isNamed(String name, String word) {
        return Stream.of("", " point", " line", " level").anyMatch(end -> name.equals(word + end));
    }
}
