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
    SIDE("side", List.of("side", "sides"), List.of()),
    /** Down the middle of the front. */
    CENTRE_FRONT(
            "centre front",
            List.of("centre front", "center front", "front centre", "front center"),
            List.of()),
    /** Down the middle of the back. */
    CENTRE_BACK(
            "centre back",
            List.of("centre back", "center back", "back centre", "back center"),
            List.of()),
    /** From the neck to the end of the shoulder. */
    SHOULDER("shoulder", List.of("shoulder", "shoulders"), List.of()),
    /** Round the neck. */
    NECKLINE("neckline", List.of("neckline", "neck"), List.of()),
    /** Round the arm, on the body of the garment. */
    ARMHOLE("armhole", List.of("armhole", "arm hole", "armscye", "scye"), List.of()),
    /** The head of a sleeve, which goes into the armhole. */
    CAP("cap", List.of("cap", "sleeve head"), List.of()),
    /** Down the sleeve, under the arm. */
    UNDERARM(
            "underarm",
            List.of("underarm", "inside sleeve", "inner sleeve", "inside arm", "inner arm"),
            List.of()),
    /** Round the wrist. */
    WRIST("wrist", List.of("wrist"), List.of()),
    /** Round the waist; a line at its height, above which the body is lengthened. */
    WAIST("waist", List.of("waist", "waistline"), List.of("waist", "waistline")),
    /** The edge that is turned up. */
    HEM("hem", List.of("hem", "hemline"), List.of()),
    /** Down the inside of a leg. */
    INSEAM("inseam", List.of("inseam", "inside leg", "inner leg"), List.of()),
    /** Down the outside of a leg, or of a sleeve in two parts. */
    OUTSEAM(
            "outseam",
            List.of(
                    "outseam",
                    "outside leg",
                    "outer leg",
                    "outside sleeve",
                    "outer sleeve",
                    "outside arm",
                    "outer arm"),
            List.of()),
    /** Between the legs. */
    CROTCH("crotch", List.of("crotch", "crutch", "fork"), List.of()),
    /** A line between armhole and waist. */
    BODY("body", List.of(), List.of("body", "bodice")),
    /** A line between armhole and wrist. */
    SLEEVE("sleeve", List.of(), List.of("sleeve", "arm")),
    /** A line between waist and crotch. */
    CROTCH_DEPTH(
            "crotch depth",
            List.of(),
            List.of("crotch depth", "crutch depth", "crotch", "crutch", "rise", "seat")),
    /** A line between crotch and hem. */
    LEG("leg", List.of(), List.of("leg")),
    /** A line at the height of the bust. */
    BUST("bust", List.of(), List.of("bust")),
    /** A line at the height of the hip. */
    HIP("hip", List.of(), List.of("hip", "hips"));

    private final String word;
    private final List<String> ofEdges;
    private final List<String> ofLines;

    Serves(String word, List<String> ofEdges, List<String> ofLines) {
        this.word = word;
        this.ofEdges = ofEdges;
        this.ofLines = ofLines;
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
        return TradeName.of(name).read(serves -> serves.ofEdges);
    }

    /** What the name of a lengthen or shorten line says, likewise. */
    public static Optional<Serves> lineNamed(String name) {
        return TradeName.of(name).read(serves -> serves.ofLines);
    }

    /**
     * The words of an edge's name that are none of the trade's for what it serves, nor only tell
     * which of several edges it is, as {@code left} and {@code seam} do.
     */
    public static List<String> strangeWords(String edge) {
        List<String> known =
                edgeNamed(edge).stream()
                        .flatMap(serves -> serves.ofEdges.stream())
                        .flatMap(phrase -> Stream.of(phrase.split(" ", -1)))
                        .toList();
        return TradeName.of(edge).words().stream()
                .filter(word -> !known.contains(word) && !TradeName.tellsWhich(word))
                .toList();
    }
}
