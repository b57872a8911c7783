/**
 * What hems ask of the whole work: which hang and how long, which are levelled, which are turned up
 * last and which before the cloth is gathered; the words of the trade. Start at {@link
 * secondbolt.hem.giving.HemGiving}; {@link secondbolt.hem.giving.HemTurn} says when a hem's turn
 * comes. This room uses {@code hem.turned}, {@code hem.plan}, {@code pattern}, {@code
 * pattern.piece} and the rooms below the topics. Words may be changed freely; the name of a step
 * may not, for other topics follow it and makers tick it. How long a hem hangs is worked out in
 * {@code hem.turned}; its page and cards belong in {@code hem} and {@code hem.guide}.
 */
package secondbolt.hem.giving;
