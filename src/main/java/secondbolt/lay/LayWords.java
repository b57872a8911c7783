package secondbolt.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.picture.CuttingPlan;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.lay.plan.Design;
import secondbolt.lay.plan.Placing;
import secondbolt.lay.stock.Lack;
import secondbolt.lay.stock.Slack;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;

/**
 * Words for lays, the same on the page and on the sheets.
 *
 * @param tape to print with
 */
record LayWords(Tape tape) {
    /** Computed lengths are out by less than this. */
    private static final double DUST_MM = 1e-4;

    private static final Length DUST = Length.ofComputedMillimetres(DUST_MM);

    /** A length on the cloth. */
    String length(double mm) {
        return tape.print(Length.ofComputedMillimetres(mm));
    }

    /** What stays over. */
    String size(Box box) {
        Length across = Length.ofComputedMillimetres(box.widthMm()).roundedDownTo(tape.mark());
        Length along = Length.ofComputedMillimetres(box.heightMm()).roundedDownTo(tape.mark());
        return tape.print(across) + " by " + tape.print(along);
    }

    /** What stays over of a cloth, in one piece. */
    String over(CuttingPlan plan) {
        boolean folded = plan.spread().fold().isPresent();
        return plan.over()
                .map(box -> size(box) + (folded ? ", double" : "") + where(box, folded))
                .orElse("nothing in one piece");
    }

    private String where(Box box, boolean folded) {
        return ", beginning "
                + length(box.leftMm())
                + (folded ? " from the fold and " : " from the left and ")
                + length(box.topMm())
                + " from the top";
    }

    /** How much room is to spare on a cloth, each way. */
    String slack(Slack slack) {
        return slack("across", slack.across()) + ", " + slack("along", slack.along());
    }

    private String slack(String way, Slack.Room room) {
        Length length = downwards(room.leastMm());
        boolean isExact = downwards(room.mostMm()).equals(length);
        if (length.isPositive()) {
            return (isExact ? "" : "at least ") + tape.print(length) + " to spare " + way;
        }
        return (isExact ? "no slack " : "as laid nothing to spare ") + way;
    }

    private Length downwards(double mm) {
        return Length.ofComputedMillimetres(mm + DUST_MM).roundedDownTo(tape.mark());
    }

    /** Whether there is certainly nothing to spare one way. */
    boolean isTight(Slack.Room room) {
        return !downwards(room.mostMm()).isPositive();
    }

    /** What lacks for pieces that have room on no cloth, or for all of them together. */
    String lack(LayResult result, StockLay stock) {
        List<String> words = new ArrayList<>(tooLarge(stock));
        Optional.ofNullable(result.lacking().get(stock.role()))
                .ifPresent(
                        length ->
                                words.add(
                                        stock.spreads().get(0).name()
                                                + " lacks "
                                                + upwards(length)
                                                + " of length, as far as was found"));
        return String.join("; ", words);
    }

    /** What lacks for each piece that has room on no cloth even alone. */
    List<String> tooLarge(StockLay stock) {
        return stock.tooLarge().stream()
                .map(lack -> lack.piece().piece().name() + " " + lack(lack))
                .distinct()
                .toList();
    }

    private String lack(Lack lack) {
        List<String> lacks = new ArrayList<>();
        if (lack.acrossMm() > 0) {
            lacks.add(upwards(Length.ofComputedMillimetres(lack.acrossMm())) + " of width");
        }
        if (lack.alongMm() > 0) {
            lacks.add(upwards(Length.ofComputedMillimetres(lack.alongMm())) + " of length");
        }
        return "lacks " + String.join(" and ", lacks);
    }

    /** To the next mark of the tape, so that with so much more it fits. */
    private String upwards(Length length) {
        return tape.print(length.minus(DUST).roundedUpTo(tape.mark()));
    }

    /** What the lengths from the bolt are for, and what must be added to them. */
    List<String> yardage(LayResult result) {
        List<SpreadCloth> spreads =
                result.made().stocks().stream().flatMap(s -> s.spreads().stream()).toList();
        boolean oneWay = spreads.stream().anyMatch(SpreadCloth::isOneWay);
        boolean matched =
                !result.plan().rules().matches().isEmpty()
                        && spreads.stream().anyMatch(s -> s.repeat().isAny());
        return List.of(
                "What the altered pieces would take from a bolt without flaws, cut "
                        + (result.plan().isFolded() ? "folded lengthwise" : "single")
                        + (oneWay ? ", all tops up" : "")
                        + (matched ? ", stripes or checks matched" : "")
                        + "."
                        + cutAsWell(result),
                (matched
                                ? "For another pattern than this cloth's"
                                : "For stripes or checks that must match")
                        + " add one repeat for each piece that must match"
                        + (oneWay ? "." : ", and for a nap buy by a lay with all tops up."),
                "Cloth that still shrinks needs so much more before it is washed.");
    }

    /** That lengths from the bolt are those of all pieces; empty if none is cut yet. */
    static String cutAsWell(LayResult result) {
        return result.plan().soFar().stream().allMatch(Placing::isSpoilt)
                ? ""
                : " Pieces that are cut already are counted as well.";
    }

    /** How a cloth is spread before it is cut, and where distances on it are measured from. */
    String spread(SpreadCloth spread) {
        return spread.fold()
                .map(
                        fold ->
                                "Fold the trimmed and washed cloth along its length, "
                                        + tape.print(fold)
                                        + " from its left edge, the right side out. All distances"
                                        + " are from the fold and from its top. What is cut of the"
                                        + " upper layer only: lift it, and leave the lower layer"
                                        + " whole.")
                .orElse(
                        "Lay the trimmed and washed cloth out single, right side up. All distances"
                                + " are from its left edge and from its top.");
    }

    /** A pin point: where on the piece, how far from the left or the fold, how far from the top. */
    List<String> row(PinPoint pin) {
        return List.of(pin.where(), length(pin.at().xMm()), length(pin.at().yMm()));
    }

    /** Pieces by name, with how many of each. */
    static List<String> counted(List<LayPiece> pieces) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        pieces.forEach(piece -> counts.merge(piece.piece().name(), piece.copies(), Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((name, count) -> words.add(count == 1 ? name : name + " (" + count + ")"));
        return words;
    }

    /** A share in whole hundredths. */
    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    /** Whether a cloth is as heavy as a design is made for; empty if that is not told. */
    String suits(Optional<Design> design, List<ClothResult> cloths) {
        Optional<List<ClothWeight>> wanted = design.flatMap(Design::suits);
        if (wanted.isEmpty()) {
            return "";
        }
        List<String> words = new ArrayList<>();
        for (ClothResult cloth : cloths) {
            Optional<ClothWeight> weight = cloth.heaviness().washedWeight();
            String is = weight.map(w -> against(w, wanted.get())).orElse("weight not known");
            words.add(cloths.size() == 1 ? is : cloth.name() + ": " + is);
        }
        return String.join("; ", words);
    }

    private String against(ClothWeight weight, List<ClothWeight> wanted) {
        String than = tape.print(weight) + ", made for " + tape.print(wanted.get(0)) + " to ";
        String range = than + tape.print(wanted.get(1));
        if (weight.compareTo(wanted.get(0)) < 0) {
            return "lighter: " + range;
        }
        return weight.compareTo(wanted.get(1)) > 0 ? "heavier: " + range : "suits: " + range;
    }
}
