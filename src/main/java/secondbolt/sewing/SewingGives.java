package secondbolt.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.measure.Tape;
import secondbolt.sewing.advice.NeedleRow;
import secondbolt.sewing.plan.Finish;
import secondbolt.sewing.plan.Fraying;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.sewing.plan.Stitch;
import secondbolt.sewing.plan.ThreadFibre;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.sewing.thread.ThreadTotal;
import secondbolt.sewing.thread.ThreadUse;
import secondbolt.task.Amount;
import secondbolt.task.Hazard;
import secondbolt.task.Need;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;

/**
 * What the sewing contributes to the order of work and to what is bought.
 *
 * @param result worked out
 * @param tape to print with
 */
record SewingGives(SewingResult result, Tape tape) {
    private static final int MOST_NAMED = 8;

    Gives all() {
        return new Gives(steps(), needs(), words());
    }

    private List<WorkStep> steps() {
        List<WorkStep> steps = new ArrayList<>();
        if (result.uses().isEmpty()) {
            return steps;
        }
        steps.add(testSeam());
        if (!result.lines().stays().isEmpty()) {
            steps.add(stay());
        }
        List<Finish> finishes = finishes();
        if (!finishes.isEmpty()) {
            steps.add(neaten(finishes));
        }
        return steps;
    }

    private WorkStep testSeam() {
        return WorkStep.of(
                        "test seam",
                        Stage.SEWING,
                        "Sew a seam on scraps, in the layers of a real one and with the thread and"
                                + " the needle of the garment: neither thread may lie straight on"
                                + " the cloth, nothing may pucker. Rub a cut edge twenty times to"
                                + " see how it frays, and try the finish on it.")
                .after("buy", "The trial is worth nothing with another thread or needle.")
                .after(
                        "cut",
                        "Its scraps come from the cutting, and have been through all that the pieces"
                                + " have.")
                .minding(Hazard.NEEDLE);
    }

    private WorkStep stay() {
        List<String> edges =
                result.lines().stays().stream()
                        .flatMap(line -> line.edges().stream())
                        .map(edge -> edge.heading())
                        .toList();
        return WorkStep.of(
                        "stay-stitch",
                        Stage.SEWING,
                        "Stay-stitch the curved edges, one layer at a time, in the allowance 3 mm"
                                + " (1/8 in) outside the seam line: "
                                + SewingWords.listed(edges, MOST_NAMED)
                                + ".")
                .after("cut", "There is nothing to stitch before the pieces are cut.")
                .after("mark", "The line is stitched beside the seam line that is marked.")
                .after("test seam", "A wrong tension puckers the very edge it shall hold.")
                .minding(Hazard.NEEDLE);
    }

    /** Those that are put on beside the seams, each once. */
    private List<Finish> finishes() {
        return result.lines().joins().stream()
                .filter(join -> join.line().times() > 0)
                .map(JoinLine::choice)
                .map(choice -> result.with().finish(choice))
                .filter(finish -> finish != Finish.RAW && !finish.isPartOfTheSeam())
                .distinct()
                .sorted()
                .toList();
    }

    private WorkStep neaten(List<Finish> finishes) {
        String how = SewingWords.listed(finishes.stream().map(Finish::word).toList(), MOST_NAMED);
        boolean isTogether =
                result.plan().neatened().filter(SewingPlan.Neatened.TOGETHER::equals).isPresent();
        boolean isUrgent =
                !isTogether
                        && result.plan()
                                .frays()
                                .toOptional()
                                .filter(f -> f == Fraying.MUCH)
                                .isPresent();
        WorkStep step = WorkStep.of("neaten", Stage.SEWING, neatening(how, isTogether, isUrgent));
        WorkStep placed =
                isUrgent
                        ? step.after("mark", "Notches are cut and marks made at a clean edge.")
                        : step.after(
                                "fit on",
                                "An edge that is trimmed and neatened leaves nothing to let out.");
        return placed.after("test seam", "The finish is tried on a scrap first.")
                .minding(Hazard.NEEDLE, Hazard.BLADE);
    }

    /** Both edges in one can only be neatened when they are joined: common practice, no source. */
    private static String neatening(String how, boolean isTogether, boolean isUrgent) {
        if (isTogether) {
            return "From here on neaten both edges of each seam in one ("
                    + how
                    + ") as soon as it is sewn, before another seam crosses it.";
        }
        return isUrgent
                ? "Neaten the cut edges ("
                        + how
                        + ") while the pieces are flat, and handle them little: this cloth frays"
                        + " much. Trim nothing off."
                : "Neaten the edges of the seams ("
                        + how
                        + ") before another seam crosses them, and before the garment is washed at"
                        + " all.";
    }

    private List<Need> needs() {
        List<Need> needs = new ArrayList<>();
        result.totals().forEach(total -> needs.add(thread(total)));
        boolean isByHand = stitches().anyMatch(Stitch::isByHand);
        boolean isByMachine = stitches().anyMatch(stitch -> !stitch.isByHand());
        if (isByMachine) {
            needs.add(
                    Need.of(
                            "machine needles" + sizes(),
                            new Amount.Pieces(1, "packet"),
                            "a new one for this project, another after 8 to 12 hours of sewing"));
        }
        if (isByHand) {
            needs.add(
                    Need.of(
                            "hand sewing needles",
                            new Amount.Pieces(1, "packet"),
                            "as fine as the thread goes through"));
        }
        return needs;
    }

    private Stream<Stitch> stitches() {
        return result.uses().stream().map(ThreadUse::stitch);
    }

    /** Only where the weight of a cloth is known: else the size would be a guess. */
    private String sizes() {
        List<String> sizes =
                result.cloths().stream()
                        .filter(cloth -> cloth.weight().isPresent())
                        .flatMap(cloth -> NeedleRow.of(cloth).stream())
                        .map(row -> row.manual().isEmpty() ? row.chart() : row.manual())
                        .distinct()
                        .toList();
        return sizes.isEmpty() ? "" : ", size " + String.join(" or ", sizes);
    }

    private Need thread(ThreadTotal total) {
        Need need =
                Need.of(
                        SewingWords.item(total, result.plan().thread()),
                        new Amount.Pieces(total.count(), SewingWords.each(total, tape)),
                        tape.printShop(total.gross())
                                + " with "
                                + total.waste().percent(1)
                                + " for ends and trials");
        if (result.dyed() == SewingResult.Dyed.SEWN) {
            return Need.of(
                    need.item(), need.amount(), need.why() + "; it is dyed with the garment");
        }
        ThreadFibre fibre = result.plan().thread().fibre().orElse(ThreadFibre.POLYESTER);
        return fibre == ThreadFibre.POLYESTER
                ? need.boughtAfter("dry", "Polyester thread stays as pale as it is.")
                : need.boughtAfter("dry", "Its colour is chosen by the dyed, dry cloth.");
    }

    private List<Term> words() {
        if (result.uses().isEmpty()) {
            return List.of();
        }
        return List.of(
                new Term(
                        "lockstitch",
                        "the straight stitch of a household machine, of a needle thread and a"
                                + " bobbin thread that meet between the layers"),
                new Term("overlock", "a stitch over the cut edge, which its machine trims"),
                new Term(
                        "stay-stitching",
                        "one line of stitches through one layer that keeps a curved edge from"
                                + " stretching"),
                new Term("to neaten", "to finish a cut edge so that it does not fray"));
    }
}
