/**
 * What the maker tells of her sewing: the stitches she has, the stitch and the finish of her seams,
 * how her cloth frays, her thread, and lines that no join tells of. Start at {@link
 * secondbolt.sewing.plan.SewingSection} for the keys and {@link secondbolt.sewing.plan.SewingPlan}
 * for the record. This room uses {@code pattern}, {@code pattern.piece} and the rooms below the
 * topics. A stitch or a finish may be added freely: the compiler then asks what thread it takes and
 * what cloth it wants; a change of a word changes project files. How long seams are, and what any
 * stitch takes, do not belong here.
 */
package secondbolt.sewing.plan;
