package secondbolt.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import secondbolt.app.run.Progress;
import secondbolt.file.source.Mistakes;
import secondbolt.project.Workings;

/** Reads and works out projects, and writes nothing. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Reads and works out projects and tells every mistake, with file, line and column.",
            "Nothing is written. Exit code 1 if there is a mistake, or a reason not to cut.",
            ""
        })
final class CheckCommand implements Callable<Integer> {
    private final Workplace workplace;

    @Parameters(
            arity = "1..*",
            paramLabel = "PROJECT",
            description = "a project's folder or file, or a folder of projects")
    private List<Path> projects;

    @Option(names = "--quiet", description = "tells mistakes and warnings only")
    private boolean quiet;

    CheckCommand(Workplace workplace) {
        this.workplace = workplace;
    }

    @Override
    public Integer call() {
        Mistakes mistakes = new Mistakes();
        Progress progress = new Progress(workplace.err(), quiet);
        List<Path> files = workplace.projectFiles(projects, mistakes);
        List<Workings> sound = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            progress.step("checking " + Workplace.name(files.get(i)), i + 1, files.size());
            workplace
                    .work(files.get(i), mistakes, workplace.lays(false, quiet))
                    .ifPresent(sound::add);
        }
        workplace.desk(mistakes);
        sound.forEach(this::tell);
        if (!mistakes.isEmpty()) {
            return workplace.refuse(mistakes);
        }
        return sound.stream().anyMatch(FindingLines::stops) ? Secondbolt.REFUSED : Secondbolt.DONE;
    }

    private void tell(Workings workings) {
        List<String> lines = FindingLines.of(workings);
        lines.forEach(workplace.err()::println);
        if (!quiet) {
            int rest = workings.findings().size() - lines.size();
            workplace
                    .out()
                    .println(
                            workings.folder()
                                    + ": no mistakes"
                                    + (rest == 0
                                            ? ""
                                            : "; its page has " + rest + " more to read"));
        }
    }
}
