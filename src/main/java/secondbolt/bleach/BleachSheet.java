package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.block.Block;
import secondbolt.measure.Tape;
import secondbolt.task.Hazard;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/** A sheet for each cloth that may be treated: what to do, to be ticked off, and where it hurts. */
final class BleachSheet {
    private BleachSheet() {}

    /** The sheets of all that is not refused. */
    static List<Sheet> of(List<Treatment> treatments, Tape tape) {
        return treatments.stream()
                .filter(t -> !t.isRefused())
                .map(t -> sheet(t, treatments, tape))
                .toList();
    }

    /** What is done with one cloth, one thing after the other. */
    static List<Block.Ticks.Item> items(Treatment of, List<Treatment> all, Tape tape) {
        return of.isWith(Agent.REMOVER)
                ? new RemoverWork(of, !BleachHazards.isAnyChlorine(all), tape).items()
                : new BleachWork(of, tape).items();
    }

    private static Sheet sheet(Treatment of, List<Treatment> all, Tape tape) {
        String title = (of.isWith(Agent.REMOVER) ? "Colour remover: " : "Bleach: ") + of.name();
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Prose(
                        of.agent().orElseThrow().word()
                                + " on "
                                + of.fibre().map(f -> f.words()).orElse("")
                                + of.mass().map(m -> ", " + tape.print(m) + " dry").orElse("")
                                + ". The label of the product comes first."));
        List<String> warnings =
                BleachNotes.of(of, tape).stream()
                        .filter(f -> f.level() == Finding.Level.WARNING)
                        .map(Finding::text)
                        .toList();
        if (!warnings.isEmpty()) {
            blocks.add(new Block.Warnings(warnings));
        }
        blocks.add(new Block.Ticks(items(of, all, tape)));
        blocks.add(
                new Block.Warnings(
                        BleachHazards.of(of, !BleachHazards.isAnyChlorine(all)).stream()
                                .map(Hazard::words)
                                .toList()));
        return Sheet.ofWords(
                SheetName.of(title), title, Set.of(new Subject.Cloth(of.name())), blocks);
    }
}
