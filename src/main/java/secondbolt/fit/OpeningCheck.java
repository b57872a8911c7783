package secondbolt.fit;

import java.util.List;
import java.util.Optional;
import secondbolt.fit.result.FitResult;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Opening;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Open;

/**
 * How wide an opening opens, beside what must pass it.
 *
 * @param opening which
 * @param opens all round after the alterations, gathered and eased edges as they are sewn, with
 *     twice its slit
 * @param open its edges of which it is not known whether the alterations changed them
 * @param needs the girth that must pass, if the wearer's is known
 */
record OpeningCheck(
        Opening opening, Length opens, List<EdgeSum.Term> open, Optional<Length> needs) {
    /** Copies the edges. */
    OpeningCheck {
        open = List.copyOf(open);
    }

    /** All openings of a pattern, altered. */
    static List<OpeningCheck> of(FitResult result, Optional<Wearer> wearer) {
        return result.pattern().openings().stream()
                .map(
                        opening ->
                                new OpeningCheck(
                                        opening,
                                        SewnUp.of(result, opening.edges().value())
                                                .plus(opening.slit().times(2)),
                                        SewnUp.open(result, opening.edges().value()),
                                        opening.over().girth(wearer)))
                .toList();
    }

    /** What stays open while that girth is not known. */
    Optional<Open> unknown() {
        return needs.isPresent()
                ? Optional.empty()
                : Optional.of(opening.over().open(opening.what()));
    }

    /** What is taken for granted of an opening whose edges are drawn in. */
    static Optional<Assumed> drawnIn(FitResult result) {
        return result.pattern().openings().stream()
                        .anyMatch(o -> SewnUp.isDrawnIn(result, o.edges().value()))
                ? Optional.of(
                        new Assumed(
                                "how wide a gathered or eased edge opens",
                                "as wide as what it is sewn to",
                                Convention.COMMON_PRACTICE + "; it is held by that seam"))
                : Optional.empty();
    }
}
