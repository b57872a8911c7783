package secondbolt.lay.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.supply.plan.Notion;

/**
 * Something the cloth could become.
 *
 * @param uses the names of its pieces
 * @param printedNeed what the envelope says is needed, by the width of the cloth
 * @param suits the weights of cloth it is made for, from and to, if told
 * @param notions what it needs beside cloth
 */
public record Design(
        List<Placed<String>> uses,
        Map<Length, Length> printedNeed,
        Optional<List<ClothWeight>> suits,
        List<Notion> notions) {
    /** Copies the lists and the map. */
    public Design {
        uses = List.copyOf(uses);
        notions = List.copyOf(notions);
        printedNeed = Collections.unmodifiableMap(new LinkedHashMap<>(printedNeed));
    }

    /** Whether it needs a piece. */
    public boolean needs(String piece) {
        return uses.stream().anyMatch(use -> use.value().equals(piece));
    }
}
