/**
 * Spacing: where fasteners come along a placket, as evenly as ends, places that must be met and
 * places that must be kept clear allow. Start at {@link secondbolt.closure.spacing.SpacingSolver}.
 * This room uses nothing but Java: it counts in steps of a grid that {@code closure} chooses. How
 * it is solved may be changed freely as long as what it finds stays the best there is; what counts
 * as best decides where holes are cut. Buttons, cloth and words do not belong here.
 */
package secondbolt.closure.spacing;
