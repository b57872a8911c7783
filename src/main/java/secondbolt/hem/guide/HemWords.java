package secondbolt.hem.guide;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Decimals;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemLevel;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.cut.TurnedEdge;

/** What the sheets and the page of a hem say. */
public final class HemWords {
    /**
     * Common practice, no source: paper coated or printed with wax, plastic or fresh ink gives it
     * off under heat; the care label stands above any rule.
     */
    public static final List<String> HEAT =
            List.of(
                    "Glue the card to stiff card or oak tag. Never plastic, laminated or glossy"
                            + " card, and no fresh ink-jet print under steam: it stains and melts.",
                    "Iron and steam burn: keep fingers on the upper part of the card, and press as"
                            + " hot as the care label of the cloth allows, no hotter. Try on a scrap"
                            + " first.");

    private HemWords() {}

    /** How the card is used; short enough to be read beside the iron. */
    public static List<String> pressing(HemResult hem, List<PressingCard> cards, Tape tape) {
        List<String> steps = new ArrayList<>();
        steps.add(
                "Cut the card out along its heavy lines and glue it to stiff card; its lower edge"
                        + " is the fold.");
        steps.add(
                "Cut a selvage off the edge first: left in a hem it draws up in the wash (Watson,"
                        + " Textiles and Clothing, 1907).");
        steps.add(
                "Lay the cloth wrong side up and the card on it, printed side up, heavy edge where"
                        + " the fold comes.");
        steps.addAll(turns(hem, tape));
        List<HemEdge> eased = hem.handled(HemEdge.Handling.EASE);
        if (!eased.isEmpty()) {
            steps.add(
                    "Ease-stitch "
                            + tape.printSmall(Hem.RAW_EDGE.on(tape))
                            + " from the raw edge before you press, and draw "
                            + (isOnePanel(eased) ? "it" : "each panel")
                            + " up until it lies on the line; shrink it with steam.");
        }
        steps.add(
                cards.stream().anyMatch(c -> c.kind() == PressingCard.Kind.CURVE)
                        ? "A card of a whole curve has its ends named: turn it over for the"
                                + " mirrored piece, so that the names meet the seams."
                        : "Slide the card along and press again until you are round.");
        return steps;
    }

    /** Whether all of these is one edge of one piece that is cut once. */
    public static boolean isOnePanel(List<HemEdge> edges) {
        return edges.size() == 1 && edges.get(0).times() == (isOnFold(edges) ? 2 : 1);
    }

    /** Whether the first of these is drawn half, on a fold of the cloth. */
    public static boolean isOnFold(List<HemEdge> edges) {
        return edges.get(0).piece().fold().isPresent();
    }

    private static List<String> turns(HemResult hem, Tape tape) {
        List<String> lines = hem.pressing().stream().map(l -> print(tape, l)).toList();
        return switch (hem.hem().turned()) {
            case ONCE, BLIND ->
                    List.of(
                            "Fold the cloth up over the edge until its raw edge lies on the line "
                                    + lines.get(0)
                                    + "; press the fold. The raw edge is finished flat before.");
            case TWICE ->
                    List.of(
                            "First fold: the raw edge on the line "
                                    + lines.get(0)
                                    + "; press. Second fold: that folded edge on the line "
                                    + lines.get(1)
                                    + "; press.");
            case NARROW ->
                    List.of(
                            "Fold the raw edge up to the line "
                                    + lines.get(0)
                                    + "; press. Fold once more, the folded edge to the same line;"
                                    + " press.");
            case FACED ->
                    List.of(
                            "Turn the facing to the wrong side over the edge until its inner edge"
                                    + " lies on the line "
                                    + lines.get(0)
                                    + "; press the seam.");
        };
    }

    /** A length, finer if it is small. */
    public static String print(Tape tape, Length length) {
        return isSmall(length) ? tape.printSmall(length) : tape.print(length);
    }

    /** Whether a length, of either sign, is printed finer than the tape's marks. */
    static boolean isSmall(Length length) {
        return length.size().isShorterThan(Length.ofMillimetres(10));
    }

    /** How the strip is used. */
    public static List<String> level(HemResult hem, HemLevel level, Tape tape) {
        List<String> steps = new ArrayList<>();
        steps.add(
                "Cut the strip out along its heavy lines and glue it upright to a box or a stick,"
                        + " its lower edge on the floor.");
        if (hem.hang().first()) {
            steps.add("Let the garment hang first: " + hem.hang().words() + ".");
        }
        steps.add("Put it on with the shoes and underwear it is worn with, and stand straight.");
        steps.add(
                "Move the strip round, not the wearer; mark with a pin at the fold line every "
                        + tape.print(level.every())
                        + ": "
                        + level.marks()
                        + " marks all round, the floor level and hard.");
        steps.add("Fold at the marks, pin, and look at it from a distance before you cut.");
        if (hem.hem().turned() != Hem.Turned.FACED) {
            steps.add(
                    "Trim the allowance even, "
                            + tape.printBoth(hem.turnedUp())
                            + " below the marked fold: measured from the fold, never from the raw"
                            + " edge. The cutting line of the pieces has this allowance already.");
        }
        return steps;
    }

    /** What a fold looks like. */
    public static String shape(HemEdge edge, Tape tape) {
        if (edge.turned().isEmpty()) {
            return edge.piece().shape().asDrawn().isPresent() ? "as drawn" : "known by tape";
        }
        TurnedEdge turned = edge.turned().get();
        if (turned.fold().isStraight()) {
            return "straight" + leaning(edge, turned);
        }
        String way = turned.turnsRadians() < 0 ? ", hollow" : "";
        return turned.radiusMm()
                        .map(
                                r ->
                                        "arc, radius "
                                                + tape.print(HemEdge.mm(r))
                                                + ", "
                                                + degrees(Math.abs(turned.turnsRadians())))
                        .orElse("curve, turns " + degrees(Math.abs(turned.turnsRadians())))
                + way;
    }

    private static String leaning(HemEdge edge, TurnedEdge turned) {
        double start = side(edge.ends().start(), turned.start());
        double end = side(edge.ends().end(), turned.end());
        double most = Math.abs(start) >= Math.abs(end) ? start : end;
        if (Math.abs(most) < Math.toRadians(0.5)) {
            return "";
        }
        return (most > 0 ? ", sides lean out " : ", sides lean in ") + degrees(Math.abs(most));
    }

    private static double side(HemEdge.Neighbour next, TurnedEdge.End end) {
        return next.kind() == HemEdge.Neighbour.Kind.SIDE ? end.leansRadians() : 0;
    }

    static String degrees(double radians) {
        return Decimals.text(Math.rint(Math.toDegrees(radians))) + "°";
    }

    /** A share in per cent, to a tenth. */
    public static String percent(double share) {
        return Decimals.text(Math.rint(share * 1000) / 10) + " %";
    }
}
