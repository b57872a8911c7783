package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

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
        input.sizes().size().ifPresent(size -> all.leftOut(size, choice));
        return List.copyOf(all.findings);
    }

    private void tell(String about, Level level, String text, String remedy) {
        findings.add(new Finding(about, level, text, remedy));
    }

    private void wearer(Wearer wearer) {
        if (wearer.age().isEmpty()) {
            tell(
                    "wearer",
                    Level.CAUTION,
                    "The wearer's age is not told, and is not taken as adult: a child's clothes have"
                            + " cautions of their own.",
                    "Write `age: adult`, or the completed years.");
        }
        Optional<Length> over = SizeChoice.bustOverHighBust(wearer);
        if (over.filter(Length::isNegative).isPresent()) {
            tell(
                    "wearer",
                    Level.CAUTION,
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
        blend(choice);
        uncharted();
    }

    private void start(SizeChoice.Start start, SizeChoice choice) {
        range(start);
        Optional<ChosenSize> size = input.sizes().size();
        Optional<String> here = size.flatMap(s -> s.at(start.row()));
        if (here.filter(label -> !label.equals(start.size())).isPresent()) {
            tell(
                    "size",
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
                                start.row() != BodyMeasure.HIP
                                        && !lower.size().equals(start.size()))
                .ifPresent(
                        lower ->
                                tell(
                                        "size",
                                        Level.NOTE,
                                        "By the "
                                                + start.by().word()
                                                + " it is size "
                                                + start.size()
                                                + "; a skirt or trousers from this chart would start"
                                                + " from size "
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
                            "size",
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
                            "size",
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
                            "size",
                            Level.NOTE,
                            body
                                    + " lies between two sizes: the next larger, "
                                    + start.size()
                                    + ", is the one to start from (State College of Washington,"
                                    + " bulletin 78, 1922).",
                            "");
            case AT_THE_SIZE -> {
                // It is that size: nothing to say.
            }
        }
    }

    private void highBust(Wearer wearer, SizeChoice choice) {
        boolean decides = choice.start().filter(s -> s.by() == BodyMeasure.HIGH_BUST).isPresent();
        Optional<Length> over = SizeChoice.bustOverHighBust(wearer);
        if (decides) {
            tell(
                    "size",
                    Level.NOTE,
                    "The bust is "
                            + print(over.orElseThrow())
                            + " larger than the high bust: from "
                            + print(SizeChoice.FULL_BUST)
                            + " on the size goes by the high bust, so that shoulders and neck fit,"
                            + " and the bust is enlarged (Principles of Pattern Alteration,"
                            + " extension publication).",
                    "");
            return;
        }
        Optional<Length> justShort =
                over.map(SizeChoice.FULL_BUST::minus)
                        .filter(d -> d.isPositive() && d.isShorterThan(input.least()));
        if (justShort.isPresent()
                && choice.start().filter(s -> s.by() == BodyMeasure.BUST).isPresent()) {
            tell(
                    "size",
                    Level.NOTE,
                    "The bust is "
                            + print(over.orElseThrow())
                            + " larger than the high bust, just less than the "
                            + print(SizeChoice.FULL_BUST)
                            + " from which the size goes by the high bust.",
                    "Measure both again; if shoulders and neck are often too wide for you, start by"
                            + " the high bust.");
        }
    }

    /** The girths of the trunk that chart and wearer share, where they point to several sizes. */
    private void blend(SizeChoice choice) {
        Map<BodyMeasure, String> girths = new LinkedHashMap<>();
        choice.nearest()
                .forEach(
                        (measure, label) -> {
                            if (isBlended(measure)) {
                                girths.put(measure, label);
                            }
                        });
        boolean blended = input.sizes().size().filter(s -> s.one().isEmpty()).isPresent();
        boolean byHighBust =
                choice.start().filter(s -> s.by() == BodyMeasure.HIGH_BUST).isPresent();
        if (blended || byHighBust || girths.values().stream().distinct().count() < 2) {
            return;
        }
        ChosenSize size = ChosenSize.blended(girths);
        tell(
                "size",
                Level.NOTE,
                "The nearest size is not the same all over: "
                        + size.words()
                        + ". If all of them are in the pattern, they can be blended instead of"
                        + " altered: "
                        + String.join(" ", size.redraw(Suggestions.sideSeam(input))),
                "Write `size: {"
                        + girths.entrySet().stream()
                                .map(e -> e.getKey().word() + ": " + e.getValue())
                                .collect(Collectors.joining(", "))
                        + "}`, or keep one size and alter.");
    }

    /** What the chart has a row for, but a blend does not say the size of. */
    private void leftOut(ChosenSize size, Optional<SizeChoice> choice) {
        List<BodyMeasure> open =
                input.sizes().chart().stream()
                        .flatMap(c -> Stream.of(BodyMeasure.values()).filter(c::has))
                        .filter(measure -> size.at(measure).isEmpty())
                        .toList();
        if (open.isEmpty()) {
            return;
        }
        String names = open.stream().map(BodyMeasure::word).collect(Collectors.joining(", "));
        Map<BodyMeasure, String> whole = new LinkedHashMap<>(size.blended());
        Map<BodyMeasure, String> nearest = choice.map(SizeChoice::nearest).orElse(Map.of());
        open.forEach(measure -> whole.put(measure, nearest.getOrDefault(measure, "…")));
        tell(
                "size",
                Level.CAUTION,
                "The blend, "
                        + size.words()
                        + ", does not say which size the "
                        + names
                        + (open.size() == 1 ? " is" : " are")
                        + ": what the pattern is for there is left open, and no alteration follows"
                        + " from it.",
                "Write it as well, as in `size: "
                        + flow(whole)
                        + "`"
                        + (open.stream().anyMatch(nearest::containsKey)
                                ? ", with the size nearest to the wearer."
                                : "."));
    }

    private static String flow(Map<BodyMeasure, String> sizes) {
        return Stream.of(BodyMeasure.values())
                .filter(sizes::containsKey)
                .map(measure -> measure.word() + ": " + sizes.get(measure))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static boolean isBlended(BodyMeasure measure) {
        return measure == BodyMeasure.BUST
                || measure == BodyMeasure.CHEST
                || measure == BodyMeasure.WAIST
                || measure == BodyMeasure.HIP;
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
                    "size",
                    Level.NOTE,
                    "The chart has no row for " + names + ", so no alteration follows from it.",
                    "Measure the pattern pieces there and compare for yourself.");
        }
    }

    private String print(Length length) {
        return input.tape().print(length);
    }
}
