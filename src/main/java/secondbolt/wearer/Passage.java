package secondbolt.wearer;

import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Open;

/**
 * What of the body an opening must let through, so that the garment can be put on.
 *
 * <p>Common practice, no source: in woven cloth an opening must be at least as large, all round, as
 * what goes through it.
 */
public enum Passage {
    /** A neck pulled over the head. */
    HEAD("head", BodyMeasure.HEAD, BodyMeasure.HEAD),
    /** A dress or skirt pulled over the bust. */
    BUST("bust", BodyMeasure.BUST, BodyMeasure.CHEST),
    /** A waist pulled over the hips. */
    HIPS("hips", BodyMeasure.HIP, BodyMeasure.HIP),
    /** A sleeve's end pulled over the hand. */
    HAND("hand", BodyMeasure.HAND, BodyMeasure.HAND),
    /** A trouser leg's end pulled over heel and instep. */
    FOOT("foot", BodyMeasure.FOOT, BodyMeasure.FOOT);

    /** How {@code over} is written for an opening. */
    public static final Form<Passage> FORM = Forms.choice(values(), Passage::word);

    private final String word;
    private final BodyMeasure measure;
    private final BodyMeasure alternative;

    Passage(String word, BodyMeasure measure, BodyMeasure alternative) {
        this.word = word;
        this.measure = measure;
        this.alternative = alternative;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** The girth that must go through, if the wearer's is known. */
    public Optional<Length> girth(Optional<Wearer> wearer) {
        return Stream.of(measure, alternative)
                .flatMap(m -> wearer.flatMap(w -> w.measure(m)).stream())
                .reduce(Length::orLonger);
    }

    /**
     * What stays open while that girth is not known.
     *
     * @param opening the maker's name for the opening
     */
    public Open open(String opening, Tape tape) {
        return new Open(
                "the wearer's " + measure.word(),
                "whether the opening `" + opening + "` lets it through",
                measure.measureIt(tape));
    }
}
