package secondbolt.safety;

import java.util.Optional;
import secondbolt.file.value.Answer;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Subject;

/**
 * Whether a child sleeps in it, and what then holds.
 *
 * <p>Source: Nightwear (Safety) Regulations 1985, United Kingdom, as a council's page gives them:
 * under thirteen, a nightdress to 91 cm round the chest and 122 cm long, a gown to 97 cm and with
 * sleeves to 69 cm; 16 CFR 1615 and 1616, United States: sizes up to 14, tight-fitting garments
 * excepted. That worn cotton burns fast is derived from both.
 *
 * @param told what the maker says; nothing if she does not
 * @param isCalledSo whether a piece, a closure or a hem is called like nightwear
 * @param wearer who wears it
 * @param tape to print with
 */
record Nightwear(Optional<Answer<Boolean>> told, boolean isCalledSo, WearerAge wearer, Tape tape) {
    private static final int CHILD_UNDER = 15;
    private static final Length CHEST = Length.ofMillimetres(910);
    private static final Length LONG = Length.ofMillimetres(1220);
    private static final Subject ABOUT = new Subject.Whole("nightwear");

    private boolean isNot() {
        return told.flatMap(Answer::toOptional).filter(is -> !is).isPresent();
    }

    private boolean is() {
        return told.flatMap(Answer::toOptional).orElse(false);
    }

    private boolean isPerhapsAChild() {
        return wearer.isUntold() || wearer.isUnder(CHILD_UNDER);
    }

    private boolean isAsked() {
        boolean isHinted = isCalledSo || told.isPresent();
        return !is()
                && !isNot()
                && (wearer.isUnder(CHILD_UNDER) || (wearer.isUntold() && isHinted));
    }

    /** The question, where a child may wear it and it is not told. */
    Optional<Open> open() {
        return isAsked()
                ? Optional.of(
                        new Open(
                                "whether the child sleeps in it",
                                "the rule for children's nightwear, which loose cloth catching"
                                        + " fire is the reason of",
                                "Write `nightwear: no`, or `nightwear: yes`."))
                : Optional.empty();
    }

    /** The rule, where a child may sleep in it. */
    Optional<Finding> finding() {
        if (!isPerhapsAChild() || isNot() || !(is() || isCalledSo)) {
            return Optional.empty();
        }
        return Optional.of(
                new Finding(
                        "nightwear-of-a-child",
                        ABOUT,
                        Level.WARNING,
                        (is() ? "It is slept in" : "By a name in it, it may be slept in")
                                + (wearer.isUntold() ? ", and who wears it is not told" : "")
                                + ". Worn cotton, linen and viscose, brushed cloth above all, burn"
                                + " fast, and a loose nightdress or gown catches fire first: in the"
                                + " United Kingdom the cloth of children's, under thirteen, must"
                                + " pass a flame test after washing (nightdresses up to "
                                + tape.print(CHEST)
                                + " round the chest and "
                                + tape.print(LONG)
                                + " long; pyjamas are labelled), in the United States that of all"
                                + " sleepwear up to size 14, but for tight-fitting and infants'.",
                        "Of cloth that is not known to pass, make close-fitting pyjamas, no loose"
                                + " nightdress or gown; keep away from fire. Your local rules come"
                                + " first, also for what is given or sold."
                                + (is() ? "" : " If it is not slept in, write `nightwear: no`.")
                                + (wearer.isUntold()
                                        ? " Under `wearer` write `age: adult`, or the completed"
                                                + " years."
                                        : "")));
    }
}
