/**
 * Effects: what each alteration changes further down. Start at {@link
 * secondbolt.effect.EffectTopic}: it has the figures of every topic before it worked out without
 * and with each alteration, and compares what a maker is told of. This room uses {@code topic},
 * {@code worksheet}, {@code figure}, {@code block} and {@code measure}. How changes are shown may
 * be changed freely; the order of alterations is the maker's and must stay. Nothing that knows
 * another topic belongs here: what is compared is said by the topics themselves, in their figures.
 */
package secondbolt.effect;
