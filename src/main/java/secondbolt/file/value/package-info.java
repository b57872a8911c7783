/**
 * Values as they come out of a maker's file and stay in the records of every topic: an answer that
 * may be unknown, a value with its place, a pair across and along, a range of lengths, what is
 * wrong with something written. Start at {@link secondbolt.file.value.Answer} and {@link
 * secondbolt.file.value.Placed}. This room uses {@code file.source} and {@code measure}. A value
 * may be added freely; a change of what unknown means changes what every topic leaves open. Nothing
 * that reads a file or knows a topic's keys belongs here.
 */
package secondbolt.file.value;
