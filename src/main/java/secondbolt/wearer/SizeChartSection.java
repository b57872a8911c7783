package secondbolt.wearer;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;

/**
 * The keys of the {@code pattern} section that tell of its sizes: {@code sizes}, {@code size} and
 * {@code finished}. The section's own form lists {@link #KEYS} and then calls {@link #read}.
 */
public final class SizeChartSection {
    private static final int MOST_SIZES = 40;
    private static final int LONGEST_LABEL = 20;
    private static final Form<Placed<String>> LABEL =
            Forms.placed(
                    Forms.checked(
                            Forms.nameOf(LONGEST_LABEL),
                            label -> Character.isLetterOrDigit(label.codePointAt(0)),
                            "a size such as 12, 40 or M"));

    private static final Key<List<Placed<String>>> LABELS =
            Key.required(
                    "size",
                    ListForm.of("sizes", LABEL, 1, MOST_SIZES),
                    "The labels of the sizes, from the smallest.",
                    "[12, 14, 16]");
    private static final MeasureKeys<List<Placed<Length>>> ROWS =
            MeasureKeys.of(
                    measure ->
                            ListForm.of(
                                    "lengths",
                                    Forms.placed(Forms.length(measure.range())),
                                    1,
                                    MOST_SIZES),
                    measure -> "The body's " + measure.word() + " in each size.",
                    measure -> "[" + measure.example() + "]");

    /** The body measurements of each size. */
    public static final Key<SizeChart> SIZES =
            Key.optional(
                    "sizes",
                    MapForm.of("a size chart", chartKeys(), SizeChartSection::chart),
                    "The body measurements the pattern is made for, as printed with it.",
                    "{size: [12, 14], bust: [90, 94], hip: [96, 100]}");

    private static final MeasureKeys<Placed<String>> BLEND =
            MeasureKeys.of(
                    measure -> LABEL,
                    measure -> "The size taken at the " + measure.word() + ".",
                    measure -> "16");

    /** The size she works in. */
    public static final Key<ChosenSize> SIZE =
            Key.optional(
                    "size",
                    Forms.either(
                            Forms.map(Forms.nameOf(LONGEST_LABEL), ChosenSize::of),
                            MapForm.of("a blended size", BLEND.keys(), SizeChartSection::blended)),
                    "The size you work in: a label, or blended by measurement.",
                    "{bust: 18, hip: 16}");

    private static final MeasureKeys<Length> FINISHED_MEASURES =
            MeasureKeys.of(
                    measure -> Forms.length(measure.range()),
                    measure -> "The finished garment at the " + measure.word() + ".",
                    BodyMeasure::example);

    private static final List<Key<Length>> LENGTHS =
            Stream.of(GarmentLength.values())
                    .map(
                            length ->
                                    Key.optional(
                                            length.word(),
                                            Forms.length(LengthRange.of("5 cm", "250 cm")),
                                            "The finished garment " + length.taken() + ".",
                                            length.example()))
                    .toList();

    /** What is told of it: at measurements of the body, and lengths of its own. */
    private record Finished(Map<BodyMeasure, Length> at, Map<GarmentLength, Length> lengths) {
        static final Finished NOTHING = new Finished(Map.of(), Map.of());
    }

    /** The finished garment in that size. */
    private static final Key<Finished> FINISHED =
            Key.optional(
                    "finished",
                    MapForm.of(
                            "the finished measurements",
                            Stream.concat(FINISHED_MEASURES.keys().stream(), LENGTHS.stream())
                                    .toList(),
                            SizeChartSection::finished),
                    "The finished garment in that size, as printed with the pattern or measured on"
                            + " it between its seams.",
                    "{bust: 117, hip: 119}");

    /** All three, for the form of the section. */
    public static final List<Key<?>> KEYS = List.of(SIZES, SIZE, FINISHED);

    private SizeChartSection() {}

    private static List<Key<?>> chartKeys() {
        List<Key<?>> keys = new ArrayList<>();
        keys.add(LABELS);
        keys.addAll(ROWS.keys());
        return keys;
    }

