/**
 * Seams, thread and needle: the page, its findings, the card for the machine, what is to be done
 * and bought. Start at {@link secondbolt.sewing.SewingTopic}. This room uses {@code sewing.plan},
 * {@code sewing.seam}, {@code sewing.thread}, {@code sewing.advice}, the topics {@code cloth},
 * {@code fit}, {@code closure}, {@code hem} and {@code cutting} that come before it, and the
 * foundation. Words may be changed freely; a finding's code never changes. No ratio, no width and
 * no count is worked out here.
 */
package secondbolt.sewing;
