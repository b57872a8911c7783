package secondbolt.fit.size;

import java.util.List;
import secondbolt.file.value.Quoted;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Sentence;

/**
 * The words and amounts of a suggestion.
 *
 * @param differences between body and size
 */
record SuggestionWords(BodyDifferences differences) {
    private Tape tape() {
        return differences.input().tape();
    }

    /** Why something is suggested: the body beside the size. */
    String why(BodyMeasure measure) {
        SizeResult.Measurement m = differences.measured(measure);
        Length by = differences.charted(measure).orElseThrow();
        return Sentence.capital(measure.word())
                + ": the body has "
                + tape().print(m.body().orElseThrow())
                + ", the size "
                + (differences.input().pieces().added(measure).equals(Length.ZERO)
                        ? ""
                        : "as altered ")
                + tape().print(m.pattern().orElseThrow())
                + ", "
                + tape().print(by.size())
                + (by.isNegative() ? " more." : " less.")
                + finished(m);
    }

    /** Why it is not what the chart alone would ask for. */
    private String finished(SizeResult.Measurement m) {
        if (differences.needed(m.name()).equals(differences.charted(m.name()))) {
            return "";
        }
        Length ease = m.ease().orElseThrow();
        return " What counts is the finished garment: it is "
                + tape().print(ease.size())
                + (ease.isNegative()
                        ? " smaller than the body there"
                        : " larger than the body there")
                + m.usual()
                        .map(
                                usual ->
                                        ", and the least wearing ease of any source is "
                                                + tape().print(usual.least())
                                                + ".")
                        .orElse(", and no less is suggested than the body.");
    }

    /** Names as the file reads them. */
    static String written(List<String> names) {
        List<String> quoted = names.stream().map(Quoted::of).toList();
        return quoted.size() == 1 ? quoted.get(0) : "[" + String.join(", ", quoted) + "]";
    }

    /** An amount as the file reads it, without its sign: {@code 2.5 cm} or {@code 1 1/2 in}. */
    String written(Length length) {
        Length size = length.size().roundedTo(tape().mark());
        return tape() == Tape.INCH ? inches(size) : Tape.CENTIMETRE.print(size);
    }

    private static String inches(Length size) {
        long under = 16;
        long over = Math.round(size.millimetres() / Length.ofInches(1, under).millimetres());
        long whole = over / under;
        over %= under;
        while (over > 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        String fraction = over == 0 ? "" : over + "/" + under;
        String parted = whole > 0 && over > 0 ? " " : "";
        return (whole > 0 || over == 0 ? whole : "") + parted + fraction + " in";
    }
}
