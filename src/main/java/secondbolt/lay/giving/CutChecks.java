package secondbolt.lay.giving;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Plural;
import secondbolt.textile.extent.Flaw;

/**
 * What is looked at before the first cut; common practice, no source.
 *
 * @param result the lay
 * @param count what is to be cut
 */
record CutChecks(LayResult result, CutCount count) {
    /** So many flaws of a cloth are named; the cutting plan shows all. */
    private static final int NAMED = 6;

    List<String> all() {
        List<String> checks = new ArrayList<>();
        checks.add(
                "Nothing that is cut can be made longer. No sheet forbids it, and every piece is"
                        + " pinned before the first is cut: count "
                        + Plural.of(count.allLeft(), "copy", "copies")
                        + ".");
        if (!result.made().fits()) {
            checks.add("Not all pieces have their place on the cloth: do not cut yet.");
        }
        pairs().ifPresent(checks::add);
        checks.add(
                "Every grain arrow lies along the thread: measure from both its ends to the selvage"
                        + " or a drawn thread.");
        oneWay().ifPresent(checks::add);
        if (!result.plan().rules().matches().isEmpty()) {
            checks.add("Stripes or checks meet on the sewing lines that the plan matches.");
        }
        cloths().stream().map(this::flaws).flatMap(Optional::stream).forEach(checks::add);
        return checks;
    }

    private Optional<String> pairs() {
        return count.pairs().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Of every pair one copy lies with the pattern face down: "
                                + String.join(", ", count.pairs())
                                + (result.plan().isFolded()
                                        ? "; two layers, right side out, make a pair at once."
                                        : "."));
    }

    /** The cloths that the design has pieces of, as they were told. */
    private List<ClothResult> cloths() {
        return result.cloths().stream()
                .filter(c -> count.wanted().containsKey(c.cloth().textile().roleOrMain()))
                .toList();
    }

    private Optional<String> oneWay() {
        List<String> names =
                cloths().stream()
                        .filter(cloth -> cloth.cloth().textile().isLaidOneWay())
                        .map(ClothResult::name)
                        .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Nap or print: the top of every piece points the same way on "
                                + String.join(", ", names)
                                + ".");
    }

    private Optional<String> flaws(ClothResult cloth) {
        List<String> unsound = names(cloth, Flaw.Kind.UNSOUND);
        List<String> hidden = names(cloth, Flaw.Kind.HIDDEN_USE);
        if (unsound.isEmpty() && hidden.isEmpty()) {
            return Optional.empty();
        }
        List<String> words = new ArrayList<>();
        if (!unsound.isEmpty()) {
            words.add("outside every piece: " + some(unsound));
        }
        if (!hidden.isEmpty()) {
            words.add("only under pieces that are hidden in wear: " + some(hidden));
        }
        return Optional.of("On " + cloth.name() + " " + String.join("; ", words) + ".");
    }

    private static List<String> names(ClothResult cloth, Flaw.Kind kind) {
        Set<String> names = new LinkedHashSet<>();
        cloth.cloth().condition().flaws().stream()
                .filter(flaw -> flaw.kind() == kind)
                .forEach(flaw -> names.add(flaw.what()));
        return List.copyOf(names);
    }

    private static String some(List<String> names) {
        return names.size() <= NAMED
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, NAMED))
                        + " and "
                        + (names.size() - NAMED)
                        + " more";
    }
}
