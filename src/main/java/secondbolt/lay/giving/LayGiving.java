package secondbolt.lay.giving;

import java.util.ArrayList;
import java.util.List;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.garment.Role;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Plural;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;

/** What the lay contributes: the one step that cannot be undone. */
public final class LayGiving {
    private LayGiving() {}

    /**
     * Of the design that is made.
     *
     * @param cutting the pieces that were laid
     */
    public static Gives of(LayResult result, CuttingResult cutting) {
        CutCount count = CutCount.of(result.made(), cutting);
        if (count.all() == 0) {
            return Gives.NOTHING;
        }
        WorkStep cut = cut(result, count);
        return new Gives(
                List.of(count.isDone() ? cut.done() : cut), List.of(), words(result, count));
    }

    private static WorkStep cut(LayResult result, CutCount count) {
        WorkStep step =
                WorkStep.of("cut", Stage.CUTTING, text(result, count))
                        .after(
                                "survey",
                                "A flaw that the last wash brought out would lie in a piece.")
                        .after("press", "A crease or a cockle changes the size of what is cut.")
                        .after(
                                "alter the paper",
                                "What is cut by the old paper has the old size (The New Dressmaker,"
                                        + " 1921: alter before cutting).")
                        .after(
                                "check the print",
                                "A print at 97 % makes a bust of 100 one of 97: it shows when all is"
                                        + " cut.")
                        .after(
                                "measure the pieces",
                                "Whether it goes round the body is seen on paper, or too late.")
                        .after(
                                "choose the buttons",
                                "The extension is cut for the size of the button (Buttons and"
                                        + " Buttonholes, Extension Bulletin 576).")
                        .minding(Hazard.BLADE, Hazard.NEEDLE);
        return count.isDone()
                ? step
                : step.checking(new CutChecks(result, count).all().toArray(String[]::new));
    }

    private static String text(LayResult result, CutCount count) {
        if (count.isDone()) {
            return "All " + Plural.of(count.all(), "copy", "copies") + " are cut, as the log says.";
        }
        int cut = count.all() - count.allLeft();
        String design = result.made().design().map(d -> result.made().name() + ", ").orElse("");
        return "Cut by the cutting plan, the largest pieces first: "
                + design
                + count.words()
                + "."
                + (cut > 0 ? " " + cut + " of " + count.all() + " are cut already." : "")
                + " Keep every scrap until the garment is finished.";
    }

    private static List<Term> words(LayResult result, CutCount count) {
        List<Term> words = new ArrayList<>();
        words.add(
                new Term(
                        "grain",
                        "The way of the threads of the cloth: along, as its selvages run, or across."
                                + " A piece hangs true when its arrow lies on it."));
        words.add(
                new Term(
                        "selvage",
                        "The firm edge that a cloth has at both sides from the loom; it draws up in"
                                + " the wash."));
        if (result.cloths().stream().anyMatch(c -> c.cloth().textile().isLaidOneWay())) {
            words.add(
                    new Term(
                            "nap",
                            "What makes a cloth look different upside down: a pile, a brushed face,"
                                    + " or a print with a top."));
        }
        if (count.wanted().containsKey(Role.INTERFACING)) {
            words.add(
                    new Term(
                            "interfacing",
                            "A layer inside an edge, sewn in or ironed on, which keeps its shape and"
                                    + " holds buttonholes."));
        }
        return words;
    }
}
