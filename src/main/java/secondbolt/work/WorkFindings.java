package secondbolt.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.file.value.Quoted;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.work.order.Link;
import secondbolt.work.order.StepGraph;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/**
 * What a maker should know of her order before she goes on.
 *
 * @param result the work in its order
 */
record WorkFindings(WorkResult result) {
    /**
     * That dyeing what is sewn is right under these conditions: derived from why it is wrong
     * otherwise.
     */
    private static final String EXCEPTION =
            " What is sewn may be dyed only where nothing is fused, all thread takes the dye as the"
                    + " cloth does (cotton thread on cotton), and the cloth was washed as hot as the"
                    + " bath before it was cut.";

    private static final int MOST_TOLD = 8;

    static List<Finding> of(WorkResult result) {
        WorkFindings findings = new WorkFindings(result);
        List<Finding> all = new ArrayList<>();
        result.circles().forEach(circle -> all.add(findings.circle(circle)));
        findings.order().ifPresent(all::add);
        findings.doneBefore().ifPresent(all::add);
        all.addAll(findings.doneDays());
        findings.notHere().ifPresent(all::add);
        return all;
    }

    private static Finding finding(String code, Level level, String text, String remedy) {
        return new Finding(code, WorkWorksheet.ABOUT, level, text, remedy);
    }

    private Finding circle(List<Link> circle) {
        return finding(
                "work-circle",
                Level.STOP,
                "The rules of this order contradict each other: "
                        + circle.stream().map(WorkFindings::rule).collect(Collectors.joining(" "))
                        + " The last of them is left out.",
                "Decide yourself which comes first before you begin.");
    }

    /** The first few, with how many there are more. */
    private static String some(List<String> rules) {
        String first = rules.stream().limit(MOST_TOLD).collect(Collectors.joining(" "));
        return rules.size() > MOST_TOLD
                ? first + " And " + (rules.size() - MOST_TOLD) + " more."
                : first;
    }

    /** Each reason once, with the first steps that it holds for. */
    private static List<String> reasons(List<Link> broken) {
        Map<String, Link> byReason = new LinkedHashMap<>();
        broken.forEach(link -> byReason.putIfAbsent(link.rule().why(), link));
        return byReason.values().stream().map(WorkFindings::rule).toList();
    }

    private static String rule(Link link) {
        return "“" + link.later() + "” behind “" + link.first() + "”: " + link.rule().why();
    }

    private Optional<Finding> order() {
        List<Link> broken = result.hers().broken();
        if (broken.isEmpty()) {
            return Optional.empty();
        }
        List<String> reasons = reasons(broken);
        String rules =
                " It breaks "
                        + (reasons.size() == 1 ? "a rule: " : reasons.size() + " rules: ")
                        + some(reasons);
        String hers =
                result.order().stream().limit(MOST_TOLD).collect(Collectors.joining(", "))
                        + (result.order().size() > MOST_TOLD ? ", …" : "");
        boolean isBath = broken.stream().anyMatch(this::isBath);
        String exception = isBath ? EXCEPTION : "";
        return Optional.of(
                result.hers().isRefused()
                        ? finding(
                                "work-order-spoils",
                                isBath ? Level.STOP : Level.WARNING,
                                "Your order ("
                                        + hers
                                        + (isBath
                                                ? ") would spoil the cloth."
                                                : ") does not work out.")
                                        + rules,
                                "Go by the order on this page and write `order: none` under `work`."
                                        + exception)
                        : finding(
                                "work-order-dared",
                                Level.WARNING,
                                "Your order ("
                                        + hers
                                        + ") is followed, though not without danger."
                                        + rules,
                                "Try it on a scrap first, or write `order: none` under `work`."
                                        + exception));
    }

    /** Whether what ought to come first is a bath, and what stands before it is cut or sewn. */
    private boolean isBath(Link link) {
        return result.steps().stream()
                .filter(step -> step.name().equals(link.first()))
                .anyMatch(step -> step.isWet() || step.stage() == Stage.DYEING);
    }

    /** Steps that are ticked while what they need is not. */
    private Optional<Finding> doneBefore() {
        List<String> told = new ArrayList<>();
        for (WorkStep step : result.steps()) {
            for (WorkStep.Follows rule : result.follows(step)) {
                if (result.isDone(step) && !result.done().containsKey(rule.step())) {
                    told.add(rule(new Link(step.name(), rule)));
                }
            }
        }
        if (told.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                finding(
                        "work-done-before",
                        Level.CAUTION,
                        "Ticked, while what must come before is not: " + some(told),
                        "If that is done too, write `"
                                + allDone()
                                + "` under `work`; if not, look"
                                + " whether it can still be done, or what to take back."));
    }

    /** The line that ticks all that is ticked and all that it needs. */
    private String allDone() {
        Map<String, Optional<LocalDate>> done = result.done();
        Set<String> all = new LinkedHashSet<>(done.keySet());
        Set<String> needed = new LinkedHashSet<>();
        StepGraph graph = new StepGraph(result.steps());
        all.forEach(name -> needed.addAll(graph.needs(name)));
        boolean isDated = done.values().stream().anyMatch(Optional::isPresent);
        List<String> names =
                result.steps().stream()
                        .map(WorkStep::name)
                        .filter(name -> all.contains(name) || needed.contains(name))
                        .map(name -> isDated ? dated(name) : Quoted.of(name))
                        .toList();
        String inside = String.join(", ", names);
        return isDated ? "done: {" + inside + "}" : "done: [" + inside + "]";
    }

    private String dated(String name) {
        Optional<LocalDate> on = result.done().getOrDefault(name, Optional.empty());
        return Quoted.of(name) + ": " + on.map(Object::toString).orElse("unknown");
    }

    /** Days of which the later step has the earlier one. */
    private List<Finding> doneDays() {
        List<Finding> found = new ArrayList<>();
        for (WorkStep step : result.steps()) {
            Optional<LocalDate> on = result.done().getOrDefault(step.name(), Optional.empty());
            for (WorkStep.Follows rule : result.follows(step)) {
                Optional<LocalDate> before =
                        result.done().getOrDefault(rule.step(), Optional.empty());
                if (on.isPresent() && before.filter(on.get()::isBefore).isPresent()) {
                    found.add(days(step, on.get(), rule, before.get()));
                }
            }
        }
        return found;
    }

    private static Finding days(
            WorkStep step, LocalDate on, WorkStep.Follows rule, LocalDate before) {
        return finding(
                "work-done-days",
                Level.CAUTION,
                "“"
                        + step.name()
                        + "” is ticked on "
                        + on
                        + ", before “"
                        + rule.step()
                        + "” on "
                        + before
                        + ". "
                        + rule.why(),
                "If a day is wrong, write `done: {"
                        + Quoted.of(step.name())
                        + ": unknown}` under `work`, or the right one; if it was so, look whether it"
                        + " must be done again.");
    }

    private Optional<Finding> notHere() {
        return result.notHere().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        finding(
                                "work-step-not-here",
                                Level.NOTE,
                                "You speak of steps that this project does not have, and nothing"
                                        + " waits for them: "
                                        + result.notHere().stream()
                                                .map(name -> "“" + name + "”")
                                                .collect(Collectors.joining(", "))
                                        + ".",
                                ""));
    }
}
