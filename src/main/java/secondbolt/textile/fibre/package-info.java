/**
 * What cloth is made of: the fibres by their trade names, pure and in blends, and how a maker
 * writes them. Start at {@link secondbolt.textile.fibre.FibreKind}. This room uses {@code file} and
 * the rooms in it, and {@code measure}. A name that a fibre is also called by may be added freely;
 * a fibre added must be told what takes on it and how hot it may get, which the compiler asks for.
 * What dye takes, and what heat a fibre bears, belong in the topics.
 */
package secondbolt.textile.fibre;
