package secondbolt.trim.bound;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.garment.Role;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.trim.bound.BindingResult.FromRemnant;
import secondbolt.trim.plan.Binding;
import secondbolt.trim.strip.BiasCloth;
import secondbolt.trim.strip.StraightCloth;
import secondbolt.trim.strip.StripCut;
import secondbolt.trim.strip.StripRule;
import secondbolt.trim.strip.StripWish;

/**
 * What the lay leaves of each cloth in one piece, less and less of it as bindings are cut. Straight
 * strips are cut before bias ones; it lives as long as one working out.
 */
public final class ClothLeft {
    private final Map<String, Box> boxes;
    private final Optional<String> usual;
    private final boolean isSettled;
    private final Map<String, BiasCloth> onTheBias = new HashMap<>();

    private ClothLeft(Map<String, Box> boxes, Optional<String> usual, boolean isSettled) {
        this.boxes = new LinkedHashMap<>(boxes);
        this.usual = usual;
        this.isSettled = isSettled;
    }

    /** Nothing. */
    public static ClothLeft nothing() {
        return new ClothLeft(Map.of(), Optional.empty(), true);
    }

    /** What the lay of a design leaves. */
    public static ClothLeft of(DesignLay lay) {
        Map<String, Box> boxes = lay.remnants().byCloth();
        Optional<String> largest =
                lay.stocks().stream()
                        .filter(stock -> stock.role() == Role.MAIN)
                        .map(StockLay::spreads)
                        .flatMap(spreads -> spreads.stream())
                        .map(spread -> spread.name())
                        .filter(boxes::containsKey)
                        .reduce((a, b) -> boxes.get(b).areaMm2() > boxes.get(a).areaMm2() ? b : a);
        return new ClothLeft(boxes, largest, lay.fits());
    }

    /** A binding with its strips cut from what is left, if it is to be cut from that. */
    BindingResult cut(BindingResult result, Tape tape) {
        Binding binding = result.binding();
        Optional<String> cloth = binding.cloth().map(Placed::value).or(() -> usual);
        Optional<Box> box = cloth.flatMap(name -> Optional.ofNullable(boxes.get(name)));
        if (binding.from() == Binding.From.BOUGHT || box.isEmpty()) {
            return result;
        }
        String name = cloth.orElseThrow();
        Optional<StripCut> strips = result.width().map(width -> strips(name, result, width, tape));
        FromRemnant remnant = new FromRemnant(name, box.get(), isSettled, strips);
        return new BindingResult(
                result.name(),
                binding,
                result.edges(),
                result.width(),
                result.sewn(),
                result.forCurves(),
                result.forEnds(),
                Optional.of(remnant));
    }

    private StripCut strips(String cloth, BindingResult result, Length width, Tape tape) {
        StripWish wish = new StripWish(width, result.need(), StripRule.SHORTEST.on(tape));
        if (result.binding().cut() == Binding.Cut.STRAIGHT) {
            StraightCloth.Taken taken = new StraightCloth(boxes.get(cloth)).take(wish);
            boxes.put(cloth, taken.rest());
            return taken.cut();
        }
        BiasCloth.Taken taken =
                onTheBias
                        .computeIfAbsent(cloth, name -> BiasCloth.of(boxes.get(name)))
                        .take(wish, StripRule.JOIN.on(tape));
        onTheBias.put(cloth, taken.rest());
        return taken.cut();
    }
}
