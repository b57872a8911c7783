/**
 * What is still to be done to each cloth before it is cut: what of its state, its washes and its
 * label calls for it. Start at {@link secondbolt.prepare.due.PreparedCloth}. This room uses {@code
 * prepare.wash}, {@code prepare.heat}, {@code cloth.yields}, {@code textile}, {@code
 * textile.state}, {@code textile.fibre} and the rooms below the topics. What calls for a wash may
 * be changed freely; steps, findings and the sheet of the wash day follow. In which order it is
 * done is in {@code prepare.step}, how it is told in {@code prepare}.
 */
package secondbolt.prepare.due;
