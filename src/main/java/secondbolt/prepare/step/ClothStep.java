package secondbolt.prepare.step;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Sentence;

/**
 * A step for the cloths that need it.
 *
 * @param all the cloths
 */
record ClothStep(Preparation all) {
    /** The step with the names of its cloths; none if no cloth needs it. */
    Optional<WorkStep> of(String name, Predicate<PreparedCloth> like, String text) {
        return all.hasAny(like)
                ? Optional.of(
                        WorkStep.of(
                                name,
                                Stage.PREPARING,
                                Sentence.capital(all.names(like)) + ": " + text))
                : Optional.empty();
    }

    /** Each heat once, with the cloths it holds for where there are others. */
    String heats(List<PreparedCloth> those, Function<PreparedCloth, String> heat) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        those.forEach(
                c -> names.computeIfAbsent(heat.apply(c), h -> new ArrayList<>()).add(c.name()));
        return names.entrySet().stream()
                .map(
                        e ->
                                all.cloths().size() == 1
                                        ? e.getKey()
                                        : e.getKey() + " for " + String.join(", ", e.getValue()))
                .collect(Collectors.joining("; "));
    }
}
