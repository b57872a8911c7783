package secondbolt.wearer;

import java.util.Optional;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/**
 * A measurement of the body: its name, how it is taken, and how high on the body it lies.
 *
 * <p>Source: each carries its own. The standards behind them, EN 13402 and ISO 8559, are quoted as
 * an encyclopaedia entry, lecture slides and a textbook on sizing give them.
 */
public enum BodyMeasure implements FinishedMeasure {
    /** Round the head. */
    HEAD(
            "head",
            "the largest level girth above the ears",
            "EN 13402-1, as an encyclopaedia gives it",
            Part.LIMB,
            0,
            "25 cm to 80 cm",
            "57"),
    /** Round the neck. */
    NECK(
            "neck",
            "the tape %s below the Adam's apple, level with the bone at the base of the neck",
            "EN 13402-1, as an encyclopaedia gives it",
            Part.LIMB,
            0,
            "15 cm to 80 cm",
            "37"),
    /** From the neck to the end of the shoulder. */
    SHOULDER(
            "shoulder",
            "from the side of the neck to the shoulder bone",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.BUST,
            "4 cm to 30 cm",
            "12.5"),
    /** Across the back. */
    BACK_WIDTH(
            "back width",
            "from armhole to armhole, half way down the shoulder blades",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.BUST,
            "12 cm to 80 cm",
            "36"),
    /** Round the chest above the bust. */
    HIGH_BUST(
            "high bust",
            "round the body close under the arms and above the bust, the tape as high as it goes",
            Sources.MEMORY,
            Part.TRUNK,
            Levels.HIGH_BUST,
            Sources.TRUNK_RANGE,
            "92"),
    /** Round the bust. */
    BUST(
            "bust",
            "the largest level girth, under the arms and over the fullest of the bust, breathing"
                    + " normally",
            "EN 13402-1, as lecture slides give it",
            Part.TRUNK,
            Levels.BUST,
            Sources.TRUNK_RANGE,
            "96"),
    /** Round the chest. */
    CHEST(
            "chest",
            "the largest level girth, over the shoulder blades, under the arms and across the"
                    + " chest, standing and breathing normally",
            "EN 13402-1, as an encyclopaedia gives it",
            Part.TRUNK,
            Levels.BUST,
            Sources.TRUNK_RANGE,
            "100"),
    /** Round the ribs under the bust. */
    UNDER_BUST(
            "under bust",
            "level round the ribs, close under the bust",
            Sources.MEMORY,
            Part.TRUNK,
            Levels.UNDER_BUST,
            Sources.TRUNK_RANGE,
            "82"),
    /** Round the waist. */
    WAIST(
            "waist",
            "level, half way between the lowest rib and the top of the hip bone",
            "ISO 8559-1, as a textbook on sizing gives it",
            Part.TRUNK,
            Levels.WAIST,
            Sources.TRUNK_RANGE,
            "80"),
    /** Round the hip. */
    HIP(
            "hip",
            "the largest level girth round the seat",
            Sources.MEMORY,
            Part.TRUNK,
            Levels.HIP,
            Sources.TRUNK_RANGE,
            "104"),
    /** Round the upper arm. */
    UPPER_ARM(
            "upper arm",
            "round the arm at its fullest, hanging loose",
            Sources.MEMORY,
            Part.LIMB,
            Levels.BUST,
            Sources.LIMB_RANGE,
            "30"),
    /** Round the wrist. */
    WRIST(
            "wrist",
            "round the wrist, over the bone",
            Sources.MEMORY,
            Part.LIMB,
            Levels.BUST,
            Sources.LIMB_RANGE,
            "16"),
    /** Round the hand. */
    HAND(
            "hand",
            "round the knuckles, the thumb folded into the palm",
            Sources.MEMORY,
            Part.LIMB,
            0,
            Sources.LIMB_RANGE,
            "22"),
    /** Round the thigh. */
    THIGH(
            "thigh",
            "level round the leg at its fullest, close under the seat",
            Sources.MEMORY,
            Part.LIMB,
            Levels.THIGH,
            Sources.LIMB_RANGE,
            "60"),
    /** Round the knee. */
    KNEE(
            "knee",
            "round the middle of the knee, a little bent",
            Sources.MEMORY,
            Part.LIMB,
            Levels.KNEE,
            Sources.LIMB_RANGE,
            "39"),
    /** Round the calf. */
    CALF(
            "calf",
            "round the lower leg at its fullest",
            Sources.MEMORY,
            Part.LIMB,
            Levels.CALF,
            Sources.LIMB_RANGE,
            "37"),
    /** Round the ankle. */
    ANKLE(
            "ankle",
            "round the ankle, over the bone",
            Sources.MEMORY,
            Part.LIMB,
            Levels.ANKLE,
            Sources.LIMB_RANGE,
            "24"),
    /** Round the foot as it goes through a trouser leg. */
    FOOT(
            "foot",
            "round the heel and the instep, the foot stretched",
            Sources.MEMORY,
            Part.LIMB,
            0,
            Sources.LIMB_RANGE,
            "32"),
    /** Down the back to the waist. */
    BACK_WAIST_LENGTH(
            "back waist length",
            "from the bone at the base of the neck down the back to the waist",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.BUST,
            "12 cm to 70 cm",
            "42"),
    /** Down the front to the waist. */
    FRONT_WAIST_LENGTH(
            "front waist length",
            "from the side of the neck over the bust down to the waist",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.BUST,
            "12 cm to 80 cm",
            "44"),
    /** Down the arm. */
    ARM_LENGTH(
            "arm length",
            "from the shoulder bone over the bent elbow to the wrist bone",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.BUST,
            "12 cm to 100 cm",
            "60"),
    /** From waist to seat. */
    CROTCH_DEPTH(
            "crotch depth",
            "sitting upright on a flat chair, from the waist at the side to the seat",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.HIP,
            "8 cm to 60 cm",
            "27"),
    /** From the waist in front between the legs to the waist at the back. */
    CROTCH_LENGTH(
            "crotch length",
            "from the waist in front between the legs to the waist at the back",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.HIP,
            "20 cm to 130 cm",
            "70"),
    /** Down the inside of the leg. */
    INSIDE_LEG(
            "inside leg",
            "from the crotch straight down to the sole, without shoes",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.HIP,
            "10 cm to 130 cm",
            "78"),
    /** Down the outside of the leg. */
    OUTSIDE_LEG(
            "outside leg",
            "from the waist at the side over the hip straight down to the sole, without shoes",
            Sources.MEMORY,
            Part.LENGTH,
            Levels.HIP,
            "18 cm to 160 cm",
            "104"),
    /** The whole body. */
    HEIGHT(
            "height",
            "from the crown to the soles, standing upright, without shoes",
            Sources.MEMORY,
            Part.LENGTH,
            0,
            "30 cm to 250 cm",
            "168");

