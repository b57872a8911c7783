/**
 * What the finished garment measures, taken from its drawn pieces: how long it is from the
 * shoulder, the waist or along the leg, and how far round at its edges, for the body or for each
 * limb. Start at {@link secondbolt.fit.made.MadeMeasures}. This room uses {@code fit.result},
 * {@code fit.seam}, {@code fit.alter}, {@code fit.cut}, {@code fit.size}, {@code wearer}, {@code
 * worksheet}, {@code pattern}, {@code pattern.piece}, {@code garment}, {@code file.value}, {@code
 * shape}, {@code shape.cut} and {@code measure}. Which lengths are told may be changed freely; a
 * change of what counts as round changes which typed measures are told to differ. What the body
 * measures belongs in {@code fit.size}, words and pages in {@code fit}.
 */
package secondbolt.fit.made;
