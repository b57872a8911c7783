package secondbolt.work;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.file.Spelling;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.task.WorkStep;
import secondbolt.work.order.Link;
import secondbolt.work.order.StepGraph;
import secondbolt.work.plan.OwnStep;
import secondbolt.work.plan.Ticked;
import secondbolt.work.plan.WorkPlan;

/**
 * Mistakes in what the maker says of the work.
 *
 * @param plan what she says
 * @param steps of the topics, without a circle
 */
record WorkCheck(WorkPlan plan, List<WorkStep> steps) {
    /** So many circles are told; who mends them sees the next. */
    private static final int MOST_CIRCLES = 20;

    /** So many steps of one circle, and lines of as many, are told one by one. */
    private static final int MOST_TOLD = 6;

    /** Names that no step bears, one of the trade's own excepted. */
    List<Trouble> unknownNames() {
        return spoken().filter(name -> !isKnown(name.value())).map(this::unknown).toList();
    }

    /**
     * Names of the trade that others should wait for and that are no step of this project, each
     * once. One that is only ticked is done, and no longer given.
     */
    List<String> notHere() {
        Set<String> there = names();
        return Stream.concat(besides(), plan.order().stream())
                .map(Placed::value)
                .filter(name -> !there.contains(name))
                .distinct()
                .toList();
    }

    /** The other mistakes. */
    List<Trouble> others() {
        List<Trouble> troubles = new ArrayList<>(taken());
        troubles.addAll(twice());
        return troubles.isEmpty() ? circles() : troubles;
    }

    private Stream<Placed<String>> spoken() {
        return Stream.of(
                        besides(), plan.done().stream().map(WorkCheck::step), plan.order().stream())
                .flatMap(all -> all);
    }

    /** What steps of her own stand behind and before. */
    private Stream<Placed<String>> besides() {
        return plan.own().stream()
                .map(Placed::value)
                .flatMap(own -> Stream.concat(own.after().stream(), own.before().stream()));
    }

    private static Placed<String> step(Placed<Ticked> ticked) {
        return new Placed<>(ticked.value().step(), ticked.place());
    }

    private Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        steps.forEach(step -> names.add(step.name()));
        plan.own().forEach(own -> names.add(own.value().name()));
        return names;
    }

    private boolean isKnown(String name) {
        return TradeSteps.has(name) || names().contains(name);
    }

    private Trouble unknown(Placed<String> name) {
        Set<String> names = names();
        Optional<String> near = Spelling.nearest(name.value(), names);
        String right =
                names.isEmpty()
                        ? "`pattern` or `garment` as well, from which the steps come"
                        : near.map(n -> "`" + n + "`").orElse("one of " + Spelling.quoted(names));
        return new Trouble(name.place(), "`" + name.value() + "`, which is no step", right)
                .ofName(name.value(), names);
    }

    /** A name of hers that another step has. */
    private List<Trouble> taken() {
        Set<String> taken = steps.stream().map(WorkStep::name).collect(Collectors.toSet());
        List<Trouble> troubles = new ArrayList<>();
        for (Placed<OwnStep> own : plan.own()) {
            String name = own.value().name();
            if (!taken.add(name)) {
                troubles.add(
                        new Trouble(
                                own.place(),
                                "a step of your own called `" + name + "`, as another is",
                                "a name of its own, such as `name: " + free(name) + "`"));
            }
        }
        return troubles;
    }

    private static String free(String name) {
        return name.codePointCount(0, name.length()) > 50 ? "second" : "second " + name;
    }

    private List<Trouble> twice() {
        Set<String> seen = new HashSet<>();
        return plan.order().stream()
                .filter(name -> !seen.add(name.value()))
                .filter(name -> isKnown(name.value()))
                .map(
                        name ->
                                new Trouble(
                                        name.place(),
                                        "`" + name.value() + "` twice in one order",
                                        "each step once"))
                .toList();
    }

    /** The circles that steps of her own close, each told at one of them. */
    private List<Trouble> circles() {
        List<Placed<OwnStep>> own = new ArrayList<>(plan.own());
        List<Trouble> troubles = new ArrayList<>();
        List<Link> circle = circle(own);
        while (!circle.isEmpty() && troubles.size() < MOST_CIRCLES) {
            List<Link> found = circle;
            Placed<OwnStep> first =
                    own.stream()
                            .filter(step -> isIn(step.value().name(), found))
                            .findFirst()
                            .orElseThrow();
            troubles.add(circle(first, found));
            own.remove(first);
            circle = circle(own);
        }
        return troubles;
    }

    private List<Link> circle(List<Placed<OwnStep>> own) {
        return new StepGraph(OwnSteps.among(steps, own.stream().map(Placed::value).toList()))
                .circle();
    }

    private static boolean isIn(String name, List<Link> circle) {
        return circle.stream().anyMatch(link -> link.later().equals(name));
    }

    private Trouble circle(Placed<OwnStep> first, List<Link> circle) {
        String words =
                some(
                        circle.stream()
                                .map(link -> "`" + link.later() + "` behind `" + link.first() + "`")
                                .toList());
        String others =
                some(
                        plan.own().stream()
                                .filter(step -> !step.equals(first))
                                .filter(step -> isIn(step.value().name(), circle))
                                .map(step -> "line " + step.place().line())
                                .distinct()
                                .toList());
        return new Trouble(
                first.place(),
                "steps that would wait for each other: "
                        + words
                        + (others.isEmpty() ? "" : " (see also " + others + ")"),
                "another `after` or `before`, so that one of them can be done first");
    }

    private static String some(List<String> all) {
        String first = all.stream().limit(MOST_TOLD).collect(Collectors.joining(", "));
        return all.size() > MOST_TOLD
                ? first + " and " + (all.size() - MOST_TOLD) + " more"
                : first;
    }
}
