/**
 * Dyeing as a maker reads it: the page, the dye sheet, what she should know, what she needs, the
 * steps of the work. Start at {@link secondbolt.dye.DyeTopic}. Its rooms stand below it: {@code
 * dye.plan} (what is written), {@code dye.take} (which class takes), {@code dye.recipe} (what goes
 * in), {@code dye.bath} (how it is shared out), {@code dye.guide} (the acts). This room uses {@code
 * lay}, {@code cutting}, {@code dye.guide}, {@code dye.bath}, {@code lay.design}, {@code
 * lay.stock}, {@code lay.piece}, {@code lay.plan}, {@code cloth}, {@code cloth.yields}, {@code
 * textile}, {@code textile.state}, {@code dye.recipe}, {@code dye.take}, {@code dye.plan}, {@code
 * textile.fibre}, {@code cutting.line}, {@code pattern}, {@code pattern.piece}, {@code
 * textile.extent} and the rooms below the topics. Words may be changed freely; a change of a
 * finding's code changes what other programs read. Bleach and colour removers do not belong here,
 * nor does any amount that is not reckoned in a room below.
 */
package secondbolt.dye;
