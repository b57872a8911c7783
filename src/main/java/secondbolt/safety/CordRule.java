package secondbolt.safety;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Quoted;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What must be known of a cord before a child wears it.
 *
 * <p>Source: EN 14682:2007 in a test house's summary, and the Finnish Safety and Chemicals Agency
 * on it: at hood, head and neck none for children of seven and younger, no free ends there up to
 * fourteen; at waist and hem 14 cm at each side; nothing tied behind the back, nothing below the
 * lower edge, no toggles on free ends, fixed in the middle. 16 CFR 1120, upper outerwear in the
 * United States: at hood and neck none, at waist and bottom at most 3 in free, without knots or
 * toggles. Where the two differ, the stricter holds here.
 *
 * @param wearer who wears it
 * @param tape to print with
 */
record CordRule(WearerAge wearer, Tape tape) {
    private static final int NONE_AT_THE_NECK_UNDER = 8;
    private static final int CHILD_UNDER = 14;
    private static final Convention LONGEST_FREE =
            new Convention(
                    Length.ofInches(3, 1),
                    Length.ofMillimetres(76),
                    "16 CFR 1120, the stricter; EN 14682:2007 has 14 cm");

    private static final List<String> AT_THE_NECK =
            List.of("16 CFR 1120, United States: no cord at hood and neck of upper outerwear");
    private static final List<String> ENDS =
            List.of("EN 14682:2007: at waist and hem at most 14 cm free at each side");

    private static final String LOCAL =
            " What is allowed on children's clothes your local rules say, and they come first.";
    private static final String AGE = " Under `wearer` write `age: adult`, or the completed years.";

    /** Whether a child wears it, as far as is told. */
    boolean isForAChild() {
        return wearer.isUnder(CHILD_UNDER);
    }

    /** How long a free end may be at most, on both tapes. */
    String longestFree() {
        return tape.printBoth(LONGEST_FREE.on(tape));
    }

    /** What is told of one; nothing of a grown person's. */
    Optional<Finding> of(Cord cord) {
        boolean isAsked = wearer.isUntold() || wearer.isUnder(CHILD_UNDER);
        if (!isAsked) {
            return Optional.empty();
        }
        if (cord.place().isEmpty()) {
            return Optional.of(placeNotTold(cord));
        }
        return Optional.of(cord.isAtTheNeck() ? atTheNeck(cord) : elsewhere(cord));
    }

    /**
     * What is told of a loop round the neck, as of an apron.
     *
     * <p>Source: the scope of EN 14682:2014 leaves out aprons worn for a time under supervision, so
     * it is a warning; that a loop strangles as a cord does: common practice, no source.
     */
    Optional<Finding> ofLoop(String piece) {
        if (!wearer.isUnder(CHILD_UNDER)) {
            return Optional.empty();
        }
        return Optional.of(
                new Finding(
                        "loop-at-the-neck",
                        new Subject.Piece(piece),
                        Level.WARNING,
                        piece
                                + ", by its name, goes round a child's neck: a closed loop that"
                                + " catches can strangle.",
                        "Let it come open at a pull, with a touch fastener or a snap, and let the"
                                + " child wear it only while somebody is by; if it ties, write "
                                + "`"
                                + CordLine.of(piece, "neck", tape)
                                + "`."
                                + LOCAL));
    }

    /** What is told of a cord that lies elsewhere than its name or its edges say. */
    Optional<Finding> ofCalled(Cord cord) {
        boolean isAsked = wearer.isUntold() || wearer.isUnder(CHILD_UNDER);
        return cord.calledAt()
                .filter(called -> isAsked)
                .map(
                        called ->
                                found(
                                        cord,
                                        "cord-called-otherwise",
                                        wearer.isUntold() ? Level.CAUTION : Level.WARNING,
                                        "The name or the edges of "
                                                + cord.name()
                                                + " say "
                                                + called.word()
                                                + ", where a cord can strangle a child and none is"
                                                + " allowed up to seven years (EN 14682; 16 CFR"
                                                + " 1120); it is told to lie "
                                                + told(cord)
                                                + ".",
                                        "Look again where it runs and where its ends come out. If"
                                                + " any of it is at hood or neck, leave it out;"
                                                + " only if none is, sew on."));
    }

