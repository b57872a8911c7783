/**
 * The steps of preparing cloth, with what each must follow and why, what it waits for and where it
 * can hurt. Start at {@link secondbolt.prepare.step.PrepareSteps}. This room uses {@code
 * prepare.due}, {@code prepare.heat}, {@code cloth.yields}, {@code textile}, {@code textile.state},
 * {@code textile.fibre}, {@code worksheet}, {@code task} and {@code measure}. Wording may be
 * changed freely; the names of steps are known to other topics. Steps of bleaching and dyeing
 * belong in those topics.
 */
package secondbolt.prepare.step;
