package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
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
        List<SizeResult.Said> said = rows.stream().map(row -> said(row, input.tape())).toList();
        Optional<Length> most =
                said.stream().flatMap(one -> one.most().stream()).reduce(Length::orLonger);
        Length agreed = said.get(said.size() - 1).least();
        return Optional.of(new SizeResult.Usual(said.get(0).least(), agreed, most, said));
    }

    private static List<UsualEase> rows(BodyMeasure measure, SizeInput input) {
        boolean grown = input.wearer().flatMap(Wearer::age).isPresent() && !isChild(input);
        if (!grown || input.stretch().isPresent()) {
            return List.of();
        }
        UsualEase.Garment garment =
                input.isUpper() ? UsualEase.Garment.UPPER : UsualEase.Garment.LOWER;
        boolean isSkirt = input.pieces().made() == SizeInput.Made.SKIRT;
        return UsualEase.of(measure, garment, build(input), input.body(BodyMeasure.HIP)).stream()
                .filter(row -> !(isSkirt && row.build() == UsualEase.Build.MEN))
                .toList();
    }

    private static SizeResult.Said said(UsualEase row, Tape tape) {
        return new SizeResult.Said(
                row.least().on(tape), row.most().map(most -> most.on(tape)), row.source());
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

    /** What a source asks for, for the list at the end of the page. */
    private String words(BodyMeasure measure, SizeResult.Said said) {
        String least = input.tape().print(said.least());
        String range =
                said.most()
                        .map(
                                most ->
                                        most.equals(said.least())
                                                ? least
                                                : least + " to " + input.tape().print(most))
                        .orElse("at least " + least);
        return said.source() + ": ease at the " + measure.word() + " " + range;
    }

    /** The others than the one that a note names. */
    private List<String> others(
            BodyMeasure measure, SizeResult.Usual usual, SizeResult.Said named) {
        return usual.sources().stream()
                .filter(said -> !said.equals(named))
                .map(said -> words(measure, said))
                .toList();
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
                            + input.tape().print(lacking(body, finished, stretch))
                            + ", or take a larger size.");
        } else {
            tell(
                    "ease-of-a-knit",
                    Level.NOTE,
                    sizes + ".",
                    "Smaller than the body is meant only of a close-fitting knit; try it on.");
        }
    }

    /**
     * The least that must be added so that the finished girth, stretched, goes round the body.
     *
     * <p>Derived: what is added stretches as well, so finished and added, times one and the
     * stretch, must be as much as the body.
     */
    private Length lacking(Length body, Length finished, Share stretch) {
        Length least = body.dividedBy(Share.WHOLE.plus(stretch));
        return least.minus(finished).roundedUpTo(input.tape().mark());
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
        SizeResult.Said first = usual.sources().get(0);
        if (ease.isShorterThan(usual.least())) {
            tooLittle(measurement.name(), ease, usual);
        } else if (usual.most().filter(ease::isLongerThan).isPresent()) {
            SizeResult.Said most =
                    usual.sources().stream()
                            .filter(said -> said.most().equals(usual.most()))
                            .findFirst()
                            .orElseThrow();
            tell(
                    "ease-more-than-wearing",
                    Level.NOTE,
                    has(measurement.name(), ease)
                            + ", more than wearing ease asks, which is "
                            + print(usual.most().orElseThrow())
                            + " at most ("
                            + most.source()
                            + ").",
                    "It is fullness of the design, or a smaller size would do: look at the"
                            + " pattern's picture.",
                    others(measurement.name(), usual, most));
        } else if (ease.isShorterThan(usual.agreed())) {
            tell(
                    "ease-disputed",
                    Level.NOTE,
                    has(measurement.name(), ease)
                            + ". The sources disagree whether that is enough: the least asked for"
                            + " is "
                            + print(first.least())
                            + " ("
                            + first.source()
                            + "), others ask for as much as "
                            + print(usual.agreed())
                            + ".",
                    "Baste and try it on before the seams are finished.",
                    others(measurement.name(), usual, first));
        }
    }

    private void tooLittle(BodyMeasure measure, Length ease, SizeResult.Usual usual) {
        SizeResult.Said first = usual.sources().get(0);
        Length lacks = usual.least().minus(ease).roundedUpTo(input.tape().mark());
        tell(
                "ease-too-little",
                Level.WARNING,
                has(measure, ease)
                        + ", less than any source asks for in woven cloth: at least "
                        + print(first.least())
                        + " ("
                        + first.source()
                        + ").",
                "Make it larger there by at least "
                        + input.tape().print(lacks)
                        + ", or take a larger size; wearing ease must not stand in for altering."
                        + " Only a knit may go without ease.",
                Stream.concat(
                                others(measure, usual, first).stream(),
                                Stream.of(
                                        "New Mexico State University, Guide C-228: wearing ease"
                                                + " must not stand in for altering",
                                        "Central Washington University costume text, ch. 16: only a"
                                                + " knit may go without ease"))
                        .toList());
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

    private String print(Length length) {
        return input.tape().print(length);
    }

    private void tell(String code, Level level, String text, String remedy) {
        tell(code, level, text, remedy, List.of());
    }

    private void tell(String code, Level level, String text, String remedy, List<String> also) {
        Finding finding = new Finding(code, new Subject.Whole("ease"), level, text, remedy);
        findings.add(finding.citing(also));
    }
}
