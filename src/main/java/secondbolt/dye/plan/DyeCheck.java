package secondbolt.dye.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.Spelling;
import secondbolt.file.source.Place;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Share;

/** Finds colours for cloths that are not there, and what contradicts itself. */
public final class DyeCheck {
    private final Set<String> cloths;
    private final Set<String> dyed = new HashSet<>();
    private final List<Trouble> troubles = new ArrayList<>();

    private DyeCheck(Set<String> cloths) {
        this.cloths = cloths;
    }

    /**
     * All mistakes; none if the colours suit the cloths.
     *
     * @param cloths the names of all there are
     * @param place where the section stands
     */
    public static List<Trouble> of(List<DyePlan> plans, Set<String> cloths, Place place) {
        DyeCheck check = new DyeCheck(cloths);
        if (cloths.isEmpty() && plans.stream().anyMatch(plan -> !plan.cloth().isEmpty())) {
            return List.of(new Trouble(place, "a dye without a cloth", "`cloth` as well"));
        }
        for (DyePlan plan : plans) {
            plan.cloth().forEach(check::isThere);
            check.isOneShade(plan);
            check.isOneVessel(plan);
        }
        return List.copyOf(check.troubles);
    }

    private void isThere(Placed<String> name) {
        if (!cloths.contains(name.value())) {
            troubles.add(
                    new Trouble(
                                    name.place(),
                                    "`" + name.value() + "`, which names no cloth",
                                    "one of the cloths: " + Spelling.listed(cloths))
                            .ofName(name.value(), cloths));
        } else if (!dyed.add(name.value())) {
            troubles.add(
                    new Trouble(
                            name.place(),
                            "`" + name.value() + "`, which is dyed already above",
                            "each cloth in one colour; a second one over it is worked out once the"
                                    + " first is dry, with the `over` it has then"));
        }
    }

    private void isOneShade(DyePlan plan) {
        Optional<Share> leaflet = plan.leaflet().amounts().dye().flatMap(Rate::share);
        plan.dye()
                .shade()
                .filter(shade -> leaflet.filter(l -> !l.equals(shade.value())).isPresent())
                .ifPresent(
                        shade ->
                                troubles.add(
                                        new Trouble(
                                                shade.place(),
                                                "a shade of "
                                                        + shade.value().percent(2)
                                                        + " beside a leaflet that says "
                                                        + leaflet.get().percent(2),
                                                "one of both: `shade` for your own choice, or `dye`"
                                                        + " under `leaflet`")));
    }

    private void isOneVessel(DyePlan plan) {
        boolean isFront =
                plan.bath().machine().filter(DyePlan.Machine.FRONT_LOADER::equals).isPresent();
        plan.bath()
                .vessel()
                .filter(vessel -> isFront)
                .ifPresent(
                        vessel ->
                                troubles.add(
                                        new Trouble(
                                                vessel.place(),
                                                "a vessel beside a front loader, which takes its"
                                                        + " own water",
                                                "one of both: `vessel`, or `machine: front"
                                                        + " loader`")));
    }
}
