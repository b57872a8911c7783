package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.AcrossAlong;
import secondbolt.file.Answer;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;

/** What the maker should know of one cloth before she cuts. */
final class ClothFindings {
    /** A lean or a difference that a tape over a whole cloth shows (common practice, no source). */
    private static final Length SQUARE_ENOUGH = Length.ofMillimetres(3);

    private static final List<String> WOOLLY =
            List.of("wool", "mohair", "cashmere", "alpaca", "angora");

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
        findings.prewash();
        findings.squareness();
        findings.fibre();
        findings.direction();
        findings.flaws();
        return findings.findings;
    }

    private void add(Finding.Level level, String text, String remedy) {
        findings.add(new Finding(result.name(), level, text, remedy));
    }

    private void soundness() {
        if (result.best().filter(y -> y.sound().isEmpty()).isPresent()) {
            add(
                    Finding.Level.STOP,
                    "No sound cloth is left between its flaws and what is kept clear round them.",
                    "Use another cloth, keep less clear, or mark flaws that hidden pieces may lie"
                            + " on.");
        }
    }

    private void survey() {
        Optional<Survey> survey = cloth.condition().survey();
        if (survey.isEmpty()) {
            add(
                    Finding.Level.CAUTION,
                    "It is not told how it was looked over for flaws.",
                    "Hold it to the light after its last wash and note each thin place and hole.");
            return;
        }
        if (survey.get().by() == Survey.By.GUESSED) {
            add(
                    Finding.Level.CAUTION,
                    "Its flaws are guessed, not looked for.",
                    "Hold it to the light and mark each thin place and hole before you lay out.");
        }
        if (survey.get().when().orElse(Survey.When.BEFORE) == Survey.When.BEFORE) {
            add(
                    Finding.Level.CAUTION,
                    (survey.get().when().isPresent()
                                    ? "It was looked over before its last wash"
                                    : "It is not told whether it was looked over before or after"
                                            + " its last wash")
                            + ", and thin places open into holes in the first wash.",
                    "Hold it to the light again once it is washed and dry, and add what is new.");
        }
    }

    private void prewash() {
        if (cloth.prewash().isEmpty()) {
            add(
                    Finding.Level.CAUTION,
                    "It is not told whether it was washed before it was measured; it is taken as"
                            + " measured.",
                    "Write `prewash: done` if it was; if not, mark a square, wash it as the"
                            + " garment will be washed, and measure again.");
        }
        AcrossAlong<Optional<Share>> left = result.left();
        if (left.across().isPresent() != left.along().isPresent()) {
            oneWayKnown(left);
        }
    }

    /** What it would be if both ways drew in alike: said, and never taken for the result. */
    private void oneWayKnown(AcrossAlong<Optional<Share>> left) {
        boolean across = left.across().isPresent();
        Share known = left.across().or(left::along).orElseThrow();
        String change =
                known.lost().fraction() < 0
                        ? "grows by " + known.plus(Share.ofPercent(-100)).percent(2)
                        : "draws in by " + known.lost().percent(2);
        String would =
                result.measured()
                        .map(
                                y ->
                                        across
                                                ? y.size().along().times(known)
                                                : y.size().across().times(known))
                        .map(
                                length ->
                                        ", and the trimmed cloth would end "
                                                + tape.printBoth(length)
                                                + (across ? " long" : " wide"))
                        .orElse("");
        add(
                Finding.Level.NOTE,
                (across ? "Across" : "Along")
                        + " it "
                        + change
                        + "; "
                        + (across ? "along" : "across")
                        + " is not known and need not be the same. If it were, you would cut "
                        + cutFor(known)
                        + " for each "
                        + tape.printBoth(tenUnits())
                        + would
                        + ". No figure here takes that for granted.",
                "");
    }

    /** Rounded up on each tape: a length cut too short is lost. */
    private String cutFor(Share left) {
        Length cut = ClothCalculation.cutFor(tenUnits(), left);
        Tape other = tape.other();
        return tape.print(cut.roundedUpTo(tape.mark()))
                + " ("
                + other.print(cut.roundedUpTo(other.mark()))
                + ")";
    }

    private Length tenUnits() {
        return tape == Tape.INCH ? Length.ofInches(10, 1) : Length.ofMillimetres(100);
    }

    private void squareness() {
        cloth.extent().toOptional().flatMap(Extent::measured).ifPresent(this::squareness);
    }

    private void squareness(Extent.Measured sides) {
        Length along = cloth.extent().toOptional().orElseThrow().size().along();
        Length left = sides.left().orElse(along);
        Length right = sides.right().orElse(along);
        String remedy =
                "Pull it square while it is damp, along its short diagonal, and dry it flat; cut"
                        + " ragged ends off along a thread, then measure again.";
        if (left.minus(right).size().isLongerThan(SQUARE_ENOUGH)) {
            add(
                    Finding.Level.CAUTION,
                    "Its sides differ: left "
                            + tape.printBoth(left)
                            + ", right "
                            + tape.printBoth(right)
                            + ". It is taken with a bottom edge that slants by "
                            + tape.printBoth(left.minus(right).size())
                            + ".",
                    remedy);
        }
        sides.diagonal()
                .map(diagonal -> lean(diagonal, right))
                .filter(lean -> lean.size().isLongerThan(SQUARE_ENOUGH))
                .ifPresent(
                        lean ->
                                add(
                                        Finding.Level.CAUTION,
                                        "It is out of square: by its diagonal the bottom right"
                                                + " corner lies "
                                                + tape.printBoth(lean.size())
                                                + (lean.isNegative() ? " left" : " right")
                                                + " of where a square corner would be. Places are"
                                                + " taken along the threads, as if it were pulled"
                                                + " square.",
                                        remedy));
    }

    /**
     * How far the right side leans, to the right if positive.
     *
     * <p>Derived: with the width w, the side r and the diagonal d from the top left corner, d² = w²
     * + r² + 2 w s, where s is how far the bottom right corner has moved across.
     */
    private Length lean(Length diagonal, Length side) {
        Length across = cloth.extent().toOptional().orElseThrow().size().across();
        return diagonal.times(diagonal)
                .minus(across.times(across))
                .minus(side.times(side))
                .dividedBy(across.times(2));
    }

    private void fibre() {
        Optional<Fibre> fibre = cloth.textile().fibre().flatMap(Answer::toOptional);
        boolean known = fibre.isPresent();
        Optional<Textile.KnownBy> by = cloth.textile().knownBy();
        if (!known) {
            add(
                    Finding.Level.CAUTION,
                    "Its fibre is not known, and the iron's heat, the wash and any dye wait for it.",
                    "Look for a label, ask a fabric shop, or burn a single thread.");
        } else if (by.filter(b -> b == Textile.KnownBy.GUESS).isPresent()) {
            add(
                    Finding.Level.CAUTION,
                    "Its fibre is a guess.",
                    "Try the iron, the wash and any dye on a scrap first.");
        }
        if (!known || by.filter(b -> b == Textile.KnownBy.BURN_TEST).isPresent()) {
            add(
                    Finding.Level.CAUTION,
                    "A burn test is done with one thread held in tweezers over a metal tray, with"
                            + " water at hand and nothing else near; some fibres drip and burn on."
                            + " It is not for children, and it cannot tell a blend.",
                    known ? "" : "If in doubt leave it, and ask.");
        }
        fibre.filter(f -> f.isBlend() || f.hasAny(WOOLLY))
                .ifPresent(
                        f ->
                                add(
                                        Finding.Level.CAUTION,
                                        f.hasAny(WOOLLY)
                                                ? "It has wool in it: heat and rubbing felt it for"
                                                        + " good."
                                                : "It is a blend: the more tender fibre decides"
                                                        + " how hot it may be washed and ironed.",
                                        "Follow its care label before any advice here."));
    }

    private void direction() {
        if (cloth.textile().napOrNone() == Textile.Nap.ONE_WAY) {
            add(Finding.Level.NOTE, "It runs one way: every piece must lie the same way up.", "");
        }
        Textile.Repeat repeat = cloth.textile().repeat();
        if (repeat.isAny()) {
            List<String> ways = new ArrayList<>();
            repeat.along().ifPresent(l -> ways.add(tape.printBoth(l) + " along"));
            repeat.across().ifPresent(l -> ways.add(tape.printBoth(l) + " across"));
            add(
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
                    Finding.Level.NOTE,
                    "Some flaws are good enough for hidden pieces; the sound area leaves them out,"
                            + " and the area for hidden pieces counts them in.",
                    "");
        }
        if (flaws.stream().anyMatch(f -> f.kind() != Flaw.Kind.FEATURE)) {
            add(
                    Finding.Level.NOTE,
                    "Dye does not hide a stain: most stains take it darker, and grease keeps it"
                            + " out.",
                    "Keep stained places out of pieces that are seen.");
        }
    }
}
