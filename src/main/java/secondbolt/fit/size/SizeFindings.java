package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.ChosenSize;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What the maker should know of the size before she cuts. */
final class SizeFindings {
    private final SizeInput input;
    private final List<Finding> findings = new ArrayList<>();

    private SizeFindings(SizeInput input) {
        this.input = input;
    }

    static List<Finding> of(SizeInput input, Optional<SizeChoice> choice) {
        SizeFindings all = new SizeFindings(input);
        input.wearer().ifPresent(all::wearer);
        choice.ifPresent(all::choice);
        input.sizes()
                .size()
                .flatMap(size -> BlendFindings.leftOut(input, size, choice))
                .ifPresent(all.findings::add);
        return List.copyOf(all.findings);
    }

    private void tell(String code, Level level, String text, String remedy) {
        findings.add(new Finding(code, new Subject.Whole("size"), level, text, remedy));
    }

    private void tellOfWearer(String code, String text, String remedy) {
        findings.add(new Finding(code, new Subject.Whole("wearer"), Level.CAUTION, text, remedy));
    }

    private void wearer(Wearer wearer) {
        if (wearer.age().isEmpty()) {
            tellOfWearer(
                    "wearer-age-not-told",
                    "The wearer's age is not told, and is not taken as adult: a child's clothes"
                            + " have cautions of their own.",
                    "Write `age: adult`, or the completed years.");
        }
        Optional<Length> over = SizeChoice.bustOverHighBust(wearer);
        if (over.filter(Length::isNegative).isPresent()) {
            tellOfWearer(
                    "wearer-high-bust-over-bust",
                    "The high bust is "
                            + print(over.get().size())
                            + " larger than the bust, which is the fullest girth.",
                    "Measure both again: the high bust close under the arms, the bust over its"
                            + " fullest.");
        }
    }

    private void choice(SizeChoice choice) {
        choice.start().ifPresent(start -> start(start, choice));
        input.wearer().ifPresent(wearer -> highBust(wearer, choice));
        BlendFindings.nearest(input, choice).ifPresent(findings::add);
        uncharted();
    }

    private void start(SizeChoice.Start start, SizeChoice choice) {
        range(start);
        Optional<ChosenSize> size = input.sizes().size();
        Optional<String> here = size.flatMap(s -> s.at(start.row()));
        if (here.filter(label -> !label.equals(start.size())).isPresent()) {
            tell(
                    "size-other-than-by-rule",
                    Level.NOTE,
                    "By the trade's rule the "
                            + start.by().word()
                            + " of "
                            + print(start.body())
                            + " starts from size "
                            + start.size()
                            + "; you chose "
                            + size.orElseThrow().words()
                            + ".",
                    "");
        }
        choice.lower()
                .filter(
                        lower ->
                                !(input.pieces().made() == SizeInput.Made.FROM_THE_SHOULDERS)
                                        && start.row() != BodyMeasure.HIP
                                        && !lower.size().equals(start.size()))
                .ifPresent(
                        lower ->
                                tell(
                                        "size-lower-body-differs",
                                        Level.NOTE,
                                        "By the "
                                                + start.by().word()
                                                + " it is size "
                                                + start.size()
                                                + "; a skirt or trousers from this chart would"
                                                + " start from size "
                                                + lower.size()
                                                + ", by the hip.",
                                        ""));
    }

    private void range(SizeChoice.Start start) {
        String off = print(start.body().minus(start.charted()).size());
        String body = "The " + start.by().word() + " of " + print(start.body());
        switch (start.lies()) {
            case ABOVE_ALL ->
                    tell(
                            "size-above-the-chart",
                            Level.WARNING,
                            body
                                    + " is "
                                    + off
                                    + " larger than the pattern's largest size, "
                                    + start.size()
                                    + ".",
                            "Look for the pattern in a larger range; or start from size "
                                    + start.size()
                                    + " with the alterations suggested, and try them in an old"
                                    + " sheet first.");
            case BELOW_ALL ->
                    tell(
                            "size-below-the-chart",
                            Level.WARNING,
                            body
                                    + " is "
                                    + off
                                    + " smaller than the pattern's smallest size, "
                                    + start.size()
                                    + ".",
                            "Look for the pattern in a smaller range; or start from size "
                                    + start.size()
                                    + " and narrow it, trying it in an old sheet first.");
            case BELOW_THE_SIZE ->
                    tell(
                            "size-between-two",
                            Level.NOTE,
                            body
                                    + " lies between two sizes: the next larger, "
                                    + start.size()
                                    + ", is the one to start from ("
                                    + nextLarger(start)
                                    + ").",
                            "");
            case AT_THE_SIZE -> {
                // It is that size: nothing to say.
            }
        }
    }

    /** Who says that the next larger is taken: the bulletin speaks of busts only. */
    private static String nextLarger(SizeChoice.Start start) {
        return start.by() == BodyMeasure.BUST
                ? "State College of Washington, bulletin 78, 1922"
                : Convention.COMMON_PRACTICE;
    }

    private void highBust(Wearer wearer, SizeChoice choice) {
        boolean decides = choice.start().filter(s -> s.by() == BodyMeasure.HIGH_BUST).isPresent();
        Optional<Length> over = SizeChoice.bustOverHighBust(wearer);
        if (decides) {
            tell(
                    "size-by-high-bust",
                    Level.NOTE,
                    "The bust is "
                            + print(over.orElseThrow())
                            + " larger than the high bust: from "
                            + print(SizeChoice.FULL_BUST.on(input.tape()))
                            + " on the size goes by the high bust, so that shoulders and neck fit,"
                            + " and the bust is enlarged (Principles of Pattern Alteration,"
                            + " extension publication).",
                    "");
            return;
        }
        Optional<Length> justShort =
                over.map(SizeChoice.FULL_BUST.on(input.tape())::minus)
                        .filter(d -> d.isPositive() && d.isShorterThan(input.least()));
        if (justShort.isPresent()
                && choice.start().filter(s -> s.by() == BodyMeasure.BUST).isPresent()) {
            tell(
                    "size-nearly-by-high-bust",
                    Level.NOTE,
                    "The bust is "
                            + print(over.orElseThrow())
                            + " larger than the high bust, just less than the "
                            + print(SizeChoice.FULL_BUST.on(input.tape()))
                            + " from which the size goes by the high bust.",
                    "Measure both again; if shoulders and neck are often too wide for you, start by"
                            + " the high bust.");
        }
    }

    private void uncharted() {
        String names =
                Suggestions.COMPARED.stream()
                        .filter(m -> input.body(m).isPresent())
                        .filter(m -> !input.sizes().chart().orElseThrow().has(m))
                        .map(BodyMeasure::word)
                        .collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            tell(
                    "size-no-row",
                    Level.NOTE,
                    "The chart has no row for " + names + ", so no alteration follows from it.",
                    "Measure the pattern pieces there and compare for yourself.");
        }
    }

    private String print(Length length) {
        return input.tape().print(length);
    }
}
