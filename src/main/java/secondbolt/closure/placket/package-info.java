/**
 * The placket a closure lies on, as the maker writes it and as it lies on the pattern: its length
 * there or by tape, the seams and hems that are bulk on it, what laps over there. Start at {@link
 * secondbolt.closure.placket.ClosureSection} for what is written and {@link
 * secondbolt.closure.placket.PlacketPlan} for how it lies. This room uses {@code
 * closure.fastening}, {@code hem.plan}, {@code fit.result}, {@code pattern}, {@code pattern.piece},
 * {@code garment}, {@code topic}, {@code file} and the rooms in it, {@code shape} and {@code
 * measure}. What is bulk may be added to freely; a change of where a placket begins moves every
 * hole on cloth. Where the fasteners come belongs in {@code closure.row}.
 */
package secondbolt.closure.placket;
