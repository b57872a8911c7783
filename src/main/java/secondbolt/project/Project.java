package secondbolt.project;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.Closure;
import secondbolt.closure.Machine;
import secondbolt.cloth.Cloth;
import secondbolt.fit.Alteration;
import secondbolt.fit.Pattern;
import secondbolt.fit.size.Wearer;
import secondbolt.hem.Hem;
import secondbolt.lay.plan.LayPlan;

/**
 * A project, as the maker wrote it: nothing in it is computed.
 *
 * @param heading what it says of itself
 * @param wearer if told
 * @param cloths by her names for them, in her order
 * @param pattern its pieces and seams
 * @param alterations in her order
 * @param machine hers; nothing in it if not told
 * @param closures by her names for them, in her order
 * @param hems by her names for them, in her order
 * @param lay how she wants the pieces laid
 */
public record Project(
        Heading heading,
        Optional<Wearer> wearer,
        Optional<Map<String, Cloth>> cloths,
        Optional<Pattern> pattern,
        List<Alteration> alterations,
        Machine machine,
        Optional<Map<String, Closure>> closures,
        Map<String, Hem> hems,
        LayPlan lay) {
    /** Copies the alterations and the hems. */
    public Project {
        alterations = List.copyOf(alterations);
        hems = Collections.unmodifiableMap(new LinkedHashMap<>(hems));
    }
}
