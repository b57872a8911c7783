package secondbolt.fit.size;

import java.util.List;
import java.util.Optional;
import secondbolt.figure.Figures;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;

/**
 * The wearer beside the pattern, worked out.
 *
 * @param size the label worked with: the one written, else the one to start from; nothing if there
 *     is neither
 * @param choice the sizes that the measurements point to, if there are a chart and a wearer
 * @param measurements down the body
 * @param suggestions alterations that follow from the difference, in the order of the file
 * @param redraw what is redrawn between the sizes of a blend
 * @param findings what the maker should know
 * @param assumed what was not written
 * @param open what is not known
 */
public record SizeResult(
        Optional<String> size,
        Optional<SizeChoice> choice,
        List<Measurement> measurements,
        List<Suggestion> suggestions,
        List<String> redraw,
        List<Finding> findings,
        List<Assumed> assumed,
        List<Open> open) {
    /** Copies the lists. */
    public SizeResult {
        measurements = List.copyOf(measurements);
        suggestions = List.copyOf(suggestions);
        redraw = List.copyOf(redraw);
        findings = List.copyOf(findings);
        assumed = List.copyOf(assumed);
        open = List.copyOf(open);
    }

    /**
     * One measurement, on the body and of the garment.
     *
     * @param name what is measured
     * @param body the wearer's
     * @param pattern what the size is made for, with what the alterations written add
     * @param finished the finished garment, with what they add
     * @param ease the finished garment less the body; negative if it is smaller
     * @param nearest the size nearest to the body
     * @param usual the wearing ease usual there, if a source tells
     * @param onPieces whether the finished garment is measured on its pieces, and not told
     */
    public record Measurement(
            BodyMeasure name,
            Optional<Length> body,
            Optional<Length> pattern,
            Optional<Length> finished,
            Optional<Length> ease,
            Optional<String> nearest,
            Optional<Usual> usual,
            boolean onPieces) {}

    /**
     * The wearing ease the sources ask for, from the least of any to the most of any.
     *
     * @param least of all sources
     * @param agreed the least that every source finds enough
     * @param most of all sources, if any tells
     * @param sources who says what, the least first
     */
    public record Usual(Length least, Length agreed, Optional<Length> most, List<Said> sources) {
        /** Copies the sources. */
        public Usual {
            sources = List.copyOf(sources);
        }
    }

    /**
     * What one source asks for.
     *
     * @param least the least it asks for
     * @param most the most, if it says
     * @param source who says so
     */
    public record Said(Length least, Optional<Length> most, String source) {}

    /**
     * An alteration that follows from the difference; the maker decides.
     *
     * @param measure the measurement it is for
     * @param by how much more the body is than the size, or, for a width, than the size as altered
     *     above; negative if less
     * @param text why and what
     * @param yaml a line for the file's {@code alterations}, ready to paste; nothing if none can
     *     carry it
     */
    public record Suggestion(BodyMeasure measure, Length by, String text, Optional<String> yaml) {}

    /** Puts {@code size}, {@code measurements} and {@code suggestions} into the fit's figures. */
    public Figures addTo(Figures fit) {
        size.ifPresent(label -> fit.text("size", label));
        fit.list("measurements", measurements.stream().map(SizeResult::figures).toList());
        return fit.list("suggestions", suggestions.stream().map(SizeResult::figures).toList());
    }

    private static Figures figures(Measurement measurement) {
        Figures figures =
                new Figures()
                        .text("name", measurement.name().word())
                        .length("body", measurement.body())
                        .length("pattern", measurement.pattern())
                        .length("finished", measurement.finished())
                        .length("ease", measurement.ease());
        measurement.nearest().ifPresent(size -> figures.text("nearest", size));
        measurement
                .finished()
                .ifPresent(
                        f ->
                                figures.text(
                                        "finished_from",
                                        measurement.onPieces() ? "pieces" : "told"));
        return figures;
    }

    private static Figures figures(Suggestion suggestion) {
        Figures figures =
                new Figures()
                        .text("measurement", suggestion.measure().word())
                        .length("by", suggestion.by())
                        .text("text", suggestion.text());
        suggestion.yaml().ifPresent(yaml -> figures.text("yaml", yaml));
        return figures;
    }
}
