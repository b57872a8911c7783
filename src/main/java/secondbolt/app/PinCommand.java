package secondbolt.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import secondbolt.disk.AtomicFile;
import secondbolt.disk.BarredException.Bar;
import secondbolt.disk.Home;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Place;
import secondbolt.lay.pin.PlanText;
import secondbolt.lay.plan.PlanFile;
import secondbolt.measure.Plural;

/** Pins the plan of cutting. */
@Command(
        name = "pin",
        mixinStandardHelpOptions = true,
        description = {
            "Writes the plan of cutting into plan.yaml beside the project file. What is in it",
            "keeps its place as long as it fits there; tick what is cut, move what you like.",
            "Pinned again, what still fits stays as it is written, and the rest is brought up",
            "to date.",
            ""
        })
final class PinCommand implements Callable<Integer> {
    private final Workplace workplace;

    @Parameters(index = "0", paramLabel = "PROJECT", description = "a project's folder or file")
    private Path project;

    @Option(names = "--anew", description = "lays all that is not cut anew")
    private boolean anew;

    @Option(names = "--quiet", description = "tells mistakes and warnings only")
    private boolean quiet;

    @Spec private CommandSpec spec;

    PinCommand(Workplace workplace) {
        this.workplace = workplace;
    }

    @Override
    public Integer call() {
        Mistakes mistakes = new Mistakes();
        List<Path> files = workplace.projectFiles(project, mistakes);
        if (files.size() > 1) {
            throw new ParameterException(
                    spec.commandLine(),
                    "`" + Workplace.name(project) + "` holds several projects; name one");
        }
        files.forEach(file -> checkPlan(file, mistakes));
        Optional<PinnedProject> pinned =
                files.stream()
                        .filter(file -> mistakes.isEmpty())
                        .findFirst()
                        .flatMap(file -> PinnedProject.of(workplace, file, anew, quiet, mistakes));
        if (pinned.isEmpty()) {
            return workplace.refuse(mistakes);
        }
        Path plan = files.get(0).resolveSibling(PlanFile.NAME);
        write(plan, pinned.get().written());
        // What is told is true of the plan as it stands now.
        PinnedProject.of(workplace, files.get(0), false, true, mistakes)
                .map(now -> FindingLines.of(now.workings()))
                .ifPresent(lines -> lines.forEach(workplace.err()::println));
        return mistakes.isEmpty() ? Secondbolt.DONE : workplace.refuse(mistakes);
    }

    /** What is read may be a link to a file beside it; what is written may not. */
    private void checkPlan(Path file, Mistakes mistakes) {
        Path plan = file.resolveSibling(PlanFile.NAME);
        Home.barAt(workplace.folder().resolve(plan))
                .filter(bar -> bar == Bar.LINK)
                .ifPresent(
                        bar ->
                                mistakes.add(
                                        new Mistake(
                                                Place.beginningOf(Workplace.name(plan)),
                                                bar.words(),
                                                "the plan itself, which is written here",
                                                "")));
    }

    private void write(Path plan, PlanText.Written written) {
        Path target = workplace.folder().resolve(plan).toAbsolutePath();
        try {
            AtomicFile.write(target, written.text().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(Workplace.name(plan) + " cannot be written", e);
        }
        if (!quiet) {
            String names = written.anew().isEmpty() ? "" : ": " + String.join(", ", written.anew());
            workplace
                    .out()
                    .println(
                            Workplace.name(plan)
                                    + ": "
                                    + Plural.of(written.kept(), "place")
                                    + " kept, "
                                    + written.anew().size()
                                    + " new"
                                    + names);
        }
    }
}
