/**
 * Bleaching as the maker writes it: which cloth, with what, what its label and her tests say. Start
 * at {@link secondbolt.bleach.plan.BleachSection} for the keys and {@link
 * secondbolt.bleach.plan.Bleaching} for the record. This room uses {@code file} and the rooms in
 * it, and {@code measure}. A key may be added freely; a change of one changes project files. What a
 * fibre bears and how much of a product a bath takes belong in {@code bleach.recipe}.
 */
package secondbolt.bleach.plan;
