/**
 * Seams, thread and needle: the page, its findings, the card for the machine, what is to be done
 * and bought. Start at {@link secondbolt.sewing.SewingTopic}. This room uses {@code hem}, {@code
 * closure}, {@code cutting}, {@code fit}, {@code sewing.thread}, {@code sewing.advice}, {@code
 * sewing.seam}, {@code cloth}, {@code sewing.plan}, {@code cutting.line}, {@code fit.result},
 * {@code pattern} and the rooms below the topics. Words may be changed freely; a finding's code
 * never changes. No ratio, no width and no count is worked out here.
 */
package secondbolt.sewing;
