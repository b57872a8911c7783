package secondbolt.trim.guide;

import java.util.ArrayList;
import java.util.List;
import secondbolt.lay.plan.Interfacing;
import secondbolt.prepare.heat.Heat;
import secondbolt.prepare.heat.IronHeat;
import secondbolt.trim.fused.InterfacingResult;

/** How interfacing is pressed on, in words. */
public final class FusingWords {
    private static final String SECONDS =
            "10 to 15 s a place (shop and class notes on fusing), unless its leaflet says otherwise";

    private FusingWords() {}

    /** How long each place is pressed, and with what between. */
    public static String pressed(InterfacingResult result) {
        Interfacing.Leaflet leaflet = result.interfacing().leaflet();
        return leaflet.seconds().map(s -> s + " s a place, as its leaflet says").orElse(SECONDS)
                + damp(result);
    }

    private static String damp(InterfacingResult result) {
        boolean isSteamBarred =
                result.heat().flatMap(Heat::iron).filter(IronHeat.LOW::equals).isPresent();
        boolean isAsked = result.interfacing().leaflet().dampCloth().orElse(false);
        if (isSteamBarred) {
            return isAsked
                    ? "; the leaflet's damp cloth is steam, which this cloth does not bear: try"
                            + " another interfacing"
                    : "; no damp cloth";
        }
        return result.interfacing()
                .leaflet()
                .dampCloth()
                .map(yes -> yes ? ", through a damp cloth" : ", dry")
                .orElse("; a damp cloth only if its leaflet asks for one");
    }

    /** What is done at the iron, in order. */
    public static List<String> steps(InterfacingResult result) {
        List<String> steps = new ArrayList<>();
        steps.add(
                "Fuse a hand-sized scrap of it to a scrap of this cloth first, let it lie flat until"
                        + " it is cold, then bend it, tear at a corner and wash it as the garment"
                        + " will be. Decide on it only from this (Interfacings, EM014, Washington"
                        + " State University Extension).");
        steps.add(
                "Begin at the lowest heat that its leaflet names and never above what the cloth"
                        + " bears: "
                        + result.heat().map(Heat::ironWords).orElse("not known yet, so do not fuse")
                        + ". If its leaflet asks for more, this cloth cannot take it.");
        steps.add(
                "Lay the glue, which glitters or feels rough, on the wrong side of the cloth; cover it"
                        + " with a cloth of its own, so that no glue comes on the iron.");
        steps.add(
                "Press "
                        + pressed(result)
                        + ". Lift the iron and set it down overlapping the last place; never slide"
                        + " it.");
        steps.add(
                "Leave each piece flat where it lies until it is cold: warm glue is soft, and what"
                        + " is moved then comes loose (sewing school newsletter, 2014; shop and class"
                        + " notes on fusing).");
        return steps;
    }
}
