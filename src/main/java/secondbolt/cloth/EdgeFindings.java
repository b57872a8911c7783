package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.textile.Cloth;
import secondbolt.textile.extent.Flaw;
import secondbolt.textile.extent.Sides;
import secondbolt.worksheet.Finding;

/**
 * Edges that are more than cloth, such as bound ones or those with fasteners, of which nothing is
 * cut away: pieces would be laid on them.
 *
 * @param result the cloth
 * @param tape to print with
 */
record EdgeFindings(ClothResult result, Tape tape) {
    /**
     * What is nothing but cloth, in a few languages; any other edge is asked about. Common
     * practice, no source.
     */
    private static final Set<String> PLAIN =
            Set.of(
                    "selvage",
                    "selvedge",
                    "selvages",
                    "selvedges",
                    "cut",
                    "raw",
                    "torn",
                    "fold",
                    "folded",
                    "ripped",
                    "unhemmed",
                    "unpicked",
                    "straight",
                    "webkante",
                    "schnittkante",
                    "geschnitten",
                    "gerissen",
                    "bruch",
                    "stoffbruch",
                    "lisière",
                    "coupé",
                    "coupée",
                    "déchiré",
                    "pli",
                    "orillo",
                    "cortado",
                    "doblez",
                    "cimosa",
                    "tagliato",
                    "piega",
                    "zelfkant",
                    "stadkant",
                    "krajka");

    /** These are more than cloth whatever else is said of the edge. */
    private static final List<String> MORE =
            List.of("hole", "button", "snap", "zip", "hook", "tape", "bound", "binding", "eyelet");

    private static final List<String> SIDES = List.of("left", "right", "top", "bottom");

    /** So near its edge a flaw or a feature lies along it. */
    private static final Length NEAR = Length.ofMillimetres(10);

    List<Finding> findings() {
        Cloth.Edging edging = result.cloth().edging();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < SIDES.size(); i++) {
            Optional<String> name = edging.names().inOrder().get(i).filter(EdgeFindings::isMore);
            if (name.isPresent() && !edging.isTold().inOrder().get(i) && !isMarked(i)) {
                findings.add(asked(SIDES.get(i), name.get()));
            }
        }
        return findings;
    }

    private static boolean isMore(String name) {
        String words = name.toLowerCase(Locale.ROOT);
        boolean isPlain = Stream.of(words.split("[^\\p{L}]+", -1)).anyMatch(PLAIN::contains);
        return !isPlain || MORE.stream().anyMatch(words::contains);
    }

    /** Whether a flaw or a feature along the side keeps pieces off it. */
    private boolean isMarked(int side) {
        return result.cloth()
                .extent()
                .toOptional()
                .map(extent -> extent.bounds())
                .filter(
                        cloth ->
                                result.cloth().condition().flaws().stream()
                                        .anyMatch(flaw -> liesAlong(flaw, cloth, side)))
                .isPresent();
    }

    /** Whether it reaches the side, along most of it. */
    private static boolean liesAlong(Flaw flaw, Sides<Length> cloth, int side) {
        Sides<Length> bounds = flaw.patch().bounds();
        Length from = bounds.inOrder().get(side);
        Length to = cloth.inOrder().get(side);
        Length apart = from.isLongerThan(to) ? from.minus(to) : to.minus(from);
        boolean isUpright = side < 2;
        Length reach = isUpright ? bounds.bottom().minus(bounds.top()) : across(bounds);
        Length whole = isUpright ? cloth.bottom().minus(cloth.top()) : across(cloth);
        return !apart.isLongerThan(NEAR) && !reach.times(2).isShorterThan(whole);
    }

    private static Length across(Sides<Length> box) {
        return box.right().minus(box.left());
    }

    private Finding asked(String side, String name) {
        return new Finding(
                "cloth-edge-not-trimmed",
                result.subject(),
                Finding.Level.CAUTION,
                "Its "
                        + side
                        + " edge is told as "
                        + name
                        + ", and nothing is cut away there, so pieces may be laid on it.",
                "Under `trim` write what is cut away, as `"
                        + side
                        + ": "
                        + (tape == Tape.INCH ? "1 1/4 in" : "3 cm")
                        + "`, or `"
                        + side
                        + ": none` if it is flat, sound cloth to the edge.");
    }
}
