package secondbolt.hem;

import java.util.List;
import java.util.Optional;
import secondbolt.hem.guide.HemWords;
import secondbolt.hem.guide.PressingCard;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Once;

/** One hem for its page and its sheets; what both show is made once. */
final class ShownHem {
    private final HemResult result;
    private final List<Finding> findings;
    private final Once<List<PressingCard>> cards;
    private final Once<List<String>> steps;
    private final Once<List<HemEdgeRow>> rows;

    ShownHem(HemResult result, List<Finding> findings, Tape tape) {
        this.result = result;
        this.findings = List.copyOf(findings);
        this.cards = new Once<>(() -> PressingCard.of(result));
        this.steps = new Once<>(() -> HemWords.pressing(result, cards.get(), tape));
        this.rows =
                new Once<>(() -> result.edges().stream().map(e -> HemEdgeRow.of(e, tape)).toList());
    }

    HemResult result() {
        return result;
    }

    String name() {
        return result.name();
    }

    List<Finding> findings() {
        return findings;
    }

    /** The cards it is pressed over; none if no edge of it has a shape that is known. */
    List<PressingCard> cards() {
        return cards.get();
    }

    /** How it is pressed, in order; nothing of a facing whose depth is not told. */
    Optional<List<String>> steps() {
        return result.hem().depth().map(depth -> steps.get());
    }

    List<HemEdgeRow> rows() {
        return rows.get();
    }
}
