package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** Holds the ease in the finished garment against the wearing ease the sources ask for. */
final class EaseFindings {
    /** From this age on the figures for grown people serve; common practice, no source. */
    private static final int GROWN_FROM_YEARS = 14;

    private static final Set<BodyMeasure> GIRTHS =
            EnumSet.of(
                    BodyMeasure.BUST,
                    BodyMeasure.CHEST,
                    BodyMeasure.UNDER_BUST,
                    BodyMeasure.WAIST,
                    BodyMeasure.HIP,
                    BodyMeasure.UPPER_ARM,
                    BodyMeasure.THIGH,
                    BodyMeasure.KNEE,
                    BodyMeasure.CALF);

    private final SizeInput input;
    private final List<Finding> findings = new ArrayList<>();

    private EaseFindings(SizeInput input) {
        this.input = input;
    }

    static List<Finding> of(SizeInput input, List<SizeResult.Measurement> measurements) {
        EaseFindings all = new EaseFindings(input);
        boolean hasEase = measurements.stream().anyMatch(m -> m.ease().isPresent());
        if (hasEase && isChild(input)) {
            all.tell(
                    "ease-of-a-child",
                    Level.NOTE,
                    "The ease is shown but not judged: no published wearing ease for children was"
                            + " found.",
                    "Compare it with a garment that fits the child now, and leave room to grow.");
        }
        measurements.forEach(all::judge);
        return List.copyOf(all.findings);
    }

    /**
     * The usual ease at a measurement, from the least of any source to the most of any; nothing for
     * a child, while the age is not told or of a knit, for the sources speak of grown people in
     * woven cloth.
     */
    static Optional<SizeResult.Usual> usual(BodyMeasure measure, SizeInput input) {
        List<UsualEase> rows = rows(measure, input);
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        Optional<Length> most =
                rows.stream().flatMap(row -> row.most().stream()).reduce(Length::orLonger);
        String sources =
                rows.stream()
                        .map(row -> range(row, input) + " (" + row.source() + ")")
                        .collect(Collectors.joining("; "));
        Length agreed = rows.get(rows.size() - 1).least();
        return Optional.of(new SizeResult.Usual(rows.get(0).least(), agreed, most, sources));
    }

    private static List<UsualEase> rows(BodyMeasure measure, SizeInput input) {
        boolean grown = input.wearer().flatMap(Wearer::age).isPresent() && !isChild(input);
        if (!grown || input.stretch().isPresent()) {
            return List.of();
        }
        UsualEase.Garment garment =
                input.isUpper() ? UsualEase.Garment.UPPER : UsualEase.Garment.LOWER;
        return UsualEase.of(measure, garment, build(input), input.body(BodyMeasure.HIP));
    }

    private static boolean isChild(SizeInput input) {
        return input.wearer()
                .flatMap(Wearer::age)
                .filter(age -> age.isUnder(GROWN_FROM_YEARS))
                .isPresent();
    }

    private static UsualEase.Build build(SizeInput input) {
        if (isMeasuredOrTold(BodyMeasure.BUST, input)) {
            return UsualEase.Build.WOMEN;
        }
        return isMeasuredOrTold(BodyMeasure.CHEST, input)
                ? UsualEase.Build.MEN
                : UsualEase.Build.ANY;
    }

    private static boolean isMeasuredOrTold(BodyMeasure measure, SizeInput input) {
        return input.isMeasured(measure) || input.body(measure).isPresent();
    }

    private static String range(UsualEase row, SizeInput input) {
        String least = input.tape().print(row.least());
        return row.most()
                .map(
                        most ->
                                most.equals(row.least())
                                        ? least
                                        : least + " to " + input.tape().print(most))
                .orElse("at least " + least);
    }

    /**
     * A knit may go without ease, and smaller than the body as far as it stretches.
     *
     * <p>Source: Central Washington University costume text, ch. 16: no ease for knits. How far it
     * may be stretched in wear: common practice, no source.
     */
    private void ofAKnit(BodyMeasure measure, Length body, Length ease, Share stretch) {
        if (!GIRTHS.contains(measure) || !ease.isNegative()) {
            return;
        }
        Length finished = body.plus(ease);
        Length reach = finished.plus(finished.times(stretch));
        String sizes =
                has(measure, ease)
                        + "; stretched by "
                        + stretch.percent(0)
                        + " it reaches "
                        + input.tape().print(reach)
                        + " round "
                        + input.tape().print(body);
        if (reach.isShorterThan(body)) {
            tell(
                    "ease-past-the-stretch",
                    Level.WARNING,
                    sizes + ", which is too little.",
                    "Make it larger there by at least "
                            + input.tape().print(body.minus(reach).roundedUpTo(input.tape().mark()))
                            + ", or take a larger size.");
        } else {
            tell(
                    "ease-of-a-knit",
                    Level.NOTE,
                    sizes + ".",
                    "Smaller than the body is meant only of a close-fitting knit; try it on.");
        }
    }

    private void judge(SizeResult.Measurement measurement) {
        if (input.stretch().isPresent() && measurement.ease().isPresent()) {
            input.body(measurement.name())
                    .ifPresent(
                            body ->
                                    ofAKnit(
                                            measurement.name(),
                                            body,
                                            measurement.ease().get(),
                                            input.stretch().get()));
        }
        if (measurement.ease().isEmpty() || measurement.usual().isEmpty()) {
            return;
        }
        Length ease = measurement.ease().get();
        SizeResult.Usual usual = measurement.usual().get();
        if (ease.isShorterThan(usual.least())) {
            tooLittle(measurement.name(), ease, usual);
        } else if (usual.most().filter(ease::isLongerThan).isPresent()) {
            tell(
                    "ease-more-than-wearing",
                    Level.NOTE,
                    has(measurement.name(), ease)
                            + ", more than wearing ease asks: "
                            + usual.sources()
                            + ".",
                    "It is fullness of the design, or a smaller size would do: look at the"
                            + " pattern's picture.");
        } else if (ease.isShorterThan(usual.agreed())) {
            tell(
                    "ease-disputed",
                    Level.NOTE,
                    has(measurement.name(), ease)
                            + ". The sources disagree whether that is enough: "
                            + usual.sources()
                            + ".",
                    "Baste and try it on before the seams are finished.");
        }
    }

    private void tooLittle(BodyMeasure measure, Length ease, SizeResult.Usual usual) {
        Length lacks = usual.least().minus(ease).roundedUpTo(input.tape().mark());
        tell(
                "ease-too-little",
                Level.WARNING,
                has(measure, ease)
                        + ", less than any source asks for woven cloth: "
                        + usual.sources()
                        + ".",
                "Make it larger there by at least "
                        + input.tape().print(lacks)
                        + ", or take a larger size; wearing ease must not stand in for altering"
                        + " (New Mexico State University, Guide C-228). Only a knit may go without"
                        + " ease (Central Washington University costume text, ch. 16).");
    }

    private String has(BodyMeasure measure, Length ease) {
        return ease.isNegative()
                ? "The finished garment is "
                        + input.tape().print(ease.size())
                        + " smaller than the body at the "
                        + measure.word()
                : "The finished garment has "
                        + input.tape().print(ease)
                        + " of ease at the "
                        + measure.word();
    }

    private void tell(String code, Level level, String text, String remedy) {
        findings.add(new Finding(code, new Subject.Whole("ease"), level, text, remedy));
    }
}
