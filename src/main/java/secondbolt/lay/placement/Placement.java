package secondbolt.lay.placement;

import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Where an item was placed: its container, its orientation and its position.
 *
 * @param item the number of the item, from 0
 * @param container the number of the container, from 0
 * @param orientation how it is turned, and which side is up
 * @param acrossMm how far across from the container's own origin the item's origin then lies
 * @param alongMm how far along from it
 */
public record Placement(
        int item, int container, Orientation orientation, double acrossMm, double alongMm) {
    /** The same of an item, and on a container, that have other numbers elsewhere. */
    public Placement of(int newItem, int newContainer) {
        return new Placement(newItem, newContainer, orientation, acrossMm, alongMm);
    }

    /** An outline of the item on its container. */
    public Outline applyTo(Outline outline) {
        return outline.map(this::applyTo);
    }

    /** A point of the item on its container. */
    public Point applyTo(Point point) {
        return orientation.applyTo(point).moved(acrossMm, alongMm);
    }
}
