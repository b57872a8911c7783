/**
 * In what state a cloth came: what came with it, such as moths or old seams, what of that it is rid
 * of, how it was finished, and what its care label says. Start at {@link
 * secondbolt.textile.state.State}. This room uses {@code file} and the rooms in it. A thing that
 * cloth may come with may be added freely, if {@code prepare} says what to do about it, which the
 * compiler asks for; a change of a word changes project files. What is done about it, and what heat
 * a fibre bears, belong in {@code prepare}.
 */
package secondbolt.textile.state;