    private enum Part {
        TRUNK,
        LIMB,
        LENGTH
    }

    /** How far down the body, in order; nothing is measured by these numbers. */
    private static final class Levels {
        static final int HIGH_BUST = 1;
        static final int BUST = 2;
        static final int UNDER_BUST = 3;
        static final int WAIST = 4;
        static final int HIP = 5;
        static final int THIGH = 6;
        static final int KNEE = 7;
        static final int CALF = 8;
        static final int ANKLE = 9;
    }

    private static final class Sources {
        static final String MEMORY = "from memory";
        static final String TRUNK_RANGE = "20 cm to 230 cm";
        static final String LIMB_RANGE = "5 cm to 120 cm";
        static final Convention BELOW_THE_APPLE =
                new Convention(
                        Length.ofInches(3, 4),
                        Length.ofMillimetres(20),
                        "EN 13402-1, as an encyclopaedia gives it; the inches are from memory");
    }

    private final String word;
    private final String taken;
    private final String source;
    private final Part part;
    private final int level;
    private final String range;
    private final String example;

    BodyMeasure(
            String word,
            String taken,
            String source,
            Part part,
            int level,
            String range,
            String example) {
        this.word = word;
        this.taken = taken;
        this.source = source;
        this.part = part;
        this.level = level;
        this.range = range;
        this.example = example;
    }

    @Override
    public String word() {
        return word;
    }

    /** How it is taken, in words that follow its name and a colon. */
    public String taken(Tape tape) {
        return taken.formatted(tape.print(Sources.BELOW_THE_APPLE.on(tape)));
    }

    /** The same for whichever tape a file is on. */
    String takenOnEither() {
        return taken.formatted(
                Tape.CENTIMETRE.print(Sources.BELOW_THE_APPLE.metric())
                        + " ("
                        + Tape.INCH.print(Sources.BELOW_THE_APPLE.inch())
                        + ")");
    }

    /** Where that way of taking it comes from. */
    public String source() {
        return source;
    }

    /** How to take a measurement, as an order. */
    public String measureIt(Tape tape) {
        return "Measure it: "
                + taken(tape)
                + " ("
                + source
                + "); write `"
                + word
                + "` under the `measurements` of the `wearer`.";
    }

    /** Whether it goes round the trunk, so that a pattern's side seams follow it. */
    boolean isRoundTheTrunk() {
        return part == Part.TRUNK;
    }

    /** How far down the body it lies, or what it goes with; nothing if it goes with no level. */
    Optional<Integer> level() {
        return level == 0 ? Optional.empty() : Optional.of(level);
    }

    /** The lengths it can have on anyone from a newborn to the largest (common sense). */
    LengthRange range() {
        String[] ends = range.split(" to ", -1);
        return LengthRange.of(ends[0], ends[1]);
    }

    /** A value as a grown person may have it, in centimetres. */
    String example() {
        return example;
    }
}
