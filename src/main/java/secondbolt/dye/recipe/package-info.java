/**
 * What goes into a dye bath, how hot it is and how long it lasts: the published figures side by
 * side, hers first. Start at {@link secondbolt.dye.recipe.Recipe}; each class has its own book,
 * such as {@code ReactiveRecipe}. This room uses {@code dye.take}, {@code dye.plan}, {@code
 * textile.fibre}, {@code file.value} and {@code measure}. A published figure may be added with its
 * source; none may be averaged with another. Caustic soda, sulphuric acid, metal salts, carriers
 * and vats never get a recipe here.
 */
package secondbolt.dye.recipe;
