package secondbolt.work.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/** Steps with what they follow. A step that nobody contributes is followed by none. */
public final class StepGraph {
    private final Map<String, WorkStep> byName = new LinkedHashMap<>();

    /** What was asked before, for an order of hers asks for each of its pairs. */
    private final Map<String, List<WorkStep.Follows>> follows = new HashMap<>();

    private final Map<String, Set<String>> needs = new HashMap<>();

    /**
     * The graph of some steps.
     *
     * @throws IllegalArgumentException if two share a name
     */
    public StepGraph(List<WorkStep> steps) {
        for (WorkStep step : steps) {
            if (byName.putIfAbsent(step.name(), step) != null) {
                throw new IllegalArgumentException("two steps of one name: " + step.name());
            }
        }
    }

    /** The step of a name, if there is one. */
    public Optional<WorkStep> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** What a step follows, of the steps there are. */
    public List<WorkStep.Follows> follows(String name) {
        return follows.computeIfAbsent(
                name,
                one ->
                        byName.get(one).follows().stream()
                                .filter(f -> byName.containsKey(f.step()))
                                .toList());
    }

    /** All that must be done before a step, however far behind; itself only in a circle. */
    public Set<String> needs(String name) {
        return needs.computeIfAbsent(name, this::behind);
    }

    private Set<String> behind(String name) {
        Set<String> behind = new HashSet<>();
        Deque<String> left = new ArrayDeque<>(List.of(name));
        while (!left.isEmpty()) {
            for (WorkStep.Follows rule : follows(left.poll())) {
                if (behind.add(rule.step())) {
                    left.add(rule.step());
                }
            }
        }
        return Collections.unmodifiableSet(behind);
    }

    /** Whether a step must come after another, however far. */
    public boolean isAfter(String later, String first) {
        return byName.containsKey(later) && needs(later).contains(first);
    }

    /**
     * The rules that hold a step behind another where she has them the other way round: of each way
     * that leads from the one to the other, the rule that enters the stage of the first, for it is
     * the one that says what goes wrong; within one stage, all rules of the way.
     */
    List<Link> reasons(String later, String first) {
        Set<Link> reasons = new LinkedHashSet<>();
        for (WorkStep.Follows rule : follows(later)) {
            boolean leads = rule.step().equals(first) || isAfter(rule.step(), first);
            if (leads) {
                List<Link> way = new ArrayList<>(List.of(new Link(later, rule)));
                way.addAll(shortest(rule.step(), first));
                reasons.addAll(entering(way, byName.get(first).stage()));
            }
        }
        return List.copyOf(reasons);
    }

    private List<Link> entering(List<Link> way, Stage stage) {
        List<Link> entering =
                way.stream()
                        .filter(link -> byName.get(link.first()).stage() == stage)
                        .filter(link -> byName.get(link.later()).stage() != stage)
                        .toList();
        return entering.isEmpty() ? way : entering.subList(entering.size() - 1, entering.size());
    }

    /** The fewest rules that lead from a step back to another; none if it is the same. */
    private List<Link> shortest(String from, String to) {
        Map<String, Link> cameBy = new HashMap<>();
        Deque<String> left = new ArrayDeque<>(List.of(from));
        while (!left.isEmpty() && !cameBy.containsKey(to) && !from.equals(to)) {
            String at = left.poll();
            for (WorkStep.Follows rule : follows(at)) {
                if (cameBy.putIfAbsent(rule.step(), new Link(at, rule)) == null) {
                    left.add(rule.step());
                }
            }
        }
        List<Link> way = new ArrayList<>();
        for (String at = to; !at.equals(from); at = cameBy.get(at).later()) {
            way.add(0, cameBy.get(at));
        }
        return way;
    }

    /**
     * A circle of steps of which each follows the next and the last the first; none if there is
     * none.
     */
    public List<Link> circle() {
        Map<String, Integer> open = new HashMap<>();
        Map<String, List<String>> followers = new HashMap<>();
        Deque<String> free = new ArrayDeque<>();
        for (String name : byName.keySet()) {
            open.put(name, follows(name).size());
            follows(name)
                    .forEach(
                            f ->
                                    followers
                                            .computeIfAbsent(f.step(), s -> new ArrayList<>())
                                            .add(name));
            if (follows(name).isEmpty()) {
                free.add(name);
            }
        }
        while (!free.isEmpty()) {
            for (String follower : followers.getOrDefault(free.poll(), List.of())) {
                if (open.merge(follower, -1, Integer::sum) == 0) {
                    free.add(follower);
                }
            }
        }
        return byName.keySet().stream()
                .filter(name -> open.get(name) > 0)
                .findFirst()
                .map(name -> circleFrom(name, open))
                .orElse(List.of());
    }

    /** Walks back over steps that are never free until it comes where it was. */
    private List<Link> circleFrom(String start, Map<String, Integer> open) {
        List<Link> walked = new ArrayList<>();
        Map<String, Integer> at = new HashMap<>();
        String name = start;
        while (at.putIfAbsent(name, walked.size()) == null) {
            String here = name;
            WorkStep.Follows back =
                    follows(here).stream()
                            .filter(f -> open.get(f.step()) > 0)
                            .findFirst()
                            .orElseThrow();
            walked.add(new Link(here, back));
            name = back.step();
        }
        return List.copyOf(walked.subList(at.get(name), walked.size()));
    }

    /** The steps, in the order given. */
    public List<WorkStep> steps() {
        return List.copyOf(byName.values());
    }
}
