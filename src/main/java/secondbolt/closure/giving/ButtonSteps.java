package secondbolt.closure.giving;

import java.util.List;
import java.util.stream.Stream;
import secondbolt.closure.fastening.Button;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Plural;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/**
 * From choosing the buttons to sewing them on.
 *
 * <p>Sources: Buttons and Buttonholes, Extension Bulletin 576, 1965, for the size before the
 * extension is cut; Machine Buttonholes Made Easy, Guide C-231, New Mexico State University, for
 * the trial on the same layers; Text-Book on Domestic Art and School Sewing for the thread shank.
 * The rest is common practice without a source.
 */
final class ButtonSteps {
    private static final int CONCERNED = 5;

    private final List<GivenClosure> closures;

    private ButtonSteps(List<GivenClosure> closures) {
        this.closures = closures;
    }

    /** The steps, in order; none if nothing is buttoned. */
    static List<WorkStep> of(List<GivenClosure> buttoned) {
        if (buttoned.isEmpty()) {
            return List.of();
        }
        ButtonSteps steps = new ButtonSteps(buttoned);
        return List.of(steps.choose(), steps.holes(), steps.open(), steps.sewOn());
    }

    /** Their size alone: their colour may have to wait for the dye. */
    private WorkStep choose() {
        return WorkStep.of(
                "choose the buttons",
                Stage.PLANNING,
                "Settle the size of the buttons, with one of each in the hand, measured across and"
                        + " through; extension and holes are worked out for "
                        + GivenClosure.each(closures, FastenerNeeds::item)
                        + ".");
    }

    private WorkStep holes() {
        WorkStep step =
                WorkStep.of(
                                "buttonholes",
                                Stage.CLOSING,
                                "Work the holes along the printed strips, all of them before one is"
                                        + " opened. "
                                        + GivenClosure.each(closures, ButtonSteps::holes)
                                        + ".")
                        .after(
                                "choose the buttons",
                                "A hole is made for its button: another thickness asks for another"
                                        + " length.")
                        .after(
                                "fuse",
                                "The interfacing holds the cut: without it the hole stretches and"
                                        + " frays.")
                        .checking(
                                "A trial hole on the same layers, worked and opened: cloth,"
                                        + " interfacing, cloth, the same way to the grain. The"
                                        + " button passes it without force, five times.",
                                "The strips are true: their test square measures 100 mm both ways.",
                                "The top ends of both sides lie level, and the marks were pricked"
                                        + " through from the strips.")
                        .minding(Hazard.NEEDLE);
        return GivenClosure.afterHems(afterSeams(step), closures);
    }

    private WorkStep afterSeams(WorkStep step) {
        return closures.stream().allMatch(c -> c.closure().overlap().isHidden())
                ? step
                : step.after(
                                "assemble",
                                "A hole goes through all layers of its placket: they must be sewn"
                                        + " and pressed first.")
                        .after(
                                "band",
                                "A hole in a band or beside it is measured from the finished"
                                        + " edge.");
    }

    private static String holes(GivenClosure closure) {
        String holes =
                closure.count().map(count -> Plural.of(count, "hole")).orElse("holes")
                        + " "
                        + closure.tape().printSmall(closure.fastening().hole())
                        + " long, "
                        + closure.fastening().holes().word()
                        + (closure.fastening().differing().isEmpty()
                                ? ""
                                : " but for those marked otherwise");
        return holes
                + byHand(closure)
                + (closure.closure().overlap().isHidden()
                        ? ", in the hidden layer only and before it is sewn in"
                        : "");
    }

    private static String byHand(GivenClosure closure) {
        List<Integer> byHand =
                closure.result().stream()
                        .flatMap(r -> r.row().byHand().stream())
                        .map(number -> number + 1)
                        .toList();
        return byHand.isEmpty()
                ? ""
                : ", number " + Plural.runs(byHand) + " by hand, as bulk lies there";
    }

    private WorkStep open() {
        return WorkStep.of(
                        "open buttonholes",
                        Stage.CLOSING,
                        "Open one hole, a pin across each bar, cut from both ends to the middle;"
                                + " pass its button through, then open the rest.")
                .after(
                        "buttonholes",
                        "A hole is cut inside its stitches: cut first, it frays and cannot be put"
                                + " right.")
                .checking(openingChecks())
                .minding(Hazard.BLADE, Hazard.NEEDLE);
    }

    private String[] openingChecks() {
        return Stream.concat(
                        Stream.of(
                                "This cannot be undone. The trial hole is open, and the button goes"
                                        + " through it.",
                                "Each hole is worked on the side that lies over, and every bar is"
                                        + " fast."),
                        closures.stream().flatMap(c -> c.result().stream()).map(this::reread))
                .toArray(String[]::new);
    }

    /** The row read once more, from the first to the last. */
    private String reread(ClosureResult result) {
        List<String> marks =
                result.marks().stream().map(m -> result.tape().print(m.fromTop())).toList();
        String some =
                marks.size() <= CONCERNED
                        ? String.join(", ", marks)
                        : String.join(", ", marks.subList(0, 2))
                                + " … "
                                + marks.get(marks.size() - 1);
        return result.name()
                + ": count "
                + Plural.of(marks.size(), "hole")
                + " and read them again, from the top "
                + some
                + result.gap()
                        .filter(gap -> marks.size() > 2)
                        .map(gap -> "; " + result.tape().print(gap) + " apart on average")
                        .orElse("")
                + ".";
    }

    private WorkStep sewOn() {
        return WorkStep.of(
                        "buttons",
                        Stage.CLOSING,
                        "Lay the sides over each other, mark through the open holes, and sew on. "
                                + GivenClosure.each(closures, ButtonSteps::sewn)
                                + "."
                                + shank())
                .after("open buttonholes", "The place of a button is marked through its open hole.")
                .after(
                        "dry",
                        "Buttons are chosen beside the dyed cloth, dry: wet it looks darker, and it"
                                + " comes out otherwise than the packet shows.")
                .minding(Hazard.NEEDLE);
    }

    private static String sewn(GivenClosure closure) {
        String many =
                closure.toSewOn().map(count -> Plural.of(count, "button")).orElse("the buttons");
        return closure.hasTwoRows()
                ? many
                        + closure.count()
                                .map(c -> ", " + c + " of them")
                                .orElse(", one row of them")
                        + " beside the holes, for looks, the others under the holes"
                : many;
    }

    private String shank() {
        boolean hasOwn = has(Button.Attached.SHANK);
        boolean isSewnThrough = has(Button.Attached.SEWN_THROUGH);
        return (isSewnThrough
                        ? " A button with holes gets a shank of thread as long as the cloth with the"
                                + " hole is thick: sew over a pin or a toothpick, then wind the"
                                + " thread round four or five times."
                        : "")
                + (hasOwn ? " One with a shank of its own needs about six passes." : "");
    }

    private boolean has(Button.Attached attached) {
        return closures.stream()
                .flatMap(c -> c.fastening().button().stream())
                .anyMatch(button -> button.attached() == attached);
    }
}
