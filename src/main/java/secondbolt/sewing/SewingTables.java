package secondbolt.sewing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.block.Table.Cell;
import secondbolt.measure.Tape;
import secondbolt.sewing.advice.FinishAdvice;
import secondbolt.sewing.advice.FinishNeed;
import secondbolt.sewing.plan.Finish;
import secondbolt.sewing.plan.Stitch;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.sewing.thread.ThreadRatio;
import secondbolt.sewing.thread.ThreadRatios;
import secondbolt.sewing.thread.ThreadUse;

/**
 * The tables of the page.
 *
 * @param result worked out
 * @param tape to print with
 */
record SewingTables(SewingResult result, Tape tape) {
    private static final String NOT_KNOWN = "not known";

    /** Every line with its thread. */
    Table lines() {
        return new Table(
                "Every line that is sewn, with its thread",
                "",
                List.of("Line", "Length in all", "Stitch", "Times", "Thread"),
                result.uses().stream().map(this::line).toList());
    }

    private List<Cell> line(ThreadUse use) {
        return List.of(
                Cell.of(use.what()),
                Cell.of(Both.of(tape, use.length(), NOT_KNOWN)),
                Cell.of(use.stitch().words()),
                Cell.of(use.ratio().words()),
                Cell.of(
                        use.thread()
                                .map(thread -> SewingWords.thread(tape, thread))
                                .orElse(Both.words("left out"))));
    }

    /** How much thread the stitches take, what is used first, the rivals after it. */
    Table ratios() {
        Set<Stitch> used = new LinkedHashSet<>();
        result.uses().forEach(use -> used.add(use.stitch()));
        ThreadRatios ratios = new ThreadRatios(result.plan().means());
        List<List<Cell>> rows = new ArrayList<>();
        for (Stitch stitch : used) {
            ThreadRatio taken = ratios.of(stitch);
            rows.add(row(stitch, taken, "taken"));
            if (result.plan().means().ratios().containsKey(stitch)) {
                rows.add(row(stitch, ratios.published(stitch), ""));
            }
            ratios.rivals(stitch).forEach(rival -> rows.add(row(stitch, rival, "")));
        }
        return new Table(
                "How many times its length each stitch takes of thread, by source",
                "Where sources differ all stand here, and one is taken. What you measured yourself"
                        + " comes before all of them.",
                List.of("Stitch", "Times its length", "Source", ""),
                rows);
    }

    private static List<Cell> row(Stitch stitch, ThreadRatio ratio, String taken) {
        return List.of(
                Cell.of(stitch.words()),
                Cell.of(ratio.words()),
                Cell.of(ratio.source()),
                Cell.of(taken));
    }

    /** Every finish, what it wants and which of her joins it suits. */
    Table finishes() {
        FinishAdvice advice = new FinishAdvice(result.cloths(), result.plan().frays(), tape);
        List<List<Cell>> rows = new ArrayList<>();
        for (Finish finish : Finish.values()) {
            FinishNeed need = FinishNeed.of(finish);
            rows.add(
                    List.of(
                            Cell.of(finish.word()),
                            Cell.of(need.cloth()),
                            Cell.of(tape, need.allowance().on(tape)),
                            Cell.of(need.takes()),
                            Cell.of(suits(finish, advice))));
        }
        return new Table(
                "Seam finishes, and which joins each suits",
                "The allowance is what each edge must have.",
                List.of("Finish", "For", "Allowance", "Takes", "On your joins"),
                rows);
    }

    private String suits(Finish finish, FinishAdvice advice) {
        List<JoinLine> joins =
                result.lines().joins().stream().filter(join -> !join.isEnclosed()).toList();
        Map<FinishAdvice.Against, Integer> against = new TreeMap<>();
        int good = 0;
        for (JoinLine join : joins) {
            List<FinishAdvice.Against> all = advice.against(finish, join);
            good += all.isEmpty() ? 1 : 0;
            all.forEach(one -> against.merge(one, 1, Integer::sum));
        }
        if (joins.isEmpty()) {
            return "all lie inside";
        }
        if (good == joins.size()) {
            return "suits all";
        }
        String why =
                against.entrySet().stream()
                        .map(
                                one ->
                                        one.getKey().word()
                                                + (one.getValue() == joins.size()
                                                        ? ""
                                                        : " (" + one.getValue() + ")"))
                        .collect(Collectors.joining(", "));
        return (good == 0 ? "none: " : good + " of " + joins.size() + "; ") + why;
    }
}
