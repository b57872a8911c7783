package secondbolt.fit;

import java.util.List;
import java.util.Optional;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.seam.EdgeStretch;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.plan.HemAllowances;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/**
 * A project as written in a test, read and altered.
 *
 * @param result what it came to; nothing if there are mistakes
 * @param findings what is found in it
 * @param mistakes what was wrong
 */
public record WrittenPattern(
        Optional<FitResult> result, List<Finding> findings, List<String> mistakes) {
    static WrittenPattern of(String text) {
        Mistakes mistakes = new Mistakes();
        Optional<WrittenProject> project =
                WrittenProject.read(SourceFile.of("test.yaml", text), mistakes);
        Optional<FitResult> result =
                project.map(
                        p ->
                                FitCalculation.work(
                                        HemAllowances.included(
                                                p.pattern().orElseThrow(),
                                                p.hems(),
                                                p.heading().units()),
                                        p.alterations(),
                                        EdgeStretch.NONE,
                                        FitTopic.cut(p.lay().soFar(), p.pattern().orElseThrow()),
                                        p.heading().units()));
        return new WrittenPattern(
                result,
                project.map(p -> findings(p, result.orElseThrow())).orElse(List.of()),
                mistakes.inOrder().stream()
                        .map(m -> m.place().line() + " " + m.found() + "; " + m.right())
                        .toList());
    }

    private static List<Finding> findings(WrittenProject project, FitResult result) {
        return FitFindings.of(
                result,
                MadeMeasures.of(result),
                OpeningCheck.of(result, project.wearer()),
                project.heading().units());
    }

    /** In centimetres, with these lines below its title. */
    public static WrittenPattern cm(String lines) {
        return of("title: Test\nunits: cm\n" + lines);
    }

    /** In inches, likewise. */
    public static WrittenPattern inches(String lines) {
        return of("title: Test\nunits: in\n" + lines);
    }

    public FitResult sound() {
        return result.orElseThrow(() -> new AssertionError(mistakes.toString()));
    }

    /** An edge before the alterations, in millimetres. */
    public double beforeMm(String piece, String edge) {
        return sound().before().edge(new PieceEdge(piece, edge)).orElseThrow().millimetres();
    }

    /** An edge after them. */
    public double afterMm(String piece, String edge) {
        return sound().after().edge(new PieceEdge(piece, edge)).orElseThrow().millimetres();
    }

    /** The findings of a level, text and remedy together. */
    public List<String> told(Finding.Level level) {
        return findings.stream()
                .filter(f -> f.level() == level)
                .map(f -> f.text() + " " + f.remedy())
                .toList();
    }

    /** The findings of a kind, text and remedy together. */
    public List<String> coded(String code) {
        return findings.stream()
                .filter(f -> f.code().equals(code))
                .map(f -> f.text() + " " + f.remedy())
                .toList();
    }

    /** What the only finding of a kind is about. */
    public Subject about(String code) {
        List<Subject> about =
                findings.stream().filter(f -> f.code().equals(code)).map(Finding::about).toList();
        if (about.size() != 1) {
            throw new AssertionError(code + " in " + findings);
        }
        return about.get(0);
    }
}
