package secondbolt.cloth.yields;

import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;
import secondbolt.textile.Cloth;
import secondbolt.textile.extent.Extent;
import secondbolt.textile.extent.Patch;
import secondbolt.textile.extent.Sides;

/**
 * Where a place on the cloth as measured comes to lie on the finished cloth, and back.
 *
 * @param left the left side of what is kept, on the cloth as measured
 * @param top its top
 * @param share what share of a length is left, each way
 */
public record Placing(Length left, Length top, AcrossAlong<Share> share) {
    static Placing of(Cloth cloth, Extent extent, AcrossAlong<Share> share) {
        Sides<Length> trim = cloth.edging().trim();
        Sides<Length> bounds = extent.bounds();
        return new Placing(bounds.left().plus(trim.left()), bounds.top().plus(trim.top()), share);
    }

    Region finished(Region measured) {
        return measured.moved(-left.millimetres(), -top.millimetres())
                .scaled(share.across().fraction(), share.along().fraction());
    }

    /** A flaw, drawn in with the cloth, with what is kept clear round it. */
    Region finished(Patch patch, Length clear) {
        return drawnIn(patch).grown(clear.millimetres());
    }

    /** A flaw, drawn in with the cloth. */
    public Outline drawnIn(Patch patch) {
        return patch.outline().map(this::finished);
    }

    Point finished(Point p) {
        return new Point(
                (p.xMm() - left.millimetres()) * share.across().fraction(),
                (p.yMm() - top.millimetres()) * share.along().fraction());
    }

    /** A region of the finished cloth as it lies on the cloth that was measured. */
    public Region measured(Region finished) {
        return finished.scaled(1 / share.across().fraction(), 1 / share.along().fraction())
                .moved(left.millimetres(), top.millimetres());
    }
}
