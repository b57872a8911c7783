/**
 * Where the fasteners of a closure come on its placket: how many, each button and each hole, what
 * stands in the way, other counts, what helps. Start at {@link
 * secondbolt.closure.row.ClosureCalculation}. This room uses {@code closure.placket}, {@code
 * closure.fastening}, {@code closure.spacing}, {@code fit.result}, {@code pattern}, {@code
 * worksheet}, {@code file.value} and {@code measure}. Remedies may be changed freely; a change of
 * where a hole begins beside its button moves every hole on cloth. Words, pages and drawings belong
 * in {@code closure} and {@code closure.strip}, the search for the best row in {@code
 * closure.spacing}.
 */
package secondbolt.closure.row;
