package secondbolt.bleach.recipe;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.plan.Bleaching;
import secondbolt.bleach.plan.Colour;
import secondbolt.bleach.plan.Remover;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.value.Answer;
import secondbolt.measure.Mass;
import secondbolt.textile.Textile;
import secondbolt.textile.fibre.Fibre;

/**
 * One cloth, what is meant to be done to it, and what it bears.
 *
 * @param name the maker's name for the cloth
 * @param plan what she means to do
 * @param fibre what it is made of, if known
 * @param knownBy how that is known, if told
 * @param mass the whole cloth, dry, if known
 * @param isPatterned whether it has a repeat to match, and so more than one colour
 */
public record Treatment(
        String name,
        Bleaching plan,
        Optional<Fibre> fibre,
        Optional<Textile.KnownBy> knownBy,
        Optional<Mass> mass,
        boolean isPatterned) {
    /** Of a cloth as it was worked out. */
    public static Treatment of(ClothResult cloth, Bleaching plan) {
        Textile textile = cloth.cloth().textile();
        return new Treatment(
                cloth.name(),
                plan,
                textile.fibre().flatMap(Answer::toOptional),
                textile.knownBy(),
                cloth.heaviness().mass(),
                textile.repeat().isAny());
    }

    /** What she takes, if she has decided. */
    public Optional<Agent> agent() {
        return plan.agent();
    }

    /** Whether she takes this. */
    public boolean isWith(Agent agent) {
        return agent().equals(Optional.of(agent));
    }

    /** Whether it has a colour: as told, or patterned because it has a repeat. */
    public Optional<Colour> colour() {
        return plan.evidence()
                .colour()
                .or(() -> isPatterned ? Optional.of(Colour.PATTERNED) : Optional.empty());
    }

    /** What each of its fibres bears of an agent, in the order written; none if not known. */
    public List<Bearing> bearings(Agent of) {
        return fibre.stream()
                .flatMap(f -> f.shares().keySet().stream())
                .map(kind -> FibreBearing.of(of, kind))
                .toList();
    }

    /** What its most tender fibre bears of each agent; nothing if it is not known. */
    public Map<Agent, Bearing> mostTender() {
        Map<Agent, Bearing> tender = new EnumMap<>(Agent.class);
        for (Agent agent : Agent.values()) {
            bearings(agent).stream()
                    .reduce((a, b) -> a.grade().compareTo(b.grade()) < 0 ? b : a)
                    .ifPresent(bearing -> tender.put(agent, bearing));
        }
        return tender;
    }

    /** Why it is not worked out, in the order of weight; none if it may be done. */
    public List<Refusal> refusals() {
        if (agent().isEmpty()) {
            return List.of(Refusal.UNDECIDED);
        }
        Agent with = agent().get();
        List<Refusal> refusals = new ArrayList<>();
        if (fibre.isEmpty()) {
            refusals.add(Refusal.FIBRE_UNKNOWN);
        }
        if (isAny(with, Bearing.Grade.RUINED)) {
            refusals.add(Refusal.FIBRE_RUINED);
        }
        if (isAny(with, Bearing.Grade.NOT_KNOWN)) {
            refusals.add(Refusal.FIBRE_NOT_NAMED);
        }
        Bleaching.Evidence evidence = plan.evidence();
        if (evidence.triangle().filter(t -> t.forbids(with)).isPresent()) {
            refusals.add(Refusal.LABEL_FORBIDS);
        }
        if (evidence.held().equals(Optional.of(false))) {
            refusals.add(Refusal.TOO_WEAK);
        }
        if (takesPattern(with)) {
            refusals.add(Refusal.TAKES_PATTERN);
        }
        return refusals;
    }

    private boolean isAny(Agent with, Bearing.Grade grade) {
        return bearings(with).stream().anyMatch(bearing -> bearing.grade() == grade);
    }

    private boolean takesPattern(Agent with) {
        boolean stays = plan.evidence().colourStays().equals(Optional.of(true));
        return with.isBleach() && colour().equals(Optional.of(Colour.PATTERNED)) && !stays;
    }

    /** Whether it is not worked out. */
    public boolean isRefused() {
        return !refusals().isEmpty();
    }

    /** What the bath takes, if it is one of thiourea dioxide and the cloth is known. */
    public Optional<RemoverBath> bath() {
        boolean isKnown =
                isWith(Agent.REMOVER)
                        && !isRefused()
                        && plan.bath().remover().equals(Optional.of(Remover.THIOUREA_DIOXIDE));
        return isKnown
                ? mass.flatMap(m -> fibre.map(f -> RemoverBath.of(m, f, plan.bath().vessel())))
                : Optional.empty();
    }
}
