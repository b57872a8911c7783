package secondbolt.sewing.thread;

import java.util.ArrayList;
import java.util.List;
import secondbolt.garment.Role;
import secondbolt.sewing.plan.Finish;
import secondbolt.sewing.plan.OwnLine;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.sewing.plan.Stitch;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.sewing.seam.SewnLine;
import secondbolt.sewing.seam.SewnLines;

/**
 * The thread of every line there is to sew.
 *
 * @param with the stitches that are taken
 */
public record ThreadUses(SewnWith with) {
    /** In the order of sewing: stay-stitching, darts, joins with their edges, hems, own lines. */
    public List<ThreadUse> of(SewnLines lines) {
        List<ThreadUse> uses = new ArrayList<>();
        lines.stays()
                .forEach(
                        stay -> uses.add(use(stay, stay.what() + ", stay-stitched", with.plain())));
        lines.darts().forEach(dart -> uses.add(use(dart, dart.what(), with.usualOrTold())));
        lines.joins().forEach(join -> join(uses, join));
        lines.layers()
                .forEach(layer -> uses.add(use(layer, layer.what() + ", sewn down", with.plain())));
        lines.hems().forEach(hem -> hem(uses, hem));
        own(uses, lines.own());
        return List.copyOf(uses);
    }

    private void join(List<ThreadUse> uses, JoinLine join) {
        if (join.line().times() == 0) {
            return;
        }
        uses.add(use(join.line(), join.words(), with.stitch(join.choice())));
        Finish finish = with.finish(join.choice());
        with.rows(finish)
                .ifPresent(
                        rows ->
                                uses.add(
                                        rows(
                                                join.line(),
                                                join.words() + ": " + finish.word(),
                                                rows)));
    }

    private void hem(List<ThreadUse> uses, SewnLines.HemLine hem) {
        SewnLine line = hem.line();
        Stitch stitch = hem.isByHandOrBlind() ? Stitch.CATCH : with.usualOrTold();
        uses.add(use(line, line.what(), stitch));
        if (hem.hasRawEdge()) {
            Finish finish = with.finish(plan().seams());
            with.rowsOfOneEdge(finish)
                    .ifPresent(
                            rows ->
                                    uses.add(
                                            rows(
                                                    line,
                                                    line.what() + ": raw edge, " + finish.word(),
                                                    rows)));
        }
    }

    private void own(List<ThreadUse> uses, List<SewnLine> lines) {
        for (int i = 0; i < lines.size(); i++) {
            OwnLine own = plan().also().get(i);
            SewnLine line = lines.get(i);
            if (line.times() > 0) {
                Stitch stitch = own.stitch().orElseGet(with::usualOrTold);
                uses.add(
                        new ThreadUse(
                                line.what(),
                                own.colour().orElseGet(() -> colour(Role.MAIN)),
                                stitch,
                                line.all(),
                                ratio(stitch)));
            }
        }
    }

    private ThreadUse use(SewnLine line, String what, Stitch stitch) {
        return new ThreadUse(what, colour(line.role()), stitch, line.all(), ratio(stitch));
    }

    private ThreadUse rows(SewnLine line, String what, SewnWith.Rows rows) {
        return new ThreadUse(
                what,
                colour(line.role()),
                rows.stitch(),
                line.all().map(length -> length.times(rows.rows())),
                ratio(rows.stitch()));
    }

    private ThreadRatio ratio(Stitch stitch) {
        return new ThreadRatios(plan().means()).of(stitch);
    }

    /** The colour of a cloth's seams. */
    private String colour(Role role) {
        String main = plan().thread().colour().orElse("");
        return role == Role.LINING ? plan().thread().liningColour().orElse(main) : main;
    }

    private SewingPlan plan() {
        return with.plan();
    }
}
