package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.prepare.wash.Change;
import secondbolt.prepare.wash.Washes;
import secondbolt.worksheet.Finding;

/**
 * What the maker should know of what the wash did to a cloth, and of what it weighs.
 *
 * @param cloth the cloth
 * @param tape to print with
 */
record WashedFindings(PreparedCloth cloth, Tape tape) {
    /** From gauze to a rug: a cloth weight that can be written is no lighter and no heavier. */
    private static final double LIGHTEST = 10;

    private static final double HEAVIEST = 2000;

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (cloth.isWashDueAgain()) {
            findings.add(again(cloth.washes().orElseThrow()));
        }
        if (!cloth.isCut() && cloth.washes().filter(Washes::isTooSmallToTell).isPresent()) {
            findings.add(
                    finding(
                            "prepare-square-small",
                            Finding.Level.NOTE,
                            "The marked square is small: the "
                                    + tape.printSmall(Change.READING)
                                    + " that a tape can miss is more than 1 % of it. A larger one"
                                    + " tells more.",
                            ""));
        }
        if (cloth.isFelted()) {
            findings.add(felted());
        }
        if (cloth.isWetDue() && cloth.isSurveyedAfterAWash()) {
            findings.add(
                    finding(
                            "prepare-survey-due",
                            Finding.Level.CAUTION,
                            "It was looked over after a wash, and another one is still to come: thin"
                                    + " places open in each.",
                            "Hold it to the light once more when it is washed and dry."));
        }
        weight().ifPresent(findings::add);
        return findings;
    }

    private Finding felted() {
        boolean isMoving = !cloth.isCut() && cloth.isMoving();
        return finding(
                "prepare-felted",
                isMoving ? Finding.Level.CAUTION : Finding.Level.NOTE,
                "It drew in by 10 % or more, as wool does when it felts (from memory): it is thicker,"
                        + " frays less, and never goes back."
                        + (isMoving
                                ? " Its last wash still changed it, and each like it felts it"
                                        + " further."
                                : ""),
                isMoving
                        ? "Wash it no more; measure it as it is, and clean the garment dry, or by"
                                + " hand in still, cool water."
                        : "");
    }

    private Finding again(Washes washes) {
        AcrossAlong<Optional<Change>> last = washes.last();
        List<String> ways = new ArrayList<>();
        last.across().ifPresent(c -> ways.add(c.words() + " across"));
        last.along().ifPresent(c -> ways.add(c.words() + " along"));
        return finding(
                "prepare-wash-again",
                Finding.Level.CAUTION,
                "Its square was measured after "
                        + Plural.of(washes.count(), "wash", "washes")
                        + ", and the last one still changed it: "
                        + String.join(", ", ways)
                        + ". Above 1 % it may draw in further once it is sewn (our own mark; no"
                        + " source says where to stop).",
                "Wash and dry it once more, measure the square, and put it below `prewash`: if it"
                        + " stayed as it is, `then: "
                        + then(washes)
                        + "`.");
    }

    /** All squares after the first wash, the last of them once more. */
    private String then(Washes washes) {
        List<String> squares = new ArrayList<>();
        washes.squares().stream().skip(2).forEach(square -> squares.add(written(square)));
        squares.add(written(washes.squares().get(washes.count())));
        return squares.toString();
    }

    private String written(AcrossAlong<Optional<Length>> square) {
        return "[" + written(square.across()) + ", " + written(square.along()) + "]";
    }

    private String written(Optional<Length> length) {
        return length.map(tape::print).orElse("unknown");
    }

    /** A mass and a size that do not belong together. */
    private Optional<Finding> weight() {
        return cloth.cloth()
                .heaviness()
                .weight()
                .filter(WashedFindings::isOdd)
                .map(
                        weight ->
                                finding(
                                        "prepare-weight-odd",
                                        Finding.Level.CAUTION,
                                        "By its mass and its size it would weigh "
                                                + tape.print(weight)
                                                + ", which no cloth does.",
                                        "Weigh it again, dry and by itself, and look at the unit of"
                                                + " both; until then write `mass: unknown`."));
    }

    private static boolean isOdd(ClothWeight weight) {
        double grams = weight.gramsPerSquareMetre();
        return grams < LIGHTEST || grams > HEAVIEST;
    }

    private Finding finding(String code, Finding.Level level, String text, String remedy) {
        return new Finding(code, cloth.subject(), level, text, remedy);
    }
}
