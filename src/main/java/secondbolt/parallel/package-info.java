/**
 * Work done side by side. Start at {@link secondbolt.parallel.Workers}. This room uses no other.
 * How many threads there are may be changed freely, for nothing that is worked out depends on it; a
 * thread that kept the program from ending would be a fault. What is worked on belongs elsewhere.
 */
package secondbolt.parallel;