    private static String told(Cord cord) {
        CordPlace place = cord.place().orElseThrow();
        return place == CordPlace.OTHER ? "elsewhere" : "at the " + place.word();
    }

    /** What is asked where the maker's words name what ties, and nothing of it is written. */
    Optional<Finding> ofSpoken(String word) {
        if (!wearer.isUnder(CHILD_UNDER)) {
            return Optional.empty();
        }
        return Optional.of(
                new Finding(
                        "cord-only-spoken-of",
                        new Subject.Whole("cords"),
                        Level.CAUTION,
                        "The words of the project speak of \""
                                + word
                                + "\", and no cord is written, so none was looked at. A cord catches,"
                                + " and a child can be strangled or dragged by it.",
                        "Write each, as `"
                                + CordLine.of("drawstring", "waist", tape)
                                + "`, with its own place and length; if there is none, `cords:"
                                + " none`."
                                + LOCAL));
    }

    private static Finding found(Cord cord, String code, Level level, String text, String remedy) {
        return new Finding(code, cord.about().get(0), level, text, remedy + LOCAL);
    }

    private Finding placeNotTold(Cord cord) {
        return found(
                        cord,
                        "cord-place-not-told",
                        wearer.isUntold() ? Level.CAUTION : Level.WARNING,
                        "Where "
                                + cord.name()
                                + " lies is not told. A cord catches, and a child can be strangled or"
                                + " dragged by it: at hood and neck there must be none up to seven years"
                                + " (EN 14682).",
                        "Write "
                                + line(cord, "waist")
                                + ", at `neck`, `hood`, `waist`, `hem` or `other`, with its free length or"
                                + " `free: none`; if it is no cord, `cords: {"
                                + Quoted.of(cord.name())
                                + ": no}`."
                                + (wearer.isUntold() ? AGE : ""))
                .citing(AT_THE_NECK);
    }

    private String line(Cord cord, String place) {
        return "`" + CordLine.of(cord.name(), place, tape) + "`";
    }

    private Finding atTheNeck(Cord cord) {
        String where = "It lies at the " + cord.place().orElseThrow().word() + taken(cord);
        if (wearer.isUnder(NONE_AT_THE_NECK_UNDER)) {
            return found(
                            cord,
                            "cord-at-the-neck",
                            Level.STOP,
                            where
                                    + ". A child of seven or younger can be strangled by it: none is"
                                    + " allowed there (EN 14682), nor on upper outerwear in the United"
                                    + " States.",
                            "Close it without a cord: snaps or a button, elastic, an opening that goes over"
                                    + " the head."
                                    + elsewhereLine(cord))
                    .citing(AT_THE_NECK);
        }
        if (wearer.isUntold()) {
            return found(
                    cord,
                    "cord-at-the-neck-age-not-told",
                    wearer.isSmallOrUntold() ? Level.STOP : Level.WARNING,
                    where
                            + ", and who wears it is not told. A child of seven or younger can be"
                            + " strangled by it, and none is allowed there (EN 14682).",
                    AGE.strip() + elsewhereLine(cord));
        }
        return older(cord, where);
    }

