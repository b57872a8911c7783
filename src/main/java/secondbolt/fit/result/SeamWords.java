package secondbolt.fit.result;

import java.util.ArrayList;
import java.util.List;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Seam;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/**
 * What is said of the lengths of a seam's sides.
 *
 * @param check the seam
 * @param tape to print with
 */
public record SeamWords(SeamCheck check, Tape tape) {
    /** A finding about the seam. */
    public Finding told(String code, Finding.Level level, String text, String remedy) {
        Subject seam = new Subject.Edges(check.seam().words(), check.seam().edges());
        return new Finding(code, seam, level, text, remedy);
    }

    /** How long both sides are, and by how much the first is off. */
    public String amounts() {
        Length difference = check.after().difference();
        String off =
                (difference.isNegative() ? "too short by " : "too long by ")
                        + tape.printSmallBoth(difference.size());
        Seam seam = check.seam();
        String first = seam.first().value().words() + " is " + tape.print(check.after().first());
        String second = seam.second().value().words() + " of " + tape.print(check.after().second());
        List<String> meant = meant();
        return meant.isEmpty()
                ? first + ", " + off + " for " + second + "."
                : first
                        + "; "
                        + String.join(" and ", meant)
                        + " for "
                        + second
                        + " it should be "
                        + tape.print(check.after().meant())
                        + ": "
                        + off
                        + ".";
    }

    /** In what the first is meant to differ from the second; nothing if they are alike. */
    private List<String> meant() {
        Seam seam = check.seam();
        List<String> meant = new ArrayList<>();
        if (seam.isGathered()) {
            meant.add("gathered " + seam.gather().toPlainString() + " to 1");
        }
        if (seam.ease().isPositive()) {
            meant.add("with " + tape.printSmall(seam.ease()) + " of ease");
        }
        if (seam.isLapped()) {
            meant.add("with " + tape.printSmall(seam.laps()) + " of lap past it");
        }
        return meant;
    }
}
