package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.List;
import secondbolt.file.value.BareLength;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.FinishedMeasure;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What is told of the finished garment beside what its pieces measure as drawn. */
public final class FinishedBesidePieces {
    /** As closely as a garment is measured by tape. */
    private static final Convention AGREES =
            Convention.common(Length.ofInches(1, 2), Length.ofMillimetres(10));

    private FinishedBesidePieces() {}

    /** Where they differ; one that agrees with any of several ways to measure it does not. */
    public static List<Finding> of(Pattern pattern, MadeMeasures made, Tape tape) {
        List<Finding> findings = new ArrayList<>();
        pattern.sizes()
                .allFinished()
                .forEach(
                        (measure, length) -> {
                            List<Made> there = there(made, measure);
                            boolean agrees =
                                    there.stream()
                                            .map(m -> m.before().minus(length).size())
                                            .anyMatch(off -> !off.isLongerThan(AGREES.on(tape)));
                            if (!there.isEmpty() && !agrees) {
                                findings.add(differs(measure, length, there.get(0), tape));
                            }
                        });
        return findings;
    }

    /** Bust and chest lie at one height. */
    private static List<Made> there(MadeMeasures made, FinishedMeasure measure) {
        return made.of(measure == BodyMeasure.CHEST ? BodyMeasure.BUST : measure);
    }

    private static Finding differs(FinishedMeasure measure, Length written, Made made, Tape tape) {
        return new Finding(
                "finished-differs",
                new Subject.Whole("finished"),
                Level.CAUTION,
                "Under `finished` the "
                        + measure.word()
                        + " is "
                        + tape.print(written)
                        + "; the pieces as drawn measure "
                        + tape.print(made.before())
                        + " "
                        + made.what()
                        + ".",
                "Measure both again. If the pieces are right, write `finished: {"
                        + measure.word()
                        + ": "
                        + BareLength.of(tape, made.before())
                        + "}`; what is told goes before what the pieces measure.");
    }
}
