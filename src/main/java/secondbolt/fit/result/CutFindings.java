package secondbolt.fit.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.fit.cut.CutShape;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.WrittenAlterations;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What a maker should know of pieces that are cut and of alterations that do not reach them.
 *
 * @param result the pattern, altered
 * @param tape to print with
 */
public record CutFindings(FitResult result, Tape tape) {
    /** All of it; nothing if every cut piece has the shape that is written. */
    public List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        for (CutShape shape : result.cut().shapes()) {
            if (shape.isAsked()) {
                findings.add(asked(shape));
            } else {
                keeps(shape).ifPresent(findings::add);
            }
        }
        return List.copyOf(findings);
    }

    private Finding asked(CutShape shape) {
        List<Alteration> concerning =
                result.altered().stream()
                        .filter(altered -> altered.asked().concern(shape.piece()))
                        .map(altered -> altered.alteration())
                        .toList();
        return new Finding(
                "cut-alterations-not-told",
                new Subject.Piece(shape.name()),
                Level.WARNING,
                shape.name()
                        + " is cut, and it is not told whether before or after it was altered ("
                        + words(concerning)
                        + "). Whether its seams meet is not known until then.",
                "Measure one that is cut. If it has none of that, write `altered: none` with it"
                        + " under `cut so far` or in `plan.yaml`; if it has all of it, `altered: "
                        + new WrittenAlterations(tape).of(concerning)
                        + "`; else those that it has.");
    }

    /** Some copies, or all, in another shape than is written now. */
    private Optional<Finding> keeps(CutShape shape) {
        Piece drawn = result.pattern().find(shape.name()).orElseThrow();
        boolean isWhole = result.cut().whole(drawn).isPresent();
        Piece written =
                isWhole
                        ? new CutShape(Optional.of(result.alterations()), drawn, 0)
                                .changes(result.pattern())
                                .on(drawn, result.pattern().meanings())
                        : result.find(shape.name()).orElseThrow();
        if (written.shape().equals(shape.piece().shape())) {
            return Optional.empty();
        }
        String had = words(shape.had().orElseThrow());
        String text =
                shape.name()
                        + " is cut and keeps its shape ("
                        + (had.isEmpty() ? "without any alteration" : had)
                        + "), though the pattern is altered otherwise now ("
                        + (result.alterations().isEmpty()
                                ? "not at all"
                                : words(result.alterations()))
                        + ").";
        return Optional.of(
                new Finding(
                        isWhole ? "cut-keeps-its-shape" : "cut-copies-differ",
                        new Subject.Piece(shape.name()),
                        isWhole ? Level.WARNING : Level.STOP,
                        isWhole ? text : text + " What is not cut of it yet would differ from it.",
                        "Write what alters it again as it was when it was cut, and what is not cut yet"
                                + " becomes like it. Or write `spoilt: yes` with each that is cut"
                                + " so, in `plan.yaml` or under `cut so far`: it is then cut"
                                + " again."));
    }

    private String words(List<Alteration> alterations) {
        return alterations.stream()
                .map(a -> a.words() + " by " + tape.print(by(a).size()))
                .collect(Collectors.joining(", "));
    }

    private static Length by(Alteration alteration) {
        return alteration.accept(
                new Alteration.Visitor<Length>() {
                    @Override
                    public Length lengthen(Alteration.Lengthen lengthen) {
                        return lengthen.by();
                    }

                    @Override
                    public Length widen(Alteration.Widen widen) {
                        return widen.by();
                    }
                });
    }
}
