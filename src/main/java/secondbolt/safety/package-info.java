/**
 * Cautions for the child who wears it: cords and ties, in whichever way they are written, and
 * nightwear. Start at {@link secondbolt.safety.SafetyTopic}; {@link secondbolt.safety.CordRule}
 * says what is told of a cord. This room uses {@code closure.placket}, {@code closure.fastening},
 * {@code hem.plan}, {@code fit}, {@code fit.result}, {@code pattern}, {@code pattern.piece}, {@code
 * wearer} and the rooms below the topics. Words by which a cord is known may be added freely; a
 * change of an age or of a length changes what a child is strangled by, and needs its source.
 * Fasteners that a child can swallow are told in {@code closure}; nothing that judges a cloth
 * belongs here.
 */
package secondbolt.safety;
