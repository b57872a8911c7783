package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.ChosenSize;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;

/** Lays the wearer's measurements beside the pattern's sizes. */
public final class SizeCalculation {
    private SizeCalculation() {}

    /** Works it out; what an input is missing for is left out and named among the open. */
    public static SizeResult work(SizeInput input) {
        Optional<SizeChoice> choice =
                input.sizes()
                        .chart()
                        .flatMap(
                                chart ->
                                        input.wearer()
                                                .map(
                                                        w ->
                                                                SizeChoice.of(
                                                                        chart,
                                                                        w,
                                                                        input.made(),
                                                                        input.least())));
        Optional<ChosenSize> size =
                input.sizes()
                        .size()
                        .or(
                                () ->
                                        choice.flatMap(SizeChoice::start)
                                                .map(start -> ChosenSize.of(start.size())));
        List<SizeResult.Measurement> measurements = measurements(input, size, choice);
        List<Finding> findings = new ArrayList<>(SizeFindings.of(input, choice));
        findings.addAll(EaseFindings.of(input, measurements));
        return new SizeResult(
                size.map(ChosenSize::words),
                choice,
                measurements,
                Suggestions.of(input, measurements),
                size.map(s -> s.redraw(Suggestions.sideSeam(input))).orElse(List.of()),
                findings,
                assumed(input, size),
                SizeGaps.of(input));
    }

    /**
     * The measurement that a lengthen or shorten line alters, so that what is written can be
     * counted as added; nothing if no measurement is compared there.
     *
     * @param line what the line serves
     */
    public static Optional<BodyMeasure> alteredAt(Serves line) {
        return LengthSuggestions.alteredAt(line);
    }

    /** The lengths of the body that are compared with the pattern. */
    public static Set<BodyMeasure> lengths() {
        return LengthSuggestions.lengthNames();
    }

    private static List<Assumed> assumed(SizeInput input, Optional<ChosenSize> size) {
        return input.sizes().size().isPresent()
                ? List.of()
                : size
                        .map(
                                s ->
                                        new Assumed(
                                                "the size you work in",
                                                s.words(),
                                                "the size to start from by the trade's rule"))
                        .stream()
                        .toList();
    }

    private static List<SizeResult.Measurement> measurements(
            SizeInput input, Optional<ChosenSize> size, Optional<SizeChoice> choice) {
        List<SizeResult.Measurement> all = new ArrayList<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            if (input.body(measure).isPresent() || input.isMeasured(measure)) {
                all.add(measurement(measure, input, size, choice));
            }
        }
        return all;
    }

    private static SizeResult.Measurement measurement(
            BodyMeasure measure,
            SizeInput input,
            Optional<ChosenSize> size,
            Optional<SizeChoice> choice) {
        Length added = input.pieces().added(measure);
        Optional<Length> body = input.body(measure);
        Optional<Length> finished = input.finished(measure);
        return new SizeResult.Measurement(
                measure,
                body,
                pattern(measure, input, size).map(p -> p.plus(added)),
                finished,
                finished.flatMap(f -> body.map(f::minus)),
                choice.flatMap(c -> Optional.ofNullable(c.nearest().get(measure))),
                EaseFindings.usual(measure, input),
                input.isMeasuredOnPieces(measure));
    }

    private static Optional<Length> pattern(
            BodyMeasure measure, SizeInput input, Optional<ChosenSize> size) {
        return input.sizes()
                .chart()
                .flatMap(
                        chart ->
                                size.flatMap(s -> s.at(measure))
                                        .flatMap(label -> chart.at(measure, label)));
    }
}
