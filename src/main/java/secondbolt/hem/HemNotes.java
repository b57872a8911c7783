package secondbolt.hem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;

/** What a maker should read of her hems. */
final class HemNotes {
    private HemNotes() {}

    static Notes of(List<ShownHem> hems, Tape tape) {
        List<Finding> findings = hems.stream().flatMap(hem -> hem.findings().stream()).toList();
        List<HemResult> results = hems.stream().map(ShownHem::result).toList();
        List<Open> open = results.stream().flatMap(HemNotes::open).toList();
        return new Notes(findings, assumed(results, tape), open);
    }

    private static List<Assumed> assumed(List<HemResult> results, Tape tape) {
        List<Assumed> assumed = new ArrayList<>();
        for (HemResult result : results) {
            rawEdge(result, tape).ifPresent(assumed::add);
            hang(result).ifPresent(assumed::add);
        }
        if (results.stream().flatMap(r -> r.edges().stream()).anyMatch(HemNotes::isJudged)) {
            assumed.add(
                    new Assumed(
                            "how much fullness the cloth takes",
                            "less than 0.5 % presses flat, up to 5 % shrinks in",
                            "common practice for firm cotton, no source; wool shrinks in more,"
                                    + " polyester hardly at all: try on a scrap"));
        }
        return assumed;
    }

    private static Optional<Assumed> rawEdge(HemResult result, Tape tape) {
        return result.hem().turned() == Hem.Turned.TWICE
                ? Optional.of(
                        new Assumed(
                                result.name() + ": turn of the raw edge",
                                tape.printSmall(Hem.RAW_EDGE.on(tape)),
                                Hem.RAW_EDGE.source()))
                : Optional.empty();
    }

    private static Optional<Assumed> hang(HemResult result) {
        return result.hem().hang().isEmpty() && result.hang().first()
                ? Optional.of(
                        new Assumed(
                                result.name() + ": how long it hangs before it is levelled",
                                result.hang().words(),
                                "24 h at least in a machine maker's how-to, for bias and circular"
                                        + " skirts; two or three days in The New Dressmaker, 1921,"
                                        + " for a circular one; which for which cloth is common"
                                        + " practice; write `hang`"))
                : Optional.empty();
    }

    private static boolean isJudged(HemEdge edge) {
        return edge.handling() == HemEdge.Handling.EASE
                || edge.handling() == HemEdge.Handling.TOO_FULL;
    }

    private static Stream<Open> open(HemResult result) {
        Stream<Open> facing =
                result.hem().depth().isPresent()
                        ? Stream.empty()
                        : Stream.of(
                                new Open(
                                        result.name() + ": the depth of its facing",
                                        "the pressing card, and the two edges of the facing",
                                        "Decide how deep the facing is, and write it as `depth`."));
        Stream<Open> folds =
                result.edges().stream()
                        .filter(edge -> edge.piece().shape().asDrawn().isEmpty())
                        .map(edge -> fold(result.name(), edge));
        return Stream.concat(facing, folds);
    }

    private static Open fold(String hem, HemEdge edge) {
        return new Open(
                hem + ": how the fold of " + edge.edge().words() + " curves",
                "how much longer its turned edge is, and its pressing card",
                "Stretch a thread between both ends of its hem line and look how far the line"
                        + " bulges from it; draw the piece with `outline` and that curve. If it is"
                        + " straight, the turned edge lies flat.");
    }
}
