package secondbolt.sewing;

import java.util.Optional;
import secondbolt.figure.Figures;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.sewing.thread.ThreadTotal;
import secondbolt.sewing.thread.ThreadUse;

/** The sewing for other programs. */
final class SewingFigures {
    private SewingFigures() {}

    static Figures of(SewingResult result) {
        return new Figures()
                .text("stitch", result.with().usualOrTold().word())
                .text("finish", result.with().finish(result.plan().seams()).word())
                .list("joins", result.lines().joins().stream().map(j -> join(j, result)).toList())
                .list("lines", result.uses().stream().map(SewingFigures::use).toList())
                .inside("fasteners", fasteners(result))
                .list("thread", result.totals().stream().map(SewingFigures::total).toList())
                .length("edges_untold", result.lines().untoldLength());
    }

    private static Figures join(JoinLine join, SewingResult result) {
        return new Figures()
                .text("join", join.seam().written())
                .length("length", join.line().once())
                .count("times", join.line().times())
                .length("narrowest_allowance", join.narrowest())
                .text("finish", result.with().finish(join.choice()).word());
    }

    private static Figures use(ThreadUse use) {
        Figures figures =
                new Figures()
                        .text("what", use.what())
                        .text("stitch", use.stitch().word())
                        .text(
                                "iso_4915",
                                Optional.of(use.stitch().standard()).filter(s -> !s.isEmpty()))
                        .text("ratio", use.ratio().words())
                        .length("length", use.length())
                        .length("thread", use.thread());
        use.needlefuls().ifPresent(count -> figures.count("needlefuls", count));
        return figures;
    }

    private static Figures fasteners(SewingResult result) {
        return new Figures()
                .count("buttonholes", result.fasteners().holes())
                .count("buttonholes_by_hand", result.fasteners().holesByHand())
                .count("buttons", result.fasteners().buttons())
                .count("others", result.fasteners().others())
                .length("thread", result.fasteners().thread());
    }

    private static Figures total(ThreadTotal total) {
        return new Figures()
                .text("colour", Optional.of(total.colour()).filter(c -> !c.isEmpty()))
                .claim("on_cones", total.isOnCones())
                .length("net", total.net())
                .share("waste", total.waste().fraction())
                .length("with_waste", total.gross())
                .length("each", total.each())
                .count("count", total.count());
    }
}
