/**
 * What the pattern asks of the whole work: altering the paper, measuring it, its darts and pleats;
 * the words of the trade. Start at {@link secondbolt.fit.giving.FitGiving}. This room uses {@code
 * fit.result}, {@code fit.size}, {@code wearer}, {@code pattern.piece} and the rooms below the
 * topics. Words may be changed freely; the name of a step may not, for other topics follow it and
 * makers tick it. No figure of a body is told here, since steps are printed on sheets that others
 * see. What an alteration does belongs in {@code fit.alter}, how it is shown in {@code fit}.
 */
package secondbolt.fit.giving;