    /**
     * What the pattern section says of sizes.
     *
     * @param fields of the pattern section, whose form lists {@link #KEYS}
     * @return nothing, with the mistake told, if the size is not one of the chart's
     */
    public static Optional<PatternSizes> read(Fields fields) {
        Optional<SizeChart> chart = fields.get(SIZES);
        Optional<ChosenSize> size = fields.get(SIZE);
        if (chart.isPresent() && size.isPresent() && !isCharted(size.get(), chart.get(), fields)) {
            return Optional.empty();
        }
        Finished finished = fields.get(FINISHED).orElse(Finished.NOTHING);
        return Optional.of(new PatternSizes(chart, size, finished.at(), finished.lengths()));
    }

    private static Optional<Finished> finished(Fields fields) {
        Map<GarmentLength, Length> lengths = new LinkedHashMap<>();
        Iterator<Key<Length>> keys = LENGTHS.iterator();
        for (GarmentLength length : GarmentLength.values()) {
            fields.get(keys.next()).ifPresent(l -> lengths.put(length, l));
        }
        return Optional.of(new Finished(FINISHED_MEASURES.read(fields), lengths));
    }

    private static boolean isCharted(ChosenSize size, SizeChart chart, Fields fields) {
        List<String> labels = new ArrayList<>(size.blended().values());
        size.one().ifPresent(labels::add);
        Optional<String> strange =
                labels.stream().filter(label -> !chart.sizes().contains(label)).findFirst();
        strange.ifPresent(
                label ->
                        fields.tell(
                                new Trouble(
                                                fields.place(SIZE),
                                                "size `" + label + "`, which is not in `sizes`",
                                                "one of " + quoted(chart.sizes()))
                                        .ofName(label, chart.sizes())));
        return strange.isEmpty();
    }

    private static String quoted(List<String> labels) {
        return labels.stream().map(l -> "`" + l + "`").collect(Collectors.joining(", "));
    }

    private static Optional<ChosenSize> blended(Fields fields) {
        Map<BodyMeasure, String> labels = new LinkedHashMap<>();
        BLEND.read(fields).forEach((measure, label) -> labels.put(measure, label.value()));
        if (labels.isEmpty()) {
            fields.tell(fields.place(), "a blended size of nothing", "`" + SIZE.example() + "`");
            return Optional.empty();
        }
        return Optional.of(ChosenSize.blended(labels));
    }

    private static Optional<SizeChart> chart(Fields fields) {
        List<Placed<String>> labels = fields.require(LABELS);
        boolean holds = labelsDiffer(labels, fields);
        Map<BodyMeasure, List<Length>> rows = new LinkedHashMap<>();
        for (Map.Entry<BodyMeasure, List<Placed<Length>>> row : ROWS.read(fields).entrySet()) {
            holds &= rowHolds(row.getKey(), row.getValue(), labels, fields);
            rows.put(row.getKey(), row.getValue().stream().map(Placed::value).toList());
        }
        return holds
                ? Optional.of(new SizeChart(labels.stream().map(Placed::value).toList(), rows))
                : Optional.empty();
    }

    private static boolean labelsDiffer(List<Placed<String>> labels, Fields fields) {
        for (int i = 1; i < labels.size(); i++) {
            String label = labels.get(i).value();
            if (labels.subList(0, i).stream().anyMatch(l -> l.value().equals(label))) {
                fields.tell(
                        labels.get(i).place(),
                        "size `" + label + "` twice",
                        "each size once, from the smallest");
                return false;
            }
        }
        return true;
    }

    private static boolean rowHolds(
            BodyMeasure measure,
            List<Placed<Length>> row,
            List<Placed<String>> labels,
            Fields fields) {
        if (row.size() != labels.size()) {
            fields.tell(
                    ROWS.byMeasure().get(measure),
                    "`" + measure.word() + "` of " + Plural.of(row.size(), "value"),
                    Plural.of(labels.size(), "value") + ", one for each size");
            return false;
        }
        for (int i = 1; i < row.size(); i++) {
            Length before = row.get(i - 1).value();
            if (row.get(i).value().isShorterThan(before)) {
                fields.tell(
                        row.get(i).place(),
                        measure.word()
                                + " "
                                + fields.tape().print(row.get(i).value())
                                + " in size "
                                + labels.get(i).value()
                                + ", less than in the smaller size "
                                + labels.get(i - 1).value(),
                        "at least " + fields.tape().print(before));
                return false;
            }
        }
        return true;
    }
}
