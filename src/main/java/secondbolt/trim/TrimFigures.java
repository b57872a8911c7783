package secondbolt.trim;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.figure.Figures;
import secondbolt.garment.Role;
import secondbolt.lay.plan.Interfacing;
import secondbolt.measure.Length;
import secondbolt.prepare.heat.Heat;
import secondbolt.shape.Point;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.fused.StiffenedPiece;
import secondbolt.trim.gathered.Casing;
import secondbolt.trim.gathered.ElasticResult;
import secondbolt.trim.plan.Elastic;
import secondbolt.trim.strip.StripCut;

/** Interfacing, binding and elastic for other programs. */
final class TrimFigures {
    private TrimFigures() {}

    static Figures of(TrimResult result) {
        Figures figures = new Figures();
        result.interfacing().ifPresent(told -> figures.inside("interfacing", of(told)));
        return figures.list("bindings", result.bindings().stream().map(TrimFigures::of).toList())
                .list("elastics", result.elastics().stream().map(TrimFigures::of).toList());
    }

    private static Figures of(InterfacingResult result) {
        Figures figures =
                new Figures()
                        .text("kind", result.interfacing().kind().map(Interfacing.Kind::word))
                        .claim("stiff", result.interfacing().isStiff())
                        .weight("weight", result.interfacing().weight())
                        .text("heat", result.isFused() ? heat(result) : Optional.empty());
        result.interfacing()
                .leaflet()
                .seconds()
                .ifPresent(seconds -> figures.count("leaflet_seconds", seconds));
        return figures.list("pieces", result.pieces().stream().map(TrimFigures::of).toList());
    }

    private static Optional<String> heat(InterfacingResult result) {
        return result.heat().map(Heat::ironWords);
    }

    private static Figures of(StiffenedPiece piece) {
        return new Figures()
                .text("piece", piece.name())
                .count("copies", piece.piece().copies(Role.INTERFACING))
                .acrossAlong(
                        "size",
                        Optional.of(new Point(piece.box().widthMm(), piece.box().heightMm())))
                .lengths("cut_back", piece.cutBack());
    }

    private static Figures of(BindingResult result) {
        Figures figures =
                new Figures()
                        .text("name", result.name())
                        .text("kind", result.binding().kind().word())
                        .text("cut", result.binding().cut().word())
                        .length("strip_width", result.width())
                        .length("sewn", result.sewn())
                        .length("for_curves", result.forCurves())
                        .length("for_ends", result.forEnds())
                        .length("strip_needed", result.need());
        return figures.inside("strips", result.cut().map(TrimFigures::of));
    }

    private static Figures of(StripCut cut) {
        return new Figures()
                .lengths("lengths", cut.strips())
                .count("whole", cut.whole())
                .count("joins", cut.joins())
                .length("per_join", cut.perJoin())
                .length("joined", cut.joined())
                .length("whole_lack", cut.wholeLack())
                .length("lack", cut.lack());
    }

    private static Figures of(ElasticResult result) {
        Figures figures =
                new Figures()
                        .text("name", result.name())
                        .length("width", result.elastic().width())
                        .length("loop", result.loop())
                        .length("overlap", result.overlap())
                        .length("cut", result.cut())
                        .change("must_stretch", result.mustReach(result.loop()))
                        .change("stretches", result.elastic().stretched())
                        .length("cloth", result.cloth())
                        .list("rules", result.sides().stream().map(TrimFigures::of).toList());
        return figures.lengths("casing", casing(result.casing()));
    }

    private static Figures of(ElasticResult.Side side) {
        return new Figures()
                .text("source", side.rule().source())
                .text("for", side.rule().words())
                .lengths("loop", List.of(side.shortest(), side.longest()));
    }

    private static Map<String, Length> casing(Casing casing) {
        Map<String, Length> lengths = new LinkedHashMap<>();
        if (casing.kind() == Elastic.Casing.STRIP) {
            lengths.put("strip width", casing.stripWidth());
            lengths.put("longer by", Casing.STRIP_LONGER);
        } else {
            lengths.put("narrow", casing.narrow());
            lengths.put("wide", casing.wide());
            lengths.put("narrow, beyond the fold", casing.narrowFoldDown());
            lengths.put("wide, beyond the fold", casing.wideFoldDown());
        }
        return lengths;
    }
}
