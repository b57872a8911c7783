package secondbolt.prepare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Fact;
import secondbolt.measure.Tape;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.task.Hazard;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Sentence;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/** The sheet of words that she ticks off on the day of the wash. */
final class WashDay {
    private static final String NAME = "wash day";

    private WashDay() {}

    /** The sheet; none if nothing is left to do but to press and to look it over. */
    static List<Sheet> sheets(Preparation all, List<WorkStep> steps, Tape tape) {
        if (all.due().isEmpty()) {
            return List.of();
        }
        List<WorkStep> open = steps.stream().filter(step -> !step.isDone()).toList();
        Set<Subject> shows =
                all.cloths().stream().map(PreparedCloth::subject).collect(Collectors.toSet());
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Facts(
                        all.those(c -> !c.isLeftToItsLeaflet()).stream()
                                .map(WashDay::heat)
                                .toList()));
        blocks.add(new Block.Ticks(open.stream().map(step -> item(step, all)).toList()));
        blocks.add(new Block.Warnings(cautions(open)));
        return List.of(Sheet.ofWords(SheetName.of(NAME), Sentence.capital(NAME), shows, blocks));
    }

    private static Fact heat(PreparedCloth cloth) {
        return Fact.of(
                cloth.name(),
                "wash at most: "
                        + cloth.heat().washWords()
                        + "; iron: "
                        + cloth.heat().ironWords());
    }

    private static Block.Ticks.Item item(WorkStep step, Preparation all) {
        List<String> notes = new ArrayList<>(step.checks());
        notes.add(step.text());
        step.pause().map(WashDay::words).ifPresent(notes::add);
        return Block.Ticks.Item.open(
                Sentence.capital(step.name()),
                List.of(String.join(" ", notes)),
                blanks(step.name(), all));
    }

    /** What is to be written down by hand: mass, and the square before and after. */
    private static List<List<String>> blanks(String step, Preparation all) {
        return switch (step) {
            case "weigh" ->
                    all.those(PreparedCloth::isWeighingDue).stream()
                            .map(c -> List.of(c.name(), "mass, dry", "…………"))
                            .toList();
            case "mark square" ->
                    all.those(PreparedCloth::isSquareDue).stream()
                            .map(c -> List.of(c.name(), "across …………", "along …………"))
                            .toList();
            case "survey" ->
                    all.those(PreparedCloth::isWetDue).stream()
                            .map(c -> List.of(c.name(), "across …………", "along …………"))
                            .toList();
            default -> List.of();
        };
    }

    private static String words(Wait wait) {
        boolean inDays = wait.least().toHours() % 24 == 0;
        long least = inDays ? wait.least().toDays() : wait.least().toHours();
        long most = inDays ? wait.most().toDays() : wait.most().toHours();
        return "Wait while "
                + wait.what()
                + ": "
                + least
                + (most > least ? " to " + most : "")
                + (inDays ? " days" : " hours")
                + " ("
                + wait.why()
                + ").";
    }

    private static List<String> cautions(List<WorkStep> steps) {
        Set<Hazard> hazards = new LinkedHashSet<>();
        for (Hazard hazard : Hazard.values()) {
            if (steps.stream().anyMatch(step -> step.hazards().contains(hazard))) {
                hazards.add(hazard);
            }
        }
        return hazards.stream().map(Hazard::words).toList();
    }
}
