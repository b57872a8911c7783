package secondbolt.fit.size;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.file.value.Quoted;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.ChosenSize;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What the maker should know of several sizes in one garment. */
final class BlendFindings {
    private static final Set<BodyMeasure> BLENDED =
            EnumSet.of(BodyMeasure.BUST, BodyMeasure.CHEST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private static final String BLANK = "…";

    private BlendFindings() {}

    /** The girths of the trunk that chart and wearer share, where they point to several sizes. */
    static Optional<Finding> nearest(SizeInput input, SizeChoice choice) {
        Map<BodyMeasure, String> girths = new LinkedHashMap<>(choice.nearest());
        girths.keySet().retainAll(BLENDED);
        boolean blended = input.sizes().size().filter(s -> s.one().isEmpty()).isPresent();
        boolean byHighBust =
                choice.start().filter(s -> s.by() == BodyMeasure.HIGH_BUST).isPresent();
        if (blended || byHighBust || girths.values().stream().distinct().count() < 2) {
            return Optional.empty();
        }
        ChosenSize size = ChosenSize.blended(girths);
        return Optional.of(
                finding(
                        "size-blend-possible",
                        Level.NOTE,
                        "The nearest size is not the same all over: "
                                + size.words()
                                + ". If all of them are in the pattern, they can be blended instead"
                                + " of altered: "
                                + String.join(" ", size.redraw(Suggestions.sideSeam(input))),
                        "Write `size: {"
                                + girths.entrySet().stream()
                                        .map(
                                                e ->
                                                        e.getKey().word()
                                                                + ": "
                                                                + Quoted.of(e.getValue()))
                                        .collect(Collectors.joining(", "))
                                + "}`, or keep one size and alter."));
    }

    /** What the chart has a row for, but a blend does not say the size of. */
    static Optional<Finding> leftOut(
            SizeInput input, ChosenSize size, Optional<SizeChoice> choice) {
        List<BodyMeasure> open =
                input.sizes().chart().stream()
                        .flatMap(c -> Stream.of(BodyMeasure.values()).filter(c::has))
                        .filter(measure -> size.at(measure).isEmpty())
                        .toList();
        if (open.isEmpty()) {
            return Optional.empty();
        }
        String names = open.stream().map(BodyMeasure::word).collect(Collectors.joining(", "));
        Map<BodyMeasure, String> whole = new LinkedHashMap<>(size.blended());
        Map<BodyMeasure, String> nearest = choice.map(SizeChoice::nearest).orElse(Map.of());
        open.forEach(measure -> whole.put(measure, nearest.getOrDefault(measure, BLANK)));
        return Optional.of(
                finding(
                        "size-blend-incomplete",
                        Level.CAUTION,
                        "The blend, "
                                + size.words()
                                + ", does not say which size the "
                                + names
                                + (open.size() == 1 ? " is" : " are")
                                + ": what the pattern is for there is left open, and no alteration"
                                + " follows from it.",
                        "Write it as well, as in `size: "
                                + flow(whole)
                                + "`"
                                + (open.stream().anyMatch(nearest::containsKey)
                                        ? ", with the size nearest to the wearer."
                                        : ".")));
    }

    private static Finding finding(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Whole("size"), level, text, remedy);
    }

    /** A size, or what she has to fill in. */
    private static String written(String size) {
        return size.equals(BLANK) ? BLANK : Quoted.of(size);
    }

    private static String flow(Map<BodyMeasure, String> sizes) {
        return Stream.of(BodyMeasure.values())
                .filter(sizes::containsKey)
                .map(measure -> measure.word() + ": " + written(sizes.get(measure)))
                .collect(Collectors.joining(", ", "{", "}"));
    }
}
