/**
 * Closures shown: what is found of them, cautions on fasteners of children, their page, sheets and
 * figures. Start at {@link secondbolt.closure.ClosureTopic}; {@link
 * secondbolt.closure.ClosureFindings} says what is told. This room uses {@code closure.giving},
 * {@code closure.row}, {@code closure.strip}, {@code closure.placket}, {@code closure.fastening},
 * {@code hem.plan}, {@code fit}, {@code fit.result}, {@code pattern}, {@code wearer} and the rooms
 * below the topics. Words may be changed freely; a finding's code may not, for programs know it.
 * Where a button comes belongs in {@code closure.row}; nothing about the pieces a closure lies on,
 * nor how hems are made, belongs here.
 */
package secondbolt.closure;
