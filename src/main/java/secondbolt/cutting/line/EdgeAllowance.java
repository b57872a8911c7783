package secondbolt.cutting.line;

import java.util.List;
import java.util.Optional;
import secondbolt.block.Table.Cell;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.cut.Allowance;

/**
 * What lies between sewing line and cutting line along one edge of a piece.
 *
 * @param edge the edge's name
 * @param width how wide
 * @param kind what becomes of it
 * @param taken what of it is only taken until the maker knows, in words for her; mostly nothing
 */
public record EdgeAllowance(
        String edge, Length width, Allowance.Kind kind, Optional<String> taken) {
    /** One that is known. */
    public EdgeAllowance(String edge, Length width, Allowance.Kind kind) {
        this(edge, width, kind, Optional.empty());
    }

    Allowance allowance() {
        return new Allowance(width.millimetres(), kind);
    }

    /**
     * Its row in a table: how wide it is and what becomes of it.
     *
     * @param name what the edge is called there
     */
    public List<Cell> row(String name, Tape tape) {
        return List.of(Cell.of(name), Cell.of(tape, width), Cell.of(words()));
    }

    private String words() {
        return switch (kind) {
            case PLAIN -> width.equals(Length.ZERO) ? "none, cut on the line" : "seam";
            case FOLD -> "on the fold";
            case HEM -> "hem, turned up";
        };
    }
}
