package secondbolt.garment;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an edge of a piece, or a line it is lengthened at, serves on the body, with the trade's
 * words for it in both usages.
 *
 * <p>Source of the words: common practice, no source.
 */
public enum Serves {
    /** Down the side of the trunk. */
    SIDE("side", "side, sides", ""),
    /** Down the middle of the front. */
    CENTRE_FRONT("centre front", "centre front, center front, front centre, front center", ""),
    /** Down the middle of the back. */
    CENTRE_BACK("centre back", "centre back, center back, back centre, back center", ""),
    /** From the neck to the end of the shoulder. */
    SHOULDER("shoulder", "shoulder, shoulders", ""),
    /** Round the neck. */
    NECKLINE("neckline", "neckline, neck", ""),
    /** Round the arm, on the body of the garment. */
    ARMHOLE("armhole", "armhole, arm hole, armscye, scye", ""),
    /** The head of a sleeve, which goes into the armhole. */
    CAP("cap", "cap, sleeve head", ""),
    /** Down the sleeve, under the arm. */
    UNDERARM("underarm", "underarm, inside sleeve, inner sleeve, inside arm, inner arm", ""),
    /** Round the wrist. */
    WRIST("wrist", "wrist", ""),
    /** Round the waist; a line at its height, above which the body is lengthened. */
    WAIST("waist", "waist, waistline", "waist, waistline"),
    /** The edge that is turned up. */
    HEM("hem", "hem, hemline", ""),
    /** Down the inside of a leg. */
    INSEAM("inseam", "inseam, inside leg, inner leg", ""),
    /** Down the outside of a leg, or of a sleeve in two parts. */
    OUTSEAM(
            "outseam",
            "outseam, outside leg, outer leg, outside sleeve, outer sleeve, outside arm,"
                    + " outer arm",
            ""),
    /** Between the legs. */
    CROTCH("crotch", "crotch, crutch, fork", ""),
    /** A line between armhole and waist. */
    BODY("body", "", "body, bodice"),
    /** A line between armhole and wrist. */
    SLEEVE("sleeve", "", "sleeve, arm"),
    /** A line between waist and crotch. */
    CROTCH_DEPTH("crotch depth", "", "crotch depth, crutch depth, crotch, crutch, rise, seat"),
    /** A line between crotch and hem. */
    LEG("leg", "", "leg"),
    /** A line at the height of the bust. */
    BUST("bust", "", "bust"),
    /** A line at the height of the hip. */
    HIP("hip", "", "hip, hips");

    private final String word;
    private final String ofEdges;
    private final String ofLines;

    Serves(String word, String ofEdges, String ofLines) {
        this.word = word;
        this.ofEdges = ofEdges;
        this.ofLines = ofLines;
    }

    private static List<String> phrases(String separatedByCommas) {
        return separatedByCommas.isEmpty() ? List.of() : List.of(separatedByCommas.split(", ", -1));
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** Whether an edge may serve it. */
    public boolean isOfAnEdge() {
        return !ofEdges.isEmpty();
    }

    /** Whether a lengthen or shorten line may serve it. */
    public boolean isOfALine() {
        return !ofLines.isEmpty();
    }

    /** Whether an edge that serves it runs down its piece, so that a line across it crosses it. */
    public boolean isLengthwise() {
        return switch (this) {
            case SIDE, CENTRE_FRONT, CENTRE_BACK, UNDERARM, INSEAM, OUTSEAM -> true;
            default -> false;
        };
    }

    /** What the name of an edge says in the trade's words; nothing if it says nothing. */
    public static Optional<Serves> edgeNamed(String name) {
        return TradeName.of(name).read(serves -> phrases(serves.ofEdges));
    }

    /** What the name of a lengthen or shorten line says, likewise. */
    public static Optional<Serves> lineNamed(String name) {
        return TradeName.of(name).read(serves -> phrases(serves.ofLines));
    }

    /**
     * The words of an edge's name that are none of the trade's for what it serves, nor only tell
     * which of several edges it is, as {@code left} and {@code seam} do.
     */
    public static List<String> strangeWords(String edge) {
        List<String> known =
                edgeNamed(edge).stream()
                        .flatMap(serves -> phrases(serves.ofEdges).stream())
                        .flatMap(phrase -> Stream.of(phrase.split(" ", -1)))
                        .toList();
        return TradeName.of(edge).words().stream()
                .filter(word -> !known.contains(word) && !TradeName.tellsWhich(word))
                .toList();
    }
}
