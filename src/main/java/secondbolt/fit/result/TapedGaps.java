package secondbolt.fit.result;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.file.value.Quoted;
import secondbolt.fit.alter.TapedGap;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Open;

/**
 * What the tape does not tell of the pieces that are altered: which of their edges a line crosses.
 *
 * @param gaps one for each line that is really moved and of which the maker does not say it
 * @param seams all joins, checked
 * @param tape to print with
 */
public record TapedGaps(List<TapedGap> gaps, List<SeamCheck> seams, Tape tape) {
    /** The gaps of an altered pattern, with its joins. */
    public static TapedGaps of(FitResult result, Tape tape) {
        return new TapedGaps(result.gaps(), result.seams(), tape);
    }

    /** What is taken for granted, with the key that corrects it. */
    public List<Assumed> assumed() {
        return gaps.stream()
                .filter(gap -> !gap.line().crossing().isEmpty())
                .map(
                        gap ->
                                new Assumed(
                                        gap.piece().name()
                                                + ": which taped edges its line "
                                                + gap.name()
                                                + " crosses",
                                        String.join(", ", gap.line().crossing()),
                                        "by name they run lengthwise, and they are too long to lie"
                                                + " all above or all below it; if it is otherwise,"
                                                + " write `crosses` as in "
                                                + written(gap)))
                .toList();
    }

    /** What is not known, what hangs on it and how to find out. */
    public List<Open> open() {
        return gaps.stream()
                .filter(gap -> !gap.line().open().isEmpty())
                .map(
                        gap ->
                                new Open(
                                        "whether the line "
                                                + gap.name()
                                                + " of "
                                                + gap.piece().name()
                                                + " crosses "
                                                + String.join(", ", gap.line().open()),
                                        blocks(gap),
                                        findOut(gap)))
                .toList();
    }

    private String blocks(TapedGap gap) {
        List<String> joins =
                seams.stream()
                        .filter(seam -> seam.open().stream().anyMatch(e -> gap.concerns(e.edge())))
                        .map(seam -> seam.seam().words())
                        .toList();
        String lengths = "how long they are after the alterations";
        return joins.isEmpty()
                ? lengths
                : lengths + ", and whether these joins meet: " + String.join("; ", joins);
    }

    /** What to do about some open edges, each line told once. */
    public String findOut(List<EdgeSum.Term> edges) {
        Set<String> told = new LinkedHashSet<>();
        for (EdgeSum.Term edge : edges) {
            List<TapedGap> here = gaps.stream().filter(gap -> gap.concerns(edge.edge())).toList();
            here.forEach(gap -> told.add(findOut(gap)));
            if (here.isEmpty()) {
                told.add(
                        "Draw "
                                + edge.piece()
                                + ", as `outline` or `rectangle`: a box does not show which of its"
                                + " edges change with its width.");
            }
        }
        return String.join(" ", told);
    }

    private String findOut(TapedGap gap) {
        return "Look at "
                + gap.piece().name()
                + ": an edge crosses "
                + gap.name()
                + " if it begins above the line and ends below it. Write those edges in"
                + " `crosses`, as in "
                + written(gap)
                + ", or `none`.";
    }

    private String written(TapedGap gap) {
        Length at = gap.piece().lines().get(gap.name());
        String edges =
                gap.line().crossing().isEmpty()
                        ? "…"
                        : gap.line().crossing().stream()
                                .map(Quoted::of)
                                .collect(Collectors.joining(", "));
        return "`lines: {"
                + Quoted.of(gap.name())
                + ": {at: "
                + BareLength.of(tape, at)
                + ", crosses: ["
                + edges
                + "]}}`";
    }
}
