package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Sentence;

/**
 * What is widened or narrowed to follow the body, down the side.
 *
 * <p>Source: Central Washington University costume text, ch. 17: a small change of width is shared
 * by the seams at the outside edges.
 */
final class WidthSuggestions {
    private static final String NO_SIDES =
            " No edge is known yet to be a side seam: write under `pattern` which are, as `meaning:"
                    + " {…: side}`, and a line to paste stands here.";

    private final BodyDifferences differences;
    private final SuggestionWords words;
    private final SizeInput input;
    private final boolean enlargesTheBust;
    private final List<BodyMeasure> compared;

    WidthSuggestions(BodyDifferences differences, SuggestionWords words) {
        this.differences = differences;
        this.words = words;
        this.input = differences.input();
        this.enlargesTheBust = differences.enlargesTheBust();
        this.compared = compared(differences);
    }

    /**
     * A change of the side at one height.
     *
     * @param measure what asks for it
     * @param by how much more there, beside what is changed above
     * @param above the height from which it begins; nothing if it holds from the top
     */
    private record Step(BodyMeasure measure, Length by, Optional<BodyMeasure> above) {}

    /** The changes of the side, from the top down. */
    List<SizeResult.Suggestion> all() {
        List<Step> steps = steps();
        boolean placed =
                steps.stream()
                        .allMatch(
                                step ->
                                        step.above()
                                                .map(a -> hasLevel(a) && hasLevel(step.measure()))
                                                .orElse(true));
        return placed
                ? steps.stream()
                        .map(step -> width(step, step.by().equals(total(step.measure()))))
                        .toList()
                : throughout().stream().toList();
    }

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        Length soFar = Length.ZERO;
        Optional<BodyMeasure> above = untouched();
        for (BodyMeasure measure : compared) {
            if (measure == BodyMeasure.BUST && enlargesTheBust) {
                above = Optional.of(measure);
                continue;
            }
            Length by = total(measure).minus(soFar);
            if (differences.isWorthIt(by)) {
                steps.add(new Step(measure, by, above));
                soFar = soFar.plus(by);
            }
            above = Optional.of(measure);
        }
        return steps;
    }

    private Length total(BodyMeasure measure) {
        return differences.total(measure);
    }

    private boolean hasLevel(BodyMeasure measure) {
        return input.pieces().levels().containsKey(measure);
    }

    /**
     * One change for the whole side, where it is not known how far down bust, waist and hip lie: as
     * much as the one that needs most, so that none is left too tight.
     */
    private Optional<SizeResult.Suggestion> throughout() {
        List<BodyMeasure> atTheSide =
                compared.stream().filter(m -> m != BodyMeasure.BUST || !enlargesTheBust).toList();
        BodyMeasure most =
                atTheSide.stream()
                        .reduce((a, b) -> total(b).isLongerThan(total(a)) ? b : a)
                        .orElseThrow();
        boolean takesFromTheBust = total(most).isNegative() && enlargesTheBust;
        if (!differences.isWorthIt(total(most)) || takesFromTheBust) {
            return Optional.empty();
        }
        SizeResult.Suggestion whole = width(new Step(most, total(most), Optional.empty()), true);
        String each =
                atTheSide.stream()
                        .map(m -> m.word() + " " + signed(total(m)))
                        .collect(Collectors.joining(", "));
        return Optional.of(
                new SizeResult.Suggestion(
                        most,
                        whole.by(),
                        whole.text()
                                + " Where these lie on the pieces is not known, so it is what the"
                                + " tightest needs, for the whole side."
                                + (whole.yaml().isPresent()
                                        ? " With `from` and `to` it can be tapered."
                                        : "")
                                + " The differences are: "
                                + each
                                + "."
                                + taperWritten(atTheSide),
                        whole.yaml()));
    }

    /**
     * A taper of which it is not known where it is at full width, so that it is not added twice.
     */
    private String taperWritten(List<BodyMeasure> atTheSide) {
        Length atTheHip = input.pieces().added(BodyMeasure.HIP);
        boolean isUneven =
                atTheSide.stream()
                        .filter(measure -> !hasLevel(measure))
                        .anyMatch(measure -> !input.pieces().added(measure).equals(atTheHip));
        return isUneven
                ? " The taper that is written already is counted at the hip alone: take off what it"
                        + " gives further up."
                : "";
    }

    private String signed(Length length) {
        return (length.isNegative() ? "−" : "+") + input.tape().print(length.size());
    }

    /** The chest counts where the bust does not: both lie at one height. */
    private static List<BodyMeasure> compared(BodyDifferences differences) {
        return BodyDifferences.WIDTHS.stream()
                .filter(m -> differences.needed(m).isPresent())
                .filter(
                        m ->
                                m != BodyMeasure.CHEST
                                        || differences.needed(BodyMeasure.BUST).isEmpty())
                .toList();
    }

    /** The line above which nothing is altered, because the bust or chest there is not known. */
    private Optional<BodyMeasure> untouched() {
        BodyMeasure top = input.isMeasured(BodyMeasure.BUST) ? BodyMeasure.BUST : BodyMeasure.CHEST;
        boolean known =
                differences
                        .needed(BodyMeasure.BUST)
                        .or(() -> differences.needed(BodyMeasure.CHEST))
                        .isPresent();
        return input.isUpper() && !known ? Optional.of(top) : Optional.empty();
    }

    private SizeResult.Suggestion width(Step step, boolean isAll) {
        String verb = step.by().isNegative() ? "narrow" : "widen";
        List<String> sides = input.pieces().sides();
        String name = SuggestionWords.written(sides);
        String levels =
                step.above()
                        .map(a -> ", from: " + level(a) + ", to: " + level(step.measure()))
                        .orElse("");
        String yaml =
                "- {" + verb + ": " + name + ", by: " + words.written(step.by()) + levels + "}";
        String text =
                words.why(step.measure())
                        + step.above()
                                .map(a -> taper(verb, a, step, isAll))
                                .orElseGet(() -> whole(verb, step.by()))
                        + (step.by().isNegative()
                                ? " Narrowing can wait for a fitting: cloth cut away does not come"
                                        + " back."
                                : "")
                        + (sides.isEmpty() ? NO_SIDES : "");
        return new SizeResult.Suggestion(
                step.measure(),
                step.by(),
                text,
                sides.isEmpty() ? Optional.empty() : Optional.of(yaml));
    }

    private String level(BodyMeasure measure) {
        return words.written(input.pieces().levels().get(measure));
    }

    private String whole(String verb, Length by) {
        return " "
                + Sentence.capital(verb)
                + " the side by "
                + input.tape().print(by.size())
                + " altogether, from top to bottom; an armhole or waistband that ends there"
                + " changes with it, so look at its seam.";
    }

    private String taper(String verb, BodyMeasure above, Step step, boolean isAll) {
        return " "
                + Sentence.capital(verb)
                + " the side from the "
                + above.word()
                + " line on, by "
                + input.tape().print(step.by().size())
                + " altogether from the "
                + step.measure().word()
                + " line down"
                + (isAll ? "." : ", beside what is altered further up.");
    }
}
