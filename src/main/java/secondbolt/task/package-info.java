/**
 * What is to be done and what is needed for it, as topics contribute it: steps of work with what
 * they follow, what they wait for and where they can hurt; things needed, with how much of each.
 * Start at {@link secondbolt.task.WorkStep} and {@link secondbolt.task.Need}. This room uses {@code
 * measure}. A hazard may be added freely; a change of what a step says changes the order of work.
 * How steps are sorted, needs gathered and both shown belongs in the topics {@code work} and {@code
 * supply}.
 */
package secondbolt.task;
