package secondbolt.effect;

import java.util.List;
import secondbolt.fit.Alteration;
import secondbolt.measure.Area;
import secondbolt.measure.Length;

/**
 * What one alteration changes beyond those before it.
 *
 * @param alteration as written
 * @param lengths that changed by a hundredth of a millimetre or more
 * @param cloth what the cut pieces cover of each role of cloth, where that changed
 */
record AlterationEffects(
        Alteration alteration, List<Change<Length>> lengths, List<Change<Area>> cloth) {
    AlterationEffects {
        lengths = List.copyOf(lengths);
        cloth = List.copyOf(cloth);
    }

    /**
     * A change.
     *
     * @param what changed
     * @param before without the alteration
     * @param after with it
     */
    record Change<T>(String what, T before, T after) {}
}
