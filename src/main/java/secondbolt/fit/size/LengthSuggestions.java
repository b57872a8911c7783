package secondbolt.fit.size;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.value.Quoted;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Sentence;

/**
 * What is lengthened or shortened to follow the body.
 *
 * <p>Source: Central Washington University costume text, ch. 17: along the printed line.
 *
 * @param differences between body and size
 * @param words to tell it in
 */
record LengthSuggestions(BodyDifferences differences, SuggestionWords words) {
    private static final Map<BodyMeasure, Lengthened> LENGTHS = lengths();

    /**
     * Where a length is altered.
     *
     * @param lines what such a line serves, the usual first
     * @param where on which pieces it is drawn, and where
     */
    private record Lengthened(List<Serves> lines, String where) {}

    private static Map<BodyMeasure, Lengthened> lengths() {
        Map<BodyMeasure, Lengthened> lengths = new LinkedHashMap<>();
        lengths.put(
                BodyMeasure.BACK_WAIST_LENGTH,
                new Lengthened(
                        List.of(Serves.BODY, Serves.WAIST),
                        "every piece that runs from the shoulder to the waist or past it, fronts,"
                                + " backs, their facings and linings, between armhole and waist"));
        lengths.put(
                BodyMeasure.ARM_LENGTH,
                new Lengthened(
                        List.of(Serves.SLEEVE),
                        "the sleeve and its lining, between armhole and wrist"));
        lengths.put(
                BodyMeasure.CROTCH_DEPTH,
                new Lengthened(
                        List.of(Serves.CROTCH_DEPTH),
                        "the front and back of the trousers, their pockets and facings, between"
                                + " waist and crotch"));
        lengths.put(
                BodyMeasure.INSIDE_LEG,
                new Lengthened(
                        List.of(Serves.LEG),
                        "the front and back of the trousers and their linings, between crotch and"
                                + " hem"));
        return lengths;
    }

    /** The measurement that a lengthen or shorten line alters, if any is compared there. */
    static Optional<BodyMeasure> alteredAt(Serves line) {
        return LENGTHS.entrySet().stream()
                .filter(length -> length.getValue().lines().contains(line))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    static Set<BodyMeasure> lengthNames() {
        return Collections.unmodifiableSet(LENGTHS.keySet());
    }

    /** One for each length that differs by as much as is worth it. */
    List<SizeResult.Suggestion> all() {
        return LENGTHS.entrySet().stream()
                .flatMap(length -> one(length.getKey(), length.getValue()).stream())
                .toList();
    }

    private Optional<SizeResult.Suggestion> one(BodyMeasure measure, Lengthened how) {
        SizeInput input = differences.input();
        Length by = differences.needed(measure).orElse(Length.ZERO).roundedTo(input.tape().mark());
        if (!differences.isWorthIt(by)) {
            return Optional.empty();
        }
        String verb = by.isNegative() ? "shorten" : "lengthen";
        Optional<String> line = Optional.ofNullable(input.pieces().lines().get(measure));
        String name = line.orElse(how.lines().get(0).word());
        String action =
                line.isPresent()
                        ? Sentence.capital(verb)
                                + " at the line `"
                                + name
                                + "`, on all pieces that carry it."
                        : "No piece has a line for it yet: draw one named `"
                                + name
                                + "` across "
                                + how.where()
                                + " (`lines: {"
                                + name
                                + ": …}`, from the piece's top), then paste.";
        return Optional.of(
                new SizeResult.Suggestion(
                        measure,
                        by,
                        words.why(measure) + " " + action,
                        Optional.of(
                                "- {"
                                        + verb
                                        + ": "
                                        + Quoted.of(name)
                                        + ", by: "
                                        + words.written(by)
                                        + "}")));
    }
}
