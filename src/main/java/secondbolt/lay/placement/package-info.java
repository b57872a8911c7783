/**
 * The words in which a packing problem and its answer are told: the items with their allowed
 * orientations and positions, the containers, the effort, and the placements a lay is made of; all
 * without the names of pieces and cloths. Start with {@link secondbolt.lay.placement.PackingItem}
 * and {@link secondbolt.lay.placement.Placement}. It may use {@code shape} only. Names and checks
 * may change freely; a change of how an orientation moves a point moves every piece on every plan,
 * and makes the lays that are kept from earlier runs wrong. What is worked out from items and
 * containers must not be put here: it belongs in {@code lay.nofit}, or in {@code lay.search}.
 */
package secondbolt.lay.placement;
