/**
 * What the program was at when it failed, so that a maker is told the topic and the piece instead
 * of nothing. Start at {@link secondbolt.fault.Fault}. This room uses no other, and any may use it.
 * How the words are joined may be changed freely. A mistake of the maker's is none of these: it is
 * told at its place in the file.
 */
package secondbolt.fault;
