package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.recipe.Bearing;
import secondbolt.bleach.recipe.RemoverBath;
import secondbolt.bleach.recipe.Sources;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.measure.Tape;
import secondbolt.prepare.heat.Temperature;
import secondbolt.task.Hazard;

/**
 * What the page shows of bleaching.
 *
 * @param treatments all of them, in the maker's order
 * @param tape to print with
 */
record BleachPage(List<Treatment> treatments, Tape tape) {
    /** Published by one side and the other; the page names both. */
    private static final String WATER =
            "Chlorine bleach, which water: cold ("
                    + Sources.HOSPITAL
                    + ": hot water breaks it down; "
                    + Sources.BEECH
                    + ": cold and weak, twice rather than once strong, never dried in); about 25 °C and"
                    + " warm better than very cold or hot ("
                    + Sources.STUDY
                    + "); warm ("
                    + Sources.HOUSEHOLD
                    + "). Cold or room temperature is told here.";

    private static final String STOPPING =
            "How it is stopped: older texts have weak vinegar or ammonia, and a dry cleaners' column an"
                    + " acid. Public bodies forbid both, for chlorine and chloramine gas ("
                    + Sources.CDC
                    + "; "
                    + Sources.POISON_CENTRE
                    + "). Here it is rinsed, and nothing else.";

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (Treatment treatment : treatments) {
            blocks.addAll(of(treatment));
        }
        if (BleachHazards.isAnyChlorine(treatments)) {
            blocks.add(new Block.Heading("Where published rules differ"));
            blocks.add(new Block.Points(List.of(WATER, STOPPING)));
        }
        List<String> cautions = cautions();
        if (!cautions.isEmpty()) {
            blocks.add(new Block.Heading("Where it can hurt"));
            blocks.add(new Block.Warnings(cautions));
        }
        return blocks;
    }

    /** Each once, in the order they are met. */
    private List<String> cautions() {
        boolean takesAcid = BleachHazards.mayTakeAcid(treatments);
        return treatments.stream()
                .filter(t -> !t.isRefused())
                .flatMap(t -> BleachHazards.of(t, takesAcid).stream())
                .distinct()
                .sorted()
                .map(Hazard::words)
                .toList();
    }

    private List<Block> of(Treatment treatment) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(treatment.name()));
        blocks.add(verdict(treatment));
        blocks.add(new Block.Facts(facts(treatment)));
        if (!treatment.mostTender().isEmpty()) {
            blocks.add(new Block.Rows(bears(treatment)));
        }
        if (!treatment.isRefused()) {
            blocks.add(
                    new Block.Steps(
                            BleachSheet.items(treatment, treatments, tape).stream()
                                    .map(i -> i.title() + ". " + String.join(" ", i.notes()))
                                    .toList()));
        }
        return blocks;
    }

    private static Block verdict(Treatment treatment) {
        if (treatment.agent().isEmpty()) {
            return new Block.Verdict(
                    "Not decided. The table says what its most tender fibre bears.", false);
        }
        String with = treatment.agent().get().word();
        return treatment.isRefused()
                ? new Block.Verdict(
                        "No " + with + ": the stop above says why and what can be done instead.",
                        false)
                : new Block.Verdict(
                        "It may be treated with "
                                + with
                                + ", a scrap first, by the product's label.",
                        true);
    }

    private List<Fact> facts(Treatment treatment) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("with", treatment.agent().map(Agent::word).orElse("not decided")));
        facts.add(Fact.of("fibre", treatment.fibre().map(f -> f.words()).orElse("not known")));
        facts.add(Fact.of("colour", treatment.colour().map(c -> c.word()).orElse("not told")));
        facts.add(
                new Fact(
                        "dry mass",
                        treatment
                                .mass()
                                .map(m -> Both.of(tape, m))
                                .orElse(Both.words("not known"))));
        treatment.bath().map(this::bath).ifPresent(facts::addAll);
        return facts;
    }

    private List<Fact> bath(RemoverBath bath) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("water", Both.of(tape, t -> t.print(bath.water()))));
        facts.add(new Fact("thiourea dioxide", Both.of(tape, t -> t.printFine(bath.remover()))));
        facts.add(new Fact("soda ash", Both.of(tape, t -> t.printFine(bath.soda()))));
        bath.celsius()
                .ifPresent(c -> facts.add(Fact.of("no hotter than", new Temperature(c).words())));
        facts.add(Fact.of("time", bath.leastMinutes() + " to " + bath.mostMinutes() + " minutes"));
        if (bath.loads() > 1) {
            facts.add(Fact.of("loads for the vessel", Integer.toString(bath.loads())));
        }
        facts.add(Fact.of("by", Sources.REMOVER_SHEET + "; your remover's leaflet comes first"));
        return facts;
    }

    private static Table bears(Treatment treatment) {
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (Map.Entry<Agent, Bearing> entry : treatment.mostTender().entrySet()) {
            rows.add(
                    List.of(
                            Table.Cell.of(entry.getKey().word()),
                            Table.Cell.of(entry.getValue().grade().words()),
                            Table.Cell.of(reasons(treatment, entry.getKey()))));
        }
        return new Table(
                "What " + treatment.name() + " bears",
                "",
                List.of("Product", "Its most tender fibre", "Why"),
                rows);
    }

    private static String reasons(Treatment treatment, Agent agent) {
        return treatment.bearings(agent).stream()
                .map(b -> b.fibre().word() + " " + b.why() + " (" + b.source() + ")")
                .collect(Collectors.joining("; "));
    }
}
