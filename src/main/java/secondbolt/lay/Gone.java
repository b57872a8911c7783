package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.Outline;

/** What is cut from a cloth already. */
final class Gone {
    private Gone() {}

    /** Its outlines on the cloth. */
    static List<Outline> on(LayPlan plan, StockLay stock, int cloth) {
        String name = stock.cloths().get(cloth).name();
        List<Outline> gone = new ArrayList<>();
        for (LayPlan.CutAlready cut : plan.soFar()) {
            if (cut.cloth().value().equals(name)) {
                stock.wanted().stream()
                        .filter(p -> SoFar.isCopy(p, cut))
                        .findFirst()
                        .ifPresent(piece -> gone.add(SoFar.lying(piece.outline(), cut)));
            }
        }
        return gone;
    }
}
