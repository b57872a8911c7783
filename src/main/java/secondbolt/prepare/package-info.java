/**
 * What is done to a cloth before it is cut or dyed: freezing, drying, unpicking, weighing, washing,
 * pressing, looking over, and what each tells of it; how sure its fibre and weight are, and how hot
 * it may get. Start at {@link secondbolt.prepare.PrepareTopic}; {@code prepare.due} says what is
 * still to be done. This topic uses {@code prepare.due}, {@code prepare.step}, {@code prepare.heat}
 * and {@code prepare.wash}, what {@code cloth} came to, {@code textile} and its rooms, {@code
 * lay.plan} for what is cut already, and the rooms below the topics. Wording may be changed freely;
 * a change of a finding's code changes what other programs read. What a cloth yields belongs in
 * {@code cloth}, bleach and dye in their own topics, the order of all steps in {@code work}.
 */
package secondbolt.prepare;
