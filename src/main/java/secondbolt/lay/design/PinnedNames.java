package secondbolt.lay.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.garment.Role;
import secondbolt.lay.plan.Placing;
import secondbolt.pattern.piece.Piece;

/**
 * Whether what a pinned place names is there.
 *
 * @param cloths all there are
 * @param pieces all of the pattern, by name
 */
public record PinnedNames(List<ClothResult> cloths, Map<String, Piece> pieces) {
    /** Copies both. */
    public PinnedNames {
        cloths = List.copyOf(cloths);
        pieces = Map.copyOf(pieces);
    }

    /**
     * Why it names nothing, in words; nothing if it names a piece and a cloth that this is cut of.
     *
     * @param pin with its name parted into piece and copy
     */
    public Optional<String> whyNothing(Placing pin) {
        Piece piece = pieces.get(pin.piece().value());
        if (piece == null) {
            return Optional.of("the pattern has no such piece");
        }
        Optional<Role> role = role(pin);
        if (role.isEmpty()) {
            return Optional.of("there is no cloth called " + pin.cloth().value());
        }
        return piece.cuts().containsKey(role.get())
                ? Optional.empty()
                : Optional.of("it is not cut of " + role.get());
    }

    /** What the cloth is for; nothing if it is not there. */
    public Optional<Role> role(Placing pin) {
        return cloths.stream()
                .filter(cloth -> cloth.name().equals(pin.cloth().value()))
                .map(cloth -> cloth.cloth().textile().roleOrMain())
                .findFirst();
    }
}
