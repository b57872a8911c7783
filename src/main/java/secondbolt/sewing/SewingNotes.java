package secondbolt.sewing;

import java.util.ArrayList;
import java.util.List;
import secondbolt.file.value.Quoted;
import secondbolt.measure.Tape;
import secondbolt.sewing.advice.SewnCloth;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.sewing.plan.Stitch;
import secondbolt.sewing.plan.ThreadPlan;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.sewing.thread.ThreadRatios;
import secondbolt.sewing.thread.ThreadTotal;
import secondbolt.sewing.thread.ThreadUse;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;

/** What a maker should read of her sewing. */
final class SewingNotes {
    private static final int MOST_NAMED = 8;

    private SewingNotes() {}

    static Notes of(SewingResult result, Tape tape) {
        return new Notes(
                new SewingFindings(result, tape).all(), assumed(result, tape), open(result));
    }

    private static List<Assumed> assumed(SewingResult result, Tape tape) {
        if (result.uses().isEmpty()) {
            return List.of();
        }
        SewingPlan plan = result.plan();
        List<Assumed> assumed = new ArrayList<>();
        if (plan.means().have().isEmpty()) {
            assumed.add(common("stitches of your machine", "lockstitch and zigzag", "have"));
        }
        if (plan.seams().stitch().isEmpty()) {
            assumed.add(
                    common("stitch of the seams", result.with().usualStitch().word(), "stitch"));
        }
        if (plan.seams().finish().isEmpty() && !result.lines().joins().isEmpty()) {
            assumed.add(
                    common(
                            "finish of the seams",
                            result.with().finish(plan.seams()).word()
                                    + " on every join that does not lie inside",
                            "finish"));
        }
        if (plan.neatened().isEmpty()
                && result.uses().size() > result.lines().joins().size()
                && !result.lines().joins().isEmpty()) {
            assumed.add(common("edges of a seam", "neatened apart, each for itself", "edges"));
        }
        List<String> inside =
                result.lines().joins().stream()
                        .filter(JoinLine::isEnclosed)
                        .map(join -> join.seam().words())
                        .toList();
        if (!inside.isEmpty()) {
            assumed.add(
                    new Assumed(
                            "joins that lie inside, and are not neatened",
                            SewingWords.listed(inside, MOST_NAMED),
                            "derived: stiffened, double or lined; write another finish under"
                                    + " `except`"));
        }
        stitchLength(result, tape, assumed);
        thread(result, tape, assumed);
        return assumed;
    }

    private static Assumed common(String what, String value, String key) {
        return new Assumed(
                what, value, Convention.COMMON_PRACTICE + "; write `" + key + "` under `sewing`");
    }

    private static void stitchLength(SewingResult result, Tape tape, List<Assumed> assumed) {
        ThreadRatios ratios = new ThreadRatios(result.plan().means());
        boolean isByHand = result.uses().stream().map(ThreadUse::stitch).anyMatch(Stitch::isByHand);
        if (result.plan().means().stitchLength().isEmpty()) {
            assumed.add(
                    common(
                            "length of a stitch",
                            isByHand && result.plan().means().isByHand()
                                    ? tape.printSmall(ratios.hand())
                                    : tape.printSmall(ratios.machine()),
                            "stitch length"));
        }
        if (result.plan().means().thickness().isEmpty()) {
            assumed.add(
                    common(
                            "layers of a seam, how thick",
                            tape.printSmall(ratios.thickness()),
                            "seam thickness"));
        }
    }

    private static void thread(SewingResult result, Tape tape, List<Assumed> assumed) {
        ThreadPlan thread = result.plan().thread();
        if (thread.fibre().isEmpty()) {
            assumed.add(common("thread", "polyester", "thread: {of: …}"));
        }
        if (thread.waste().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "thread for ends, bobbins and trials",
                            ThreadPlan.USUAL_WASTE.percent(0),
                            "thread use of a woven shirt, 2015; other sources 5 % to 20 %"));
        }
        boolean hasSpools = result.totals().stream().anyMatch(total -> !total.isOnCones());
        if (thread.spool().isEmpty() && hasSpools) {
            assumed.add(
                    new Assumed(
                            "thread on a spool",
                            tape.printShop(ThreadPlan.USUAL_SPOOL.on(tape)),
                            ThreadPlan.USUAL_SPOOL.source()));
        }
        if (thread.cone().isEmpty() && result.totals().stream().anyMatch(ThreadTotal::isOnCones)) {
            assumed.add(
                    new Assumed(
                            "thread on a cone",
                            tape.printShop(ThreadPlan.USUAL_CONE.on(tape)),
                            ThreadPlan.USUAL_CONE.source()));
        }
    }

    private static List<Open> open(SewingResult result) {
        List<Open> open = new ArrayList<>();
        if (result.plan().frays().toOptional().isEmpty() && !result.lines().joins().isEmpty()) {
            open.add(
                    new Open(
                            "how the cloth frays",
                            "whether edges may stay raw or pinked, and when they must be neatened",
                            "Cut a scrap on the straight and rub the edge twenty times between"
                                    + " your fingers: threads loose by more than 3 mm (1/8 in) are"
                                    + " `frays: much`, less `little`, none `hardly` (common"
                                    + " practice, no source)."));
        }
        if (!result.open().isEmpty()) {
            open.add(
                    new Open(
                            "the length of "
                                    + SewingWords.listed(
                                            result.open().stream().map(ThreadUse::what).toList(),
                                            MOST_NAMED),
                            "their thread, which is left out of the sum",
                            "Measure these edges on the paper pattern as it is altered, and write"
                                    + " them as `edges` of their piece."));
        }
        if (!result.lines().untold().isEmpty()) {
            open.add(untold(result));
        }
        List<String> weightless =
                result.cloths().stream()
                        .filter(cloth -> cloth.weight().isEmpty())
                        .map(SewnCloth::name)
                        .toList();
        if (!weightless.isEmpty()) {
            open.add(
                    new Open(
                            "how heavy these cloths are: "
                                    + SewingWords.listed(weightless, MOST_NAMED),
                            "the size of the needle, and whether a finish is too bulky",
                            "Weigh the cloth dry and write its `mass`; with its size the weight"
                                    + " follows."));
        }
        return open;
    }

    private static Open untold(SewingResult result) {
        List<String> names =
                result.lines().untold().stream().map(one -> one.edge().heading()).toList();
        return new Open(
                "how these edges are sewn: " + SewingWords.listed(names, MOST_NAMED),
                "their thread, which is left out of the sum",
                "Write a join under `seams`, a hem under `hems`, or a line under `sewing`: `also:"
                        + " [{what: …, along: ["
                        + Quoted.of(result.lines().untold().get(0).edge().toString())
                        + "]}]`, with 0 as its `rows` where nothing is sewn.");
    }
}
