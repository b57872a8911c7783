package secondbolt.cutting;

import secondbolt.measure.Length;
import secondbolt.shape.Allowance;

/**
 * What lies between sewing line and cutting line along one edge of a piece.
 *
 * @param edge the edge's name
 * @param width how wide
 * @param kind what becomes of it
 */
public record EdgeAllowance(String edge, Length width, Allowance.Kind kind) {
    Allowance allowance() {
        return new Allowance(width.millimetres(), kind);
    }
}
