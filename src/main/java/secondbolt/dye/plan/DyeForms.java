package secondbolt.dye.plan;

import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/** How the measures of a dye bath are written. */
final class DyeForms {
    private static final int LEAST_RATIO = 3;
    private static final int MOST_RATIO = 100;
    private static final double SMALLEST_ML = 100;

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
                                                        && v.compareTo(DyePlan.Bath.LARGEST) <= 0));
    }

    static Form<Share> ratio() {
        return Forms.map(
                Forms.whole(
                        LEAST_RATIO,
                        MOST_RATIO,
                        ": so many times the dry cloth's weight, 20 for 20 to 1"),
                times -> Share.ofRatio(times, 1));
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
