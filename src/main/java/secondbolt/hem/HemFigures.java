package secondbolt.hem;

import java.util.List;
import secondbolt.figure.Figures;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.shape.cut.TurnedEdge;

/** A hem for other programs. Lengths of an edge are as drawn, once, unless they say all round. */
final class HemFigures {
    private HemFigures() {}

    static Figures of(List<HemResult> results) {
        Figures figures = new Figures();
        results.forEach(result -> figures.inside(result.name(), of(result)));
        return figures;
    }

    private static Figures of(HemResult result) {
        Figures figures =
                new Figures()
                        .text("turned", result.hem().turned().word())
                        .length("depth", result.hem().depth())
                        .length("turned_up", result.turnedUp())
                        .lengths("pressing_depths", result.pressing())
                        .list("edges", result.edges().stream().map(HemFigures::of).toList())
                        .toldLength(
                                "fold_all_round",
                                result.foldAllRound(),
                                result.name() + ": its fold, all round")
                        .length("surplus_all_round", result.surplusAllRound())
                        .count("hang_hours", result.hang().hours())
                        .count("hang_hours_most", result.hang().mostHours());
        result.hem().jump().ifPresent(jump -> figures.length("jump", jump));
        result.level()
                .ifPresent(
                        level ->
                                figures.length("from_floor", level.fold())
                                        .length("trim", level.trim())
                                        .count("level_marks", level.marks()));
        return figures;
    }

    /** The radius only on an arc. */
    private static Figures of(HemEdge edge) {
        Figures figures =
                new Figures()
                        .text("edge", edge.edge().toString())
                        .count("times_round", edge.times())
                        .length("fold", edge.fold())
                        .length("cut_edge", edge.cutEdge())
                        .length("lands_on", edge.landsOn())
                        .length("surplus", edge.surplus());
        edge.turned()
                .flatMap(TurnedEdge::radiusMm)
                .ifPresent(radius -> figures.length("radius", HemEdge.mm(radius)));
        return figures.length("surplus_all_round", edge.surplusAllRound())
                .length("start_takes_in", edge.turned().map(t -> edge.takesInAtStart()))
                .length("end_takes_in", edge.turned().map(t -> edge.takesInAtEnd()))
                .text("advice", edge.handling().words());
    }
}
