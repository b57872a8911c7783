package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.trim.gathered.Casing;
import secondbolt.trim.gathered.ElasticResult;
import secondbolt.trim.gathered.ElasticResult.DrawnIn;
import secondbolt.trim.guide.Counted;
import secondbolt.trim.guide.StripWords;
import secondbolt.trim.plan.Elastic;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know before she cuts an elastic and its casing. */
final class ElasticFindings {
    private final ElasticResult result;
    private final Tape tape;

    ElasticFindings(ElasticResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
    }

    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        Stream.of(countedLess(), notShorter(), elasticTooTight(), clothTooNarrow())
                .flatMap(Optional::stream)
                .forEach(findings::add);
        if (result.casing().kind() == Elastic.Casing.FOLDED) {
            result.edges().forEach(edge -> noRoom(edge).ifPresent(findings::add));
        }
        return findings;
    }

    private Finding about(String code, Level level, String text, String remedy) {
        return new Finding(code, subject(result), level, text, remedy);
    }

    /** The elastic, with its edges if they are told. */
    static Subject subject(ElasticResult result) {
        return new Subject.Edges(
                "elastic " + result.name(),
                result.edges().stream().map(DrawnIn::edge).collect(Collectors.toSet()));
    }

    private Optional<Finding> countedLess() {
        return Counted.less(result.edges())
                .map(
                        found ->
                                about(
                                        "elastic-counted-less",
                                        Level.CAUTION,
                                        found,
                                        "If one elastic draws them all in, write `on: ["
                                                + Counted.line(result.edges())
                                                + "]` under `elastic`; if each has its own, as"
                                                + " two cuffs have, all is well."));
    }

    private Optional<Finding> notShorter() {
        boolean isNotShorter =
                result.loop()
                        .flatMap(loop -> result.body().map(body -> !loop.isShorterThan(body)))
                        .orElse(false);
        return isNotShorter
                ? Optional.of(
                        about(
                                "elastic-not-shorter",
                                Level.CAUTION,
                                "The elastic "
                                        + result.name()
                                        + " is as long at rest as the body it sits on, or longer:"
                                        + " only a very firm one holds then.",
                                "Pin it round the body, bend and sit, and take the length at which"
                                        + " it holds."))
                : Optional.empty();
    }

    private Optional<Finding> elasticTooTight() {
        if (result.isPassing().orElse(true)) {
            return Optional.empty();
        }
        Length girth = result.passes().orElseThrow();
        Length least =
                StripWords.up(girth.dividedBy(result.elastic().stretched().orElseThrow()), tape);
        return Optional.of(
                about(
                        "elastic-does-not-pass",
                        Level.WARNING,
                        "Pulled as far as it was tested, the elastic "
                                + result.name()
                                + " becomes "
                                + tape.print(StripWords.down(result.reaches().orElseThrow(), tape))
                                + " round, and must pass "
                                + tape.print(girth)
                                + ".",
                        longer(least)
                                + " Or take an elastic that stretches more, or make an opening"
                                + " beside it."));
    }

    private String longer(Length least) {
        if (result.elastic().fit().less().isEmpty()) {
            return "Round it must be at least `loop: " + tape.print(least) + "` under `elastic`.";
        }
        Length less = result.body().orElseThrow().minus(least);
        return less.isNegative()
                ? "Round it must be at least "
                        + tape.print(least)
                        + ", which is longer than the body."
                : "It may be shorter than the body by no more than `less: "
                        + tape.print(StripWords.down(less, tape))
                        + "` under `elastic`.";
    }

    private Optional<Finding> clothTooNarrow() {
        return result.passes()
                .flatMap(
                        girth ->
                                result.clothReach()
                                        .filter(cloth -> cloth.isShorterThan(girth))
                                        .map(cloth -> clothTooNarrow(cloth, girth)));
    }

    private Finding clothTooNarrow(Length cloth, Length girth) {
        return about(
                "elastic-cloth-does-not-pass",
                Level.WARNING,
                "However far the elastic "
                        + result.name()
                        + " stretches, the cloth it draws in is only "
                        + tape.print(cloth)
                        + " round, and must pass "
                        + tape.print(girth)
                        + ".",
                "Widen the pieces there by "
                        + tape.print(StripWords.up(girth.minus(cloth), tape))
                        + " in all, or make an opening beside it.");
    }

    private Optional<Finding> noRoom(DrawnIn edge) {
        Casing casing = result.casing();
        if (!edge.room().isShorterThan(casing.wideFoldDown())) {
            return Optional.empty();
        }
        Level level =
                edge.room().isShorterThan(casing.narrowFoldDown()) ? Level.WARNING : Level.CAUTION;
        String wide = tape.print(StripWords.up(casing.wideFoldDown(), tape));
        String remedy =
                edge.hem()
                        ? "Write a `depth` of its hem with which "
                                + wide
                                + " are turned up, or sew on a strip as `casing`."
                        : "Write `allowance: {"
                                + edge.edge().edge()
                                + ": "
                                + wide
                                + "}` with the piece, or sew on a strip as `casing`.";
        return Optional.of(
                new Finding(
                        "elastic-no-room-to-fold",
                        new Subject.Edge(edge.edge()),
                        level,
                        "The casing of the elastic "
                                + result.name()
                                + " takes "
                                + tape.print(StripWords.up(casing.narrowFoldDown(), tape))
                                + " beyond its fold with "
                                + tape.printSmall(Casing.NARROW_EASE.on(tape))
                                + " of ease, "
                                + wide
                                + " with "
                                + tape.printSmall(Casing.WIDE_EASE.on(tape))
                                + "; beyond "
                                + edge.edge().words()
                                + " there is "
                                + tape.print(edge.room())
                                + ".",
                        remedy));
    }
}
