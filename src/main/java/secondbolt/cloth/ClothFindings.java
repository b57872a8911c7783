package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.measure.Tape;
import secondbolt.textile.Cloth;
import secondbolt.textile.Survey;
import secondbolt.textile.Textile;
import secondbolt.textile.extent.Extent;
import secondbolt.textile.extent.Flaw;
import secondbolt.worksheet.Finding;

/** What the maker should know of one cloth before she cuts. */
final class ClothFindings {
    private final ClothResult result;
    private final Cloth cloth;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    private ClothFindings(ClothResult result, Tape tape) {
        this.result = result;
        this.cloth = result.cloth();
        this.tape = tape;
    }

    static List<Finding> of(ClothResult result, Tape tape) {
        ClothFindings findings = new ClothFindings(result, tape);
        findings.soundness();
        findings.survey();
        findings.findings.addAll(new WashFindings(result, tape).findings());
        findings.squareness();
        findings.unit();
        findings.findings.addAll(new EdgeFindings(result, tape).findings());
        findings.findings.addAll(new FibreFindings(result.subject()).of(result.cloth().textile()));
        findings.direction();
        findings.flaws();
        return findings.findings;
    }

    private void add(String code, Finding.Level level, String text, String remedy) {
        findings.add(new Finding(code, result.subject(), level, text, remedy));
    }

    private void squareness() {
        SquarenessFindings found = new SquarenessFindings(result.subject(), tape);
        cloth.extent()
                .toOptional()
                .flatMap(Extent::squareness)
                .ifPresent(square -> findings.addAll(found.of(square)));
    }

    /** Figures that are a sheet or a curtain in inches, and in centimetres a scrap. */
    private void unit() {
        if (cloth.isInchLike()) {
            String size =
                    cloth.extent()
                            .toOptional()
                            .map(Extent::size)
                            .map(s -> tape.print(s.across()) + " by " + tape.print(s.along()))
                            .orElse("");
            String bare = size.replace(" " + tape.symbol(), "").replace(" by ", " in, ");
            add(
                    "cloth-size-in-inches",
                    Finding.Level.CAUTION,
                    "Is it really "
                            + size
                            + "? The figures are those of a sheet or a curtain in"
                            + " inches.",
                    "If the tape was in inches, write `size: ["
                            + bare
                            + " in]`; if it is right, write the unit behind both figures: `size: ["
                            + size.replace(" by ", ", ")
                            + "]`.");
        }
    }

    private void soundness() {
        if (result.best().filter(y -> y.sound().isEmpty()).isPresent()) {
            add(
                    "cloth-none-sound",
                    Finding.Level.STOP,
                    "No sound cloth is left between its flaws and what is kept clear round them.",
                    "Use another cloth, keep less clear, or mark flaws that hidden pieces may lie"
                            + " on.");
        }
    }

    private void survey() {
        if (cloth.condition().told() == Cloth.Flaws.UNKNOWN) {
            add(
                    "cloth-not-surveyed",
                    Finding.Level.WARNING,
                    "Nobody has looked it over for flaws: what is told here of sound cloth, and"
                            + " every place on it, holds only if there are none.",
                    "Hold it to the light after its last wash, before anything is cut, and note"
                            + " each hole, stain and thin place.");
            return;
        }
        Optional<Survey> survey = cloth.condition().survey();
        if (survey.isEmpty()) {
            add(
                    "cloth-survey-untold",
                    Finding.Level.CAUTION,
                    "It is not told how it was looked over for flaws.",
                    "Hold it to the light after its last wash and note each thin place and hole.");
            return;
        }
        if (survey.get().by() == Survey.By.GUESSED) {
            add(
                    "cloth-flaws-guessed",
                    Finding.Level.CAUTION,
                    "Its flaws are guessed, not looked for.",
                    "Hold it to the light and mark each thin place and hole before you lay out.");
        }
        if (survey.get().when().orElse(Survey.When.BEFORE) == Survey.When.BEFORE) {
            add(
                    "cloth-surveyed-before-wash",
                    Finding.Level.CAUTION,
                    (survey.get().when().isPresent()
                                    ? "It was looked over before its last wash"
                                    : "It is not told whether it was looked over before or after"
                                            + " its last wash")
                            + ", and thin places open into holes in the first wash.",
                    "Hold it to the light again once it is washed and dry, and add what is new.");
        }
    }

    private void direction() {
        if (cloth.textile().napOrNone() == Textile.Nap.ONE_WAY) {
            add(
                    "cloth-one-way",
                    Finding.Level.NOTE,
                    "It runs one way: every piece must lie the same way up.",
                    "");
        }
        Textile.Repeat repeat = cloth.textile().repeat();
        if (repeat.isAny()) {
            List<String> ways = new ArrayList<>();
            repeat.along().ifPresent(l -> ways.add(tape.printBoth(l) + " along"));
            repeat.across().ifPresent(l -> ways.add(tape.printBoth(l) + " across"));
            add(
                    "cloth-pattern-repeats",
                    Finding.Level.NOTE,
                    "Its pattern repeats every "
                            + String.join(" and ", ways)
                            + ", as measured before the wash; matching it takes more cloth than the"
                            + " figures here show.",
                    "");
        }
    }

    private void flaws() {
        List<Flaw> flaws = cloth.condition().flaws();
        if (flaws.stream().anyMatch(f -> f.kind() == Flaw.Kind.HIDDEN_USE)) {
            add(
                    "cloth-flaws-for-hidden",
                    Finding.Level.NOTE,
                    "Some flaws are good enough for hidden pieces; the sound area leaves them out,"
                            + " and the area for hidden pieces counts them in.",
                    "");
        }
    }
}
