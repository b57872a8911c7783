/**
 * What stiffens, binds and gathers: interfacing, binding, elastic. Start at {@link
 * secondbolt.trim.TrimTopic}.
 */
package secondbolt.trim;
