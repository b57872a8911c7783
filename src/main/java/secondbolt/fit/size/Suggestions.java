package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.wearer.BodyMeasure;

/**
 * The alterations that follow from the difference between the body and the size it is cut in;
 * differences that are not {@link SizeInput#WORTH_IT} are left.
 */
final class Suggestions {
    /** The measurements that an alteration may follow from. */
    static final List<BodyMeasure> COMPARED =
            Stream.concat(BodyDifferences.WIDTHS.stream(), LengthSuggestions.lengthNames().stream())
                    .toList();

    private Suggestions() {}

    static List<SizeResult.Suggestion> of(
            SizeInput input, List<SizeResult.Measurement> measurements) {
        BodyDifferences differences = new BodyDifferences(input, measurements);
        SuggestionWords words = new SuggestionWords(differences);
        List<SizeResult.Suggestion> all =
                new ArrayList<>(new LengthSuggestions(differences, words).all());
        bust(differences, words).ifPresent(all::add);
        all.addAll(new WidthSuggestions(differences, words).all());
        return List.copyOf(all);
    }

    /** The side seam in words, by the names it has in the pattern. */
    static String sideSeam(SizeInput input) {
        List<String> sides = input.pieces().sides();
        String names = sides.stream().map(s -> "`" + s + "`").collect(Collectors.joining(", "));
        return sides.isEmpty()
                ? "the side seam"
                : (sides.size() == 1 ? "the seam " : "the seams ") + names;
    }

    /** Room over a full bust, see {@link SizeChoice#FULL_BUST}, which no line of the file makes. */
    private static Optional<SizeResult.Suggestion> bust(
            BodyDifferences differences, SuggestionWords words) {
        return differences.enlargesTheBust()
                ? Optional.of(
                        new SizeResult.Suggestion(
                                BodyMeasure.BUST,
                                differences.total(BodyMeasure.BUST),
                                words.why(BodyMeasure.BUST)
                                        + " It is the bust that is full, not the back: slash the"
                                        + " fronts through the bust point and spread each by half"
                                        + " of that, and redraw the front piece so; the side seam"
                                        + " stays.",
                                Optional.empty()))
                : Optional.empty();
    }
}
