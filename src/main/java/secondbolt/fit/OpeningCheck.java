package secondbolt.fit;

import java.util.List;
import java.util.Optional;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.SewnUp;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Opening;
import secondbolt.pattern.Seam;
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
 * @param stretched the same, stretched as far as its cloth goes; as much in woven cloth
 * @param open its edges of which it is not known whether the alterations changed them
 * @param needs the girth that must pass, if the wearer's is known
 */
record OpeningCheck(
        Opening opening,
        Length opens,
        Length stretched,
        List<EdgeSum.Term> open,
        Optional<Length> needs) {
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
                                        reach(opening.edges().value(), result)
                                                .plus(opening.slit().times(2)),
                                        SewnUp.open(result, opening.edges().value()),
                                        opening.over().girth(wearer)))
                .toList();
    }

    /** Stretched, and no farther than a band that is sewn to it. */
    private static Length reach(EdgeSum edges, FitResult result) {
        Length reach = result.reach(edges);
        for (Seam seam : result.pattern().seams()) {
            EdgeSum one = seam.first().value();
            EdgeSum two = seam.second().value();
            Optional<EdgeSum> other =
                    one.pieceEdges().equals(edges.pieceEdges())
                            ? Optional.of(two)
                            : Optional.of(one)
                                    .filter(o -> two.pieceEdges().equals(edges.pieceEdges()));
            Optional<Length> band =
                    other.filter(o -> result.stretch().isBand(o, edges)).map(result::reach);
            reach = band.filter(reach::isLongerThan).orElse(reach);
        }
        return drawnIn(edges, reach.orLonger(result.lengthAfter(edges)), result);
    }

    /** As much less as the edges are shorter where they are sewn, gathered or eased. */
    private static Length drawnIn(EdgeSum edges, Length reach, FitResult result) {
        Length flat = result.lengthAfter(edges);
        Length sewn = SewnUp.of(result, edges);
        return sewn.equals(flat) || !flat.isPositive()
                ? reach
                : Length.ofComputedMillimetres(
                        reach.millimetres() * sewn.millimetres() / flat.millimetres());
    }

    /** What stays open while that girth is not known. */
    Optional<Open> unknown(Tape tape) {
        return needs.isPresent()
                ? Optional.empty()
                : Optional.of(opening.over().open(opening.what(), tape));
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