    /** From eight to thirteen years. */
    private Finding older(Cord cord, String where) {
        if (cord.free().filter(Length::isPositive).isPresent()) {
            return found(
                            cord,
                            "cord-at-the-neck",
                            Level.STOP,
                            where
                                    + ", with free ends of "
                                    + tape.print(cord.free().orElseThrow())
                                    + ". Up to fourteen years no end may hang free there (EN 14682), and on"
                                    + " upper outerwear in the United States no cord at all.",
                            "Close it without free ends, and write `free: none`, or choose another"
                                    + " closing."
                                    + elsewhereLine(cord))
                    .citing(AT_THE_NECK);
        }
        return cord.free().isPresent()
                ? found(
                                cord,
                                "cord-flat-at-the-neck",
                                Level.CAUTION,
                                where + ", without free ends. It catches where it stands off.",
                                "It must lie flat while the garment is open (EN 14682); on upper outerwear"
                                        + " in the United States there is to be none.")
                        .citing(AT_THE_NECK)
                : found(
                        cord,
                        "cord-free-not-told",
                        Level.WARNING,
                        where
                                + ". Up to fourteen years no end may hang free there (EN 14682);"
                                + " whether one does is not told.",
                        "Write `"
                                + CordLine.free(cord.name(), cord.place().orElseThrow().word())
                                + "`, or the length of its free ends.");
    }

    private String elsewhereLine(Cord cord) {
        return cord.isPlaceNamed()
                ? " If it lies elsewhere, write " + line(cord, "waist") + ", with its own place."
                : "";
    }

    private static String taken(Cord cord) {
        return cord.isPlaceNamed() ? ", as its name or its edges say" : "";
    }

    private Finding elsewhere(Cord cord) {
        Length longest = LONGEST_FREE.on(tape);
        String where = cord.place().orElseThrow().word();
        String age = wearer.isUntold() ? AGE : "";
        if (cord.free().isEmpty()) {
            return found(
                            cord,
                            "cord-free-not-told",
                            wearer.isUntold() ? Level.NOTE : Level.WARNING,
                            "How far the ends of " + cord.name() + " hang free is not told.",
                            "Write "
                                    + line(cord, where)
                                    + ", or `free: none`; on a child's garment at most "
                                    + tape.printBoth(longest)
                                    + " (16 CFR 1120)."
                                    + age)
                    .citing(ENDS);
        }
        Length free = cord.free().get();
        if (free.isLongerThan(LONGEST_FREE.inch().orLonger(LONGEST_FREE.metric()))) {
            return found(
                            cord,
                            "cord-too-long",
                            wearer.isUntold() ? Level.CAUTION : Level.WARNING,
                            "The free ends of "
                                    + cord.name()
                                    + (cord.isFreeCut() ? " are as long as its piece, " : " are ")
                                    + tape.printBoth(free)
                                    + (cord.isFreeCut() ? ", as nothing else is told" : "")
                                    + "; on a child's garment they catch, and at most "
                                    + tape.printBoth(longest)
                                    + " may hang free (16 CFR 1120).",
                            "Shorten them or sew them down, and write "
                                    + line(cord, where)
                                    + "; or choose snaps, buttons or elastic."
                                    + age)
                    .citing(ENDS);
        }
        return sewnDown(cord, free)
                .orElseGet(
                        () ->
                                found(
                                        cord,
                                        "cord-short",
                                        wearer.isUntold() ? Level.NOTE : Level.CAUTION,
                                        "A child's cord catches, also a short one: "
                                                + cord.name()
                                                + " has free ends of "
                                                + tape.printBoth(free)
                                                + ".",
                                        "No knots and no toggles at its ends; sew it fast in the"
                                                + " middle; none may be tied behind the back or hang"
                                                + " below the lower edge (EN 14682)."
                                                + age));
    }

    /** A piece that is longer than what is told to hang free: the rest must be held. */
    private Optional<Finding> sewnDown(Cord cord, Length free) {
        return cord.cut()
                .filter(cut -> cut.isLongerThan(free.plus(Length.ofMillimetres(30))))
                .map(
                        cut ->
                                found(
                                        cord,
                                        "cord-sewn-down",
                                        Level.CAUTION,
                                        "Of "
                                                + tape.print(cut)
                                                + ", the length of its piece, "
                                                + tape.print(free)
                                                + " of "
                                                + cord.name()
                                                + " hang free; the other "
                                                + tape.print(cut.minus(free))
                                                + " must be held in a channel or sewn down.",
                                        "No knots and no toggles at its ends; sew it fast in the"
                                                + " middle; none may be tied behind the back or hang"
                                                + " below the lower edge (EN 14682)."));
    }
}
