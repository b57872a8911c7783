/**
 * What is laid on the cloth to mark buttons and holes by, true to size: strips, the test card, and
 * the placket in a picture. Start at {@link secondbolt.closure.strip.StripDrawing}. This room uses
 * {@code closure.row}, {@code closure.placket}, {@code closure.fastening}, {@code garment}, {@code
 * draw}, {@code shape}, {@code worksheet} and {@code measure}. The look of a strip may be changed
 * freely; a change of its true size spoils holes on cloth. Where a button comes belongs in {@code
 * closure.row}, what is said of it in {@code closure}.
 */
package secondbolt.closure.strip;
