package secondbolt.trim.guide;

import java.util.ArrayList;
import java.util.List;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.trim.strip.StripCut;

/** Strips in words. */
public final class StripWords {
    private StripWords() {}

    /** What whole strips give: {@code 5 whole strips of 43¾ in, 219 in together}. */
    public static String whole(StripCut cut, Tape tape) {
        if (cut.whole() == 0) {
            return "none";
        }
        String each = tape.print(down(cut.strips().get(0), tape));
        String all = Plural.of(cut.whole(), "strip") + " of " + each;
        return cut.whole() == 1
                ? all
                : all + ", " + tape.print(down(cut.wholeTogether(), tape)) + " together";
    }

    /** The shorter ones, each by its length. */
    public static String shorter(StripCut cut, Tape tape) {
        List<String> lengths = new ArrayList<>();
        cut.strips().subList(cut.whole(), cut.strips().size()).stream()
                .map(strip -> tape.print(down(strip, tape)))
                .forEach(lengths::add);
        return lengths.isEmpty() ? "none needed or none left" : String.join(", ", lengths);
    }

    /** The joins, and what they take. */
    public static String joins(StripCut cut, Tape tape) {
        return cut.joins() == 0
                ? "none"
                : Plural.of(cut.joins(), "join")
                        + ", each takes "
                        + tape.print(cut.perJoin())
                        + " of the length";
    }

    /** What one has, never told longer than it is. */
    public static Length down(Length length, Tape tape) {
        return length.roundedDownTo(tape.mark());
    }

    /** What is needed or lacking, never told shorter than it is. */
    public static Length up(Length length, Tape tape) {
        return length.roundedUpTo(tape.mark());
    }
}
