/**
 * The drawing: one display list in millimetres that both the page and the paper show, so that they
 * cannot differ. Start at {@link secondbolt.draw.Drawing}. This room uses {@code shape} and {@code
 * measure}. A new pen may be added freely; a new kind of {@link secondbolt.draw.Mark} must be
 * handled by every renderer, and the compiler says so. Nothing that knows paper, tiles, PDF or SVG
 * belongs here.
 */
package secondbolt.draw;
