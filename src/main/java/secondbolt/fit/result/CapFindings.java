package secondbolt.fit.result;

import java.util.Locale;
import secondbolt.file.value.BareLength;
import secondbolt.file.value.Quoted;
import secondbolt.fit.seam.CapEase;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/**
 * What a maker should know of a sleeve's cap that is longer than its armhole.
 *
 * @param check the seam
 * @param cap how much longer it is
 * @param tape to print with
 */
public record CapFindings(SeamCheck check, CapEase cap, Tape tape) {
    /** A cap shorter than its armhole can never be sewn in; a longer one is eased. */
    public Finding longerCap() {
        if (!cap.isMuch(tape)) {
            return new SeamWords(check, tape)
                    .told(
                            "seam-cap-longer",
                            Level.NOTE,
                            "The cap is longer than its armhole, as is usual: "
                                    + amounts()
                                    + usual(),
                            "If it is meant, write it down: " + ease() + ".")
                    .citing(CapEase.SOURCES);
        }
        return new SeamWords(check, tape)
                .told(
                        cap.isFar(tape) ? "seam-cap-far-too-long" : "seam-cap-too-long",
                        cap.isFar(tape) ? Level.STOP : Level.WARNING,
                        (cap.isFar(tape)
                                        ? "The cap is far longer than its armhole, more than can be eased"
                                                + " in: "
                                        : "The cap is longer than its armhole by more than is usual: ")
                                + amounts()
                                + usual(),
                        "Measure both edges again. If it is gathered, write "
                                + gather()
                                + (cap.isFar(tape) ? "." : "; if it is eased in, " + ease() + "."))
                .citing(CapEase.SOURCES);
    }

    /** Of which the ease that is written is another. */
    public Finding easeNotMet() {
        return new SeamWords(check, tape)
                .told(
                        "seam-ease-not-met",
                        cap.isFar(tape) ? Level.STOP : Level.WARNING,
                        "The ease written on this join is not met: " + amounts() + usual(),
                        "Measure both edges again. If it is right as drawn, write "
                                + (cap.isFar(tape) ? gather() + ", gathered" : ease())
                                + ".")
                .citing(CapEase.SOURCES);
    }

    /** Of which the ease that is written is more than is usual. */
    public Finding muchEase() {
        return new SeamWords(check, tape)
                .told(
                        "seam-cap-ease-much",
                        cap.isFar(tape) ? Level.WARNING : Level.CAUTION,
                        "The ease written on this join is more than is usual in a cap: "
                                + tape.print(cap.ofEach())
                                + "."
                                + usual(),
                        "Try it on a scrap. If it is gathered, write " + gather() + ".")
                .citing(CapEase.SOURCES);
    }

    private String usual() {
        return " Usual is "
                + tape.print(CapEase.LEAST.on(tape))
                + " to "
                + tape.print(CapEase.MOST.on(tape))
                + " a sleeve ("
                + CapEase.MOST.source()
                + ").";
    }

    /** The ease as it is; where the armhole is written first, with both sides changed over. */
    private String ease() {
        Length longer = check.after().first().minus(check.after().second()).size();
        String ease = "ease: " + BareLength.of(tape, longer);
        return cap.isCapFirst()
                ? "`" + ease + "` on this join"
                : "`{join: [" + sides() + "], " + ease + "}`";
    }

    private String gather() {
        return "`{join: ["
                + sides()
                + "], gather: "
                + String.format(Locale.ROOT, "%.2f", cap.ratio())
                + "}`";
    }

    private String sides() {
        return Quoted.of(cap.cap().toString()) + ", " + Quoted.of(cap.armhole().toString());
    }

    private String amounts() {
        return new SeamWords(check, tape).amounts();
    }
}
