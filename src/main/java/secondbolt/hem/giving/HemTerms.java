package secondbolt.hem.giving;

import java.util.ArrayList;
import java.util.List;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.worksheet.Term;

/** The words of the trade that hems use, in our own. */
final class HemTerms {
    private HemTerms() {}

    static List<Term> of(List<HemResult> hems) {
        List<Term> terms = new ArrayList<>();
        if (hems.stream().anyMatch(hem -> hem.hang().first())) {
            terms.add(
                    new Term(
                            "bias",
                            "Any way across the cloth that follows neither thread; at 45 degrees it"
                                    + " stretches most, and drops as it hangs."));
        }
        if (hems.stream().anyMatch(hem -> !hem.handled(HemEdge.Handling.EASE).isEmpty())) {
            terms.add(
                    new Term(
                            "ease-stitch",
                            "A long stitch along an edge by which a little fullness is drawn in"
                                    + " without a fold, and then shrunk with steam."));
        }
        if (hems.stream().anyMatch(hem -> hem.hem().turned() == Hem.Turned.FACED)) {
            terms.add(
                    new Term(
                            "facing",
                            "A piece of the shape of an edge, sewn to it and turned inside, which"
                                    + " finishes it where a hem would not lie flat."));
        }
        terms.add(
                new Term(
                        "fold",
                        "Of a hem: the finished lower edge, where the cloth is turned up. Of cloth:"
                                + " where it lies double, for pieces drawn half."));
        return terms;
    }
}
