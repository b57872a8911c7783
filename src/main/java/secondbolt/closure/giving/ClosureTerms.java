package secondbolt.closure.giving;

import java.util.ArrayList;
import java.util.List;
import secondbolt.closure.fastening.Fastening;
import secondbolt.worksheet.Term;

/** The words of the trade that closures use, in our own. */
final class ClosureTerms {
    private ClosureTerms() {}

    static List<Term> of(List<GivenClosure> closures) {
        List<Term> terms = new ArrayList<>();
        terms.add(
                new Term(
                        "placket",
                        "The opening of a garment with its finished edges, along which it closes."));
        if (closures.stream().anyMatch(c -> c.closure().isLapped())) {
            terms.add(
                    new Term(
                            "extension",
                            "What a side has beyond the line of its fasteners, up to the finished"
                                    + " edge, so that the sides lie over each other."));
        }
        if (closures.stream().anyMatch(c -> c.fastening().hasHoles())) {
            terms.add(
                    new Term(
                            "bar",
                            "The short row of stitches across the end of a buttonhole, which keeps"
                                    + " it from tearing on; also one sewn alone, where a slit or a"
                                    + " cord pulls."));
            terms.add(
                    new Term(
                            "shank",
                            "The stem between a button and its cloth, its own or one of thread,"
                                    + " which leaves room for the layer with the hole."));
        }
        if (closures.stream().anyMatch(c -> c.fastening().kind() == Fastening.Kind.SNAPS)) {
            terms.add(
                    new Term(
                            "snap",
                            "A fastener in two halves, a ball and a socket, that press together."));
        }
        return terms;
    }
}
