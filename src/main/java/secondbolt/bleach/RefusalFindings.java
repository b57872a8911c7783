package secondbolt.bleach;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.plan.Colour;
import secondbolt.bleach.recipe.Bearing;
import secondbolt.bleach.recipe.Bearing.Grade;
import secondbolt.bleach.recipe.Refusal;
import secondbolt.bleach.recipe.Sources;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** Why a cloth must not be treated so, and what can be done instead. */
record RefusalFindings(Treatment treatment) {
    List<Finding> all() {
        return treatment.refusals().stream().flatMap(refusal -> of(refusal).stream()).toList();
    }

    private Optional<Finding> of(Refusal refusal) {
        return switch (refusal) {
            case UNDECIDED -> undecidedPattern();
            case FIBRE_UNKNOWN ->
                    Optional.of(
                            finding(
                                    "bleach-fibre-unknown",
                                    Level.STOP,
                                    "Nobody knows what "
                                            + treatment.name()
                                            + " is made of: "
                                            + with()
                                            + " may eat it.",
                                    "Leave it until a label or a burnt thread tells, and write `fibre`"
                                            + " and `known by`."));
            case FIBRE_NOT_NAMED ->
                    Optional.of(
                            finding(
                                    "bleach-fibre-not-named",
                                    Level.STOP,
                                    "Part of "
                                            + treatment.name()
                                            + " is a fibre that its label does not name, and the most"
                                            + " tender one decides.",
                                    "Leave out "
                                            + with()
                                            + ", or ask the maker of the cloth what it is and write"
                                            + " `fibre`."));
            case FIBRE_RUINED -> Optional.of(ruined());
            case FINISH_RUINED ->
                    Optional.of(
                            finding(
                                            "bleach-ruins-finish",
                                            Level.STOP,
                                            treatment.name()
                                                    + " is finished not to catch fire, and "
                                                    + with()
                                                    + " ruins that.",
                                            "Leave it out, and wash it as its label says.")
                                    .citing(List.of(Sources.LAUNDRY)));
            case LABEL_FORBIDS -> Optional.of(forbidden());
            case TOO_WEAK ->
                    Optional.of(
                            finding(
                                    "bleach-cloth-weak",
                                    Level.STOP,
                                    treatment.name()
                                            + " tore when it was pulled, and "
                                            + with()
                                            + " takes more of its strength.",
                                    "Leave it as it is; cut round its thin places, or back them."));
            case TAKES_PATTERN -> Optional.of(pattern());
        };
    }

    private Finding ruined() {
        List<Bearing> ruined = bearing(Grade.RUINED);
        return finding(
                        "bleach-ruins-fibre",
                        Level.STOP,
                        "Not "
                                + with()
                                + " on "
                                + treatment.name()
                                + ": "
                                + ruined.stream()
                                        .map(b -> b.fibre().word() + " " + b.why())
                                        .collect(Collectors.joining("; "))
                                + ".",
                        instead()
                                .map(
                                        agent ->
                                                "Its fibres bear another: `with: "
                                                        + agent.word()
                                                        + "` under `bleach`, by its label, on a scrap"
                                                        + " first.")
                                .orElse("Leave it out: wash it, or dye it as it is."))
                .citing(ruined.stream().map(Bearing::source).distinct().toList());
    }

    private Finding forbidden() {
        boolean mayBeOxygen =
                treatment.plan().evidence().triangle().stream()
                        .anyMatch(t -> !t.forbids(Agent.OXYGEN));
        boolean bears = instead().equals(Optional.of(Agent.OXYGEN));
        return finding(
                        "bleach-label-forbids",
                        Level.STOP,
                        "The care label of " + treatment.name() + " forbids " + with() + ".",
                        mayBeOxygen && bears
                                ? "Its label allows another: `with: oxygen bleach` under `bleach`."
                                : "Leave it out: wash it, and keep its stains out of the pieces.")
                .citing(List.of("ISO 3758:2012, the bleaching symbols, " + Sources.MEMORY));
    }

    private Finding pattern() {
        boolean went = treatment.plan().evidence().colourStays().equals(Optional.of(false));
        return finding(
                "bleach-takes-pattern",
                Level.STOP,
                treatment.name()
                        + " is checked, striped or printed, and "
                        + with()
                        + " takes such colours, one before the other"
                        + (went ? "; in the test it did." : "."),
                "Leave it out: wash it, and keep its stains out of the pieces."
                        + (went
                                ? ""
                                : " Only if no colour moves in the drop test on a hidden seam, write"
                                        + " `colour test: stays` under `bleach`."));
    }

    /**
     * While she has not decided she is told what her fibres bear, which says nothing of colours.
     */
    private Optional<Finding> undecidedPattern() {
        boolean stays = treatment.plan().evidence().colourStays().equals(Optional.of(true));
        if (stays || !treatment.colour().equals(Optional.of(Colour.PATTERNED))) {
            return Optional.empty();
        }
        return Optional.of(
                finding(
                        "bleach-pattern-undecided",
                        Level.WARNING,
                        "It is checked, striped or printed: its fibres may bear a bleach or a"
                                + " remover, its colours do not, and go one before the other.",
                        "Do not bleach it, and take no colour out of it: wash it, and keep its stains"
                                + " out of the pieces. Then take it out of `bleach`."));
    }

    private List<Bearing> bearing(Grade grade) {
        return treatment.bearings(treatment.agent().orElseThrow()).stream()
                .filter(b -> b.grade() == grade)
                .toList();
    }

    /** The mildest other bleach that none of its fibres is ruined by; a remover has none. */
    private Optional<Agent> instead() {
        return treatment.isWith(Agent.REMOVER)
                ? Optional.empty()
                : Stream.of(Agent.OXYGEN, Agent.PEROXIDE)
                        .filter(agent -> !treatment.isWith(agent))
                        .filter(
                                agent ->
                                        treatment.bearings(agent).stream()
                                                .allMatch(
                                                        b ->
                                                                b.grade() == Grade.BEARS
                                                                        || b.grade()
                                                                                == Grade.WITH_CARE))
                        .findFirst();
    }

    private String with() {
        return treatment.agent().orElseThrow().word();
    }

    private Finding finding(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Cloth(treatment.name()), level, text, remedy);
    }
}
