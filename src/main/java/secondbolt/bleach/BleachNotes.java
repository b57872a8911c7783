package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.plan.Bleaching;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Subject;

/** What a maker should read of bleaching: what is found, assumed and open. */
final class BleachNotes {
    private BleachNotes() {}

    static Notes of(List<Treatment> treatments, Tape tape) {
        List<Finding> findings = new ArrayList<>();
        for (Treatment treatment : treatments) {
            findings.addAll(of(treatment, tape));
        }
        bothInOneHouse(treatments).ifPresent(findings::add);
        return new Notes(
                findings,
                treatments.stream().flatMap(t -> assumed(t).stream()).toList(),
                treatments.stream().flatMap(BleachNotes::open).toList());
    }

    /** What is found of one cloth: why not, or what to look twice at. */
    static List<Finding> of(Treatment treatment, Tape tape) {
        return treatment.isRefused()
                ? new RefusalFindings(treatment).all()
                : new BleachFindings(treatment, tape).all();
    }

    private static Optional<Finding> bothInOneHouse(List<Treatment> treatments) {
        List<Treatment> done = treatments.stream().filter(t -> !t.isRefused()).toList();
        Optional<Treatment> removed =
                done.stream().filter(t -> t.isWith(Agent.REMOVER)).findFirst();
        boolean isBleached = done.stream().anyMatch(t -> !t.isWith(Agent.REMOVER));
        return removed.filter(t -> isBleached)
                .map(
                        t ->
                                new Finding(
                                        "bleach-and-remover",
                                        new Subject.Cloth(t.name()),
                                        Finding.Level.WARNING,
                                        "This project uses a bleach and a colour remover: the two react"
                                                + " violently.",
                                        "Never in one vessel or one water, and not on one day: bleach,"
                                                + " rinse, wash and put the bottle away; then the remover,"
                                                + " in a vessel that never held bleach."));
    }

    private static Optional<Assumed> assumed(Treatment treatment) {
        boolean isTaken = treatment.isPatterned() && treatment.plan().evidence().colour().isEmpty();
        return isTaken
                ? Optional.of(
                        new Assumed(
                                "colour of " + treatment.name(),
                                "patterned",
                                "not told; it has a `repeat`"))
                : Optional.empty();
    }

    private static Stream<Open> open(Treatment treatment) {
        if (treatment.agent().isEmpty()) {
            return Stream.of(
                    new Open(
                            treatment.name() + ": what takes its stains or colour out",
                            "how it is done, its sheet, its steps and what to buy",
                            "Read below what its fibres bear, choose, and write `with` under"
                                    + " `bleach`."));
        }
        if (treatment.fibre().isEmpty()) {
            return Stream.of(
                    new Open(
                            treatment.name() + ": its fibre",
                            "whether any bleach or remover may touch it, and all amounts",
                            "Look for a label, ask a fabric shop, or burn a single thread, and write"
                                    + " `fibre`."));
        }
        return treatment.isRefused()
                ? Stream.empty()
                : treatment.isWith(Agent.REMOVER) ? bath(treatment) : label(treatment);
    }

    private static Stream<Open> bath(Treatment treatment) {
        List<Open> open = new ArrayList<>();
        Bleaching plan = treatment.plan();
        if (plan.bath().remover().isEmpty() && !plan.isAsked("remover")) {
            open.add(
                    new Open(
                            treatment.name() + ": what the remover is made of",
                            "water, remover, soda ash, heat and time",
                            "Read what its label says it contains, and write `remover` under"
                                    + " `bleach`."));
        }
        if (treatment.mass().isEmpty()) {
            open.add(
                    new Open(
                            treatment.name() + ": what it weighs dry",
                            "water, remover and soda ash",
                            "Put it on a scale, dry, and write `mass` under `cloth`."));
        }
        return open.stream();
    }

    private static Stream<Open> label(Treatment treatment) {
        Bleaching plan = treatment.plan();
        return plan.bath().label().isPresent() || plan.isAsked("label")
                ? Stream.empty()
                : Stream.of(
                        new Open(
                                treatment.name() + ": what the label of the bleach says",
                                "how much goes in and how long; nothing here stands in for it",
                                "Read the laundry directions on the bottle, and write `label` under"
                                        + " `bleach`."));
    }
}
