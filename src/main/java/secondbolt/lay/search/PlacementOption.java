package secondbolt.lay.search;

import secondbolt.lay.nofit.OrientedShape;
import secondbolt.lay.placement.PlacementRule;

/**
 * One of the ways an item can be placed that the search chooses among.
 *
 * @param shapeNumber the number of the shape in its problem, from 0
 * @param shape the item's shape in the orientation of the rule
 * @param rule the orientation and the positions allowed in it
 */
record PlacementOption(int shapeNumber, OrientedShape shape, PlacementRule rule) {
    double widthMm() {
        return shape.widthMm();
    }

    double heightMm() {
        return shape.heightMm();
    }
}
