/**
 * What closures ask of the whole work: the steps by which holes are worked, opened and fasteners
 * sewn on, the fasteners needed, the words of the trade. Start at {@link
 * secondbolt.closure.giving.ClosureGiving}. This room uses {@code closure.row}, {@code
 * closure.placket}, {@code closure.fastening}, {@code task}, {@code worksheet} and {@code measure}.
 * Words may be changed freely; the name of a step may not, for other topics follow it and makers
 * tick it. What is shown of a closure itself belongs in {@code closure}, and how the steps of all
 * topics are sorted in the topic {@code work}.
 */
package secondbolt.closure.giving;
