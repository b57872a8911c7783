package secondbolt.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.block.Block;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Sentence;

/** What the page and the sheet show of the order of work. */
final class WorkPage {
    private static final int LONGEST_TEXT = 90;

    private final WorkResult result;
    private final boolean isChild;
    private final DayWords days;
    private final Meanwhile meanwhile;
    private final Set<Hazard> told = EnumSet.noneOf(Hazard.class);
    private final List<String> cautions = new ArrayList<>();

    /** The day the last step of the sheet was told to wait for. */
    private String day = "";

    WorkPage(WorkResult result, boolean isChild) {
        this.result = result;
        this.isChild = isChild;
        this.days = new DayWords(result);
        this.meanwhile = Meanwhile.of(result);
    }

    /** The page, from what to do next to the last press. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(verdict());
        blocks.add(new Block.Facts(facts()));
        for (List<WorkStep> run : runs()) {
            String heading = Sentence.capital(run.get(0).stage().word());
            blocks.add(new Block.Heading(heading));
            blocks.add(new Block.Rows(table(heading, run)));
        }
        result.sleeves().map(Block.Prose::new).ifPresent(blocks::add);
        blocks.add(
                new Block.Prose(
                        "A day is the earliest by what must rest in between; what the work itself takes"
                                + " only you know. The maker's leaflet and local rules come first."
                                + (isChild
                                        ? " What a child can be hurt by stands under “Safe for a"
                                                + " child”."
                                        : "")));
        return blocks;
    }

    private Block verdict() {
        if (result.hers().isRefused()) {
            return new Block.Verdict(
                    "Your own order is not followed: this is the order without it.", false);
        }
        Optional<WorkStep> next = result.next();
        return new Block.Verdict(
                next.map(step -> "Next: " + number(step) + ", " + step.name() + ".")
                        .orElse("All of it is done."),
                true);
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        int done = result.done().size();
        facts.add(
                Fact.of(
                        "Steps",
                        result.steps().size() + (done == 0 ? "" : ", " + done + " of them done")));
        result.steps().stream()
                .filter(step -> !result.isDone(step))
                .max((a, b) -> Integer.compare(days.most(a), days.most(b)))
                .map(last -> Fact.of("Not finished before", days.of(last)))
                .ifPresent(facts::add);
        if (!result.source().isEmpty()) {
            facts.add(Fact.of("Order of the sewing", result.source()));
        }
        return facts;
    }

    /** Steps that follow each other within one stage. */
    private List<List<WorkStep>> runs() {
        List<List<WorkStep>> runs = new ArrayList<>();
        Optional<Stage> stage = Optional.empty();
        for (WorkStep step : result.steps()) {
            if (!stage.equals(Optional.of(step.stage()))) {
                runs.add(new ArrayList<>());
                stage = Optional.of(step.stage());
            }
            runs.get(runs.size() - 1).add(step);
        }
        return runs;
    }

    private int number(WorkStep step) {
        return result.steps().indexOf(step) + 1;
    }

    private Table table(String heading, List<WorkStep> run) {
        List<List<Table.Cell>> rows =
                run.stream()
                        .map(
                                step ->
                                        Stream.of(
                                                        number(step) + ". " + step.name(),
                                                        words(step),
                                                        days.of(step))
                                                .map(Table.Cell::of)
                                                .toList())
                        .toList();
        return new Table(heading, "", List.of("Step", "What to do", "Not before"), rows);
    }

    private String words(WorkStep step) {
        List<String> said = new ArrayList<>();
        checks(step).ifPresent(said::add);
        said.add(Sentence.capital(step.text()));
        step.pause().map(WaitWords::full).ifPresent(said::add);
        List<String> free = meanwhile.of(step);
        if (!free.isEmpty()) {
            said.add("Meanwhile you can do: " + String.join(", ", free) + ".");
        }
        said.addAll(cautions(step));
        return String.join(" ", said);
    }

    private static Optional<String> checks(WorkStep step) {
        return step.checks().isEmpty()
                ? Optional.empty()
                : Optional.of("Stop and look first: " + String.join(" ", step.checks()));
    }

    /** Each hazard once, at the first step where the hand is that is not done. */
    private List<String> cautions(WorkStep step) {
        if (result.isDone(step)) {
            return List.of();
        }
        return Arrays.stream(Hazard.values())
                .filter(step.hazards()::contains)
                .filter(told::add)
                .map(Hazard::words)
                .toList();
    }

    /** The sheet: names to tick, with what to look at and what to wait for. */
    List<Block> ticks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(verdict());
        for (List<WorkStep> run : runs()) {
            blocks.add(new Block.Heading(Sentence.capital(run.get(0).stage().word())));
            blocks.add(new Block.Ticks(run.stream().map(this::tick).toList()));
        }
        if (!cautions.isEmpty()) {
            blocks.add(new Block.Heading("Cautions, each at the first step it is needed for"));
            blocks.add(new Block.Points(cautions));
            if (result.steps().stream().anyMatch(step -> step.stage() == Stage.DYEING)) {
                blocks.add(
                        new Block.Prose(
                                "Those of the baths stand on the sheets they are done by."));
            }
        }
        return blocks;
    }

    private Block.Ticks.Item tick(WorkStep step) {
        String title = number(step) + ". " + Sentence.capital(step.name());
        if (result.isDone(step)) {
            return Block.Ticks.Item.done(title, List.of());
        }
        if (step.stage() != Stage.DYEING) {
            cautions(step).forEach(words -> cautions.add("At " + number(step) + ". " + words));
        }
        List<String> notes = new ArrayList<>();
        if (days.least(step) > 1 && !days.of(step).equals(day)) {
            notes.add("From here not before " + days.of(step) + ".");
            day = days.of(step);
        }
        checks(step).ifPresent(notes::add);
        boolean isNamedByIt = step.text().startsWith(step.name());
        boolean isSewn = step.stage() == Stage.SEWING;
        if ((isSewn || step.text().length() <= LONGEST_TEXT) && !isNamedByIt) {
            notes.add(step.text());
        }
        step.pause().map(WaitWords::brief).ifPresent(notes::add);
        return Block.Ticks.Item.open(
                title, notes.isEmpty() ? List.of() : List.of(String.join(" ", notes)), List.of());
    }
}
