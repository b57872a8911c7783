package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Open;

/** What the size cannot be worked out for, and the cheapest way to find out. */
final class SizeGaps {
    private final SizeInput input;
    private final List<Open> open = new ArrayList<>();

    private SizeGaps(SizeInput input) {
        this.input = input;
    }

    static List<Open> of(SizeInput input) {
        SizeGaps gaps = new SizeGaps(input);
        gaps.wearer();
        gaps.pattern();
        gaps.measurements();
        return List.copyOf(gaps.open);
    }

    private void wearer() {
        if (input.wearer().isEmpty()) {
            open.add(
                    new Open(
                            "who wears it",
                            "the size, the ease and the alterations that follow from the body;"
                                    + " cautions that go by age",
                            "Write `wearer` with `age` and `measurements`."));
        } else if (input.wearer().flatMap(Wearer::age).isEmpty()) {
            open.add(
                    new Open(
                            "the wearer's age",
                            "whether the ease is enough, for the published figures are for grown"
                                    + " people; cautions that go by age",
                            "Write `age: adult`, or the completed years."));
        }
    }

    private void pattern() {
        if (input.sizes().chart().isEmpty()) {
            open.add(
                    new Open(
                            "the pattern's size chart",
                            "the size to start from, and the alterations that follow",
                            "Copy the body measurements printed with the pattern; write them under"
                                    + " `pattern`, as `sizes`."));
        }
        if (input.sizes().finished().isEmpty() && !areOnPieces()) {
            open.add(
                    new Open(
                            "the finished garment's measurements",
                            "the ease in it",
                            "Copy them from the pattern, or measure its pieces from seam to seam"
                                    + " without allowances and darts, all round; write them under"
                                    + " `pattern`, as `finished`."));
        }
    }

    /** Whether the pieces tell every girth of the trunk that is compared, and one at least. */
    private boolean areOnPieces() {
        List<BodyMeasure> trunk =
                BodyDifferences.WIDTHS.stream().filter(m -> input.body(m).isPresent()).toList();
        return !trunk.isEmpty() && trunk.stream().allMatch(input::isMeasuredOnPieces);
    }

    private void measurements() {
        if (input.wearer().isEmpty()) {
            return;
        }
        for (BodyMeasure measure : BodyMeasure.values()) {
            if (input.body(measure).isEmpty() && isWanted(measure)) {
                open.add(
                        new Open(
                                "the wearer's " + measure.word(),
                                blocks(measure),
                                measure.measureIt(input.tape())));
            }
        }
    }

    private boolean isWanted(BodyMeasure measure) {
        boolean saidUnknown = input.wearer().orElseThrow().measurements().containsKey(measure);
        boolean decides =
                measure == BodyMeasure.HIGH_BUST
                        && input.isMeasured(BodyMeasure.BUST)
                        && input.body(BodyMeasure.BUST).isPresent();
        return saidUnknown || decides || input.isMeasured(measure);
    }

    private String blocks(BodyMeasure measure) {
        if (measure == BodyMeasure.HIGH_BUST) {
            return "whether the size goes by the bust or by the high bust";
        }
        Optional<String> charted =
                input.sizes()
                        .chart()
                        .filter(c -> c.has(measure))
                        .map(c -> "the size and the alterations by it");
        Optional<String> finished =
                Optional.ofNullable(input.sizes().finished().get(measure))
                        .map(f -> "the ease there");
        return charted.map(c -> finished.map(f -> c + ", and " + f).orElse(c))
                .or(() -> finished)
                .orElse("what goes by it");
    }
}
