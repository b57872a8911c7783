package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.figure.Figures;
import secondbolt.file.value.AcrossAlong;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.prepare.heat.Temperature;
import secondbolt.prepare.wash.Change;
import secondbolt.prepare.wash.Washes;

/** The figures of preparing the cloths, for other programs. */
final class PrepareFigures {
    private PrepareFigures() {}

    static Figures of(Preparation all) {
        Figures figures = new Figures();
        all.cloths().forEach(cloth -> figures.inside(cloth.name(), of(cloth)));
        return figures;
    }

    private static Figures of(PreparedCloth cloth) {
        return new Figures()
                .inside(
                        "iron",
                        cloth.heat()
                                .iron()
                                .map(
                                        heat ->
                                                heat(heat.atMost())
                                                        .count("dots", heat.dots())
                                                        .text("by", cloth.heat().ironBy())))
                .inside(
                        "wash",
                        cloth.heat()
                                .wash()
                                .map(heat -> heat(heat).text("by", cloth.heat().washBy())))
                .list("washes", cloth.washes().map(PrepareFigures::washes).orElse(List.of()))
                .claim("wash_due", cloth.isWashDue())
                .claim("wash_due_again", cloth.isWashDueAgain())
                .claim("survey_due", cloth.isSurveyDue());
    }

    private static Figures heat(Temperature heat) {
        return new Figures().count("at_most_celsius", heat.celsius());
    }

    private static List<Figures> washes(Washes washes) {
        List<Figures> all = new ArrayList<>();
        for (AcrossAlong<Optional<Change>> wash : washes.changes()) {
            all.add(
                    new Figures()
                            .change("across", wash.across().map(Change::left))
                            .change("along", wash.along().map(Change::left)));
        }
        return all;
    }
}
