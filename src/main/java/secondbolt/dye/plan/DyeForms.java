package secondbolt.dye.plan;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/** How the measures of a dye bath are written. */
final class DyeForms {
    private static final Pattern RATIO = Pattern.compile("(\\d{1,3})(?: ?: ?1)?|1 ?: ?(\\d{1,3})");
    private static final int LEAST_RATIO = 3;
    private static final int MOST_RATIO = 100;
    private static final double SMALLEST_ML = 100;
    private static final double LARGEST_ML = 500_000;

    private DyeForms() {}

    static Form<Volume> volume() {
        return Forms.parsed(
                "a volume such as `12 l` or `3 gal`, of 100 ml to 500 l",
                text ->
                        Volume.parse(text)
                                .fold(Optional::of, refusal -> Optional.<Volume>empty())
                                .filter(
                                        v ->
                                                v.millilitres() >= SMALLEST_ML
                                                        && v.millilitres() <= LARGEST_ML));
    }

    static Form<Share> ratio() {
        return Forms.parsed(
                "a ratio such as `20`: the bath weighs 20 times the dry cloth, from "
                        + LEAST_RATIO
                        + " to "
                        + MOST_RATIO,
                DyeForms::readRatio);
    }

    private static Optional<Share> readRatio(String text) {
        Matcher matcher = RATIO.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String number = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
        int times = Integer.parseInt(number);
        return times >= LEAST_RATIO && times <= MOST_RATIO
                ? Optional.of(Share.ofRatio(times, 1))
                : Optional.empty();
    }

    static Form<Rate> rate() {
        return Forms.parsed(
                "an amount such as `10 %` of the dry fibre, `20 g/l`, `30 ml/l` or `250 g a"
                        + " packet`",
                Rate::parse);
    }

    static Form<Heat> heat() {
        return Forms.parsed("a heat such as `40 C` or `104 F`, of 5 to 100 °C", Heat::parse);
    }

    static Form<Lasting> lasting() {
        return Forms.parsed(
                "a time such as `45 min`, `1 h` or `30 to 60 min`, up to 48 h", Lasting::parse);
    }
}
