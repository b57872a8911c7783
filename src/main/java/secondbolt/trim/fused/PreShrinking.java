package secondbolt.trim.fused;

import java.util.List;

/**
 * What is published on shrinking fusible interfacing before it is used. The sources disagree; none
 * is taken before another, and the leaflet that came with it comes before all.
 *
 * @param advice what is advised
 * @param sources who advises it
 */
public record PreShrinking(String advice, String sources) {
    /** All sides. */
    public static final List<PreShrinking> SIDES =
            List.of(
                    new PreShrinking(
                            "Do not: good fusibles never need it.",
                            "sewing school newsletter, 2014"),
                    new PreShrinking(
                            "Soak it in hot tap water until that is cool; dry it flat or over a"
                                    + " rail.",
                            "sewing teacher's article on shrinking; an interfacing maker's answer"
                                    + " (copy)"),
                    new PreShrinking(
                            "Soak only woven fusibles; or steam any from 1 in (2.5 cm) above.",
                            "American Sewing Guild, fusing facts"),
                    new PreShrinking(
                            "Steam it in its place just before you press it.",
                            "an interfacing maker's answer (copy)"));
}
