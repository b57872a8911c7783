package secondbolt.fit.giving;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeResult;
import secondbolt.measure.Tape;
import secondbolt.pattern.piece.Piece;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/**
 * What is done to the paper before cloth is cut.
 *
 * <p>Sources: Pattern Alteration, Guide C-228, New Mexico State University, and The New Dressmaker,
 * 1921: alter the pattern before cutting. Central Washington University, costume text, ch. 17: the
 * altered paper must still lie flat, and its lines are trued afterwards. That every adjoining piece
 * has the same change is common practice, no source.
 *
 * @param fit the pattern
 * @param tape to print with
 */
record PaperSteps(FitResult fit, Tape tape) {
    /** Altering it; nothing if nothing is altered. */
    Optional<WorkStep> alter(List<String> alterations) {
        if (alterations.isEmpty()) {
            return Optional.empty();
        }
        List<String> taped =
                fit.pieces().stream()
                        .filter(piece -> piece.shape().asDrawn().isEmpty())
                        .map(Piece::name)
                        .toList();
        String what = String.join("; ", alterations);
        String text =
                taped.isEmpty()
                        ? "The printed pieces have the alterations: "
                                + what
                                + ". Throw away earlier prints; if you cut from paper of your own,"
                                + " alter that."
                        : "Alter your own paper of "
                                + String.join(", ", taped)
                                + "; pieces printed from here have it already: "
                                + what
                                + ".";
        List<String> checks = new ArrayList<>();
        if (!taped.isEmpty()) {
            checks.add("The altered paper lies flat, and its lines are trued.");
        }
        checks.add(
                "Every piece that is sewn to a changed edge, its facing and its lining, has the same"
                        + " change.");
        return Optional.of(
                WorkStep.of("alter the paper", Stage.PLANNING, text)
                        .checking(checks.toArray(String[]::new)));
    }

    /**
     * Measuring it against the body; nothing if nobody's measurements and no finished ones are
     * told.
     */
    Optional<WorkStep> measure(SizeResult size) {
        List<SizeResult.Measurement> known =
                size.measurements().stream().filter(m -> m.finished().isPresent()).toList();
        boolean isForSomebody = size.measurements().stream().anyMatch(m -> m.body().isPresent());
        if (known.isEmpty() && !isForSomebody) {
            return Optional.empty();
        }
        String figures =
                known.isEmpty()
                        ? ""
                        : " As worked out, made up it measures "
                                + known.stream()
                                        .map(
                                                m ->
                                                        m.name().word()
                                                                + " "
                                                                + tape.print(
                                                                        m.finished().orElseThrow()))
                                        .collect(Collectors.joining(", "))
                                + ".";
        return Optional.of(
                WorkStep.of(
                                "measure the pieces",
                                Stage.PLANNING,
                                "Measure the paper from sewing line to sewing line, darts and pleats"
                                        + " closed, all pieces that go round; compare with the body"
                                        + " and its ease, and with a garment that fits."
                                        + figures)
                        .after(
                                "check the print",
                                "Paper that is not printed true to size measures wrong.")
                        .after("alter the paper", "What is cut is the altered paper."));
    }
}
