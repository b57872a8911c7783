package secondbolt.fit.giving;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeResult;
import secondbolt.measure.Tape;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;

/** What the pattern, altered and laid beside the wearer, contributes. */
public final class FitGiving {
    private FitGiving() {}

    /**
     * Of a pattern.
     *
     * @param alterations each in words, in their order
     * @param size the wearer beside it
     * @param tape to print with
     */
    public static Gives of(FitResult fit, List<String> alterations, SizeResult size, Tape tape) {
        List<WorkStep> steps = new ArrayList<>();
        PaperSteps paper = new PaperSteps(fit, tape);
        paper.alter(alterations).ifPresent(steps::add);
        paper.measure(size).ifPresent(steps::add);
        List<TakenUp> darts = TakenUp.darts(fit.pieces());
        List<TakenUp> pleats = TakenUp.pleats(fit.pieces());
        DartSteps.darts(darts).ifPresent(steps::add);
        DartSteps.pleats(pleats).ifPresent(steps::add);
        return new Gives(steps, List.of(), words(!alterations.isEmpty(), !darts.isEmpty(), size));
    }

    private static List<Term> words(boolean isAltered, boolean hasDarts, SizeResult size) {
        List<Term> words = new ArrayList<>();
        if (size.measurements().stream()
                .map(SizeResult.Measurement::ease)
                .anyMatch(Optional::isPresent)) {
            words.add(
                    new Term(
                            "ease",
                            "Of a garment: how much larger it is than the body, to move in. Of a"
                                    + " seam: how much longer one side is and is worked in."));
        }
        if (isAltered) {
            words.add(
                    new Term(
                            "to true",
                            "To draw a line of the pattern anew after an alteration, so that it runs"
                                    + " on without a step."));
        }
        if (hasDarts) {
            words.add(
                    new Term(
                            "dart",
                            "A wedge of cloth sewn away from an edge to a point, so that flat cloth"
                                    + " takes the shape of the body."));
        }
        return words;
    }
}
