package secondbolt.work.kind;

import java.util.stream.Collectors;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Seam;

/** A seam in words, as a list of work has it: {@code front, shoulder to back, shoulder}. */
final class SeamWords {
    private SeamWords() {}

    static String of(Seam seam) {
        String first = side(seam.first().value());
        String second = side(seam.second().value());
        String to = first.equals(second) ? "to itself" : "to " + second;
        return first + " " + to + how(seam);
    }

    static String side(EdgeSum side) {
        return side.terms().stream().map(SeamWords::term).collect(Collectors.joining(" + "));
    }

    private static String term(EdgeSum.Term term) {
        String edge = term.edge().piece() + ", " + term.edge().edge();
        return term.count() == 1 ? edge : term.count() + " × " + edge;
    }

    private static String how(Seam seam) {
        if (seam.isGathered()) {
            return " (gathered)";
        }
        return seam.ease().isPositive() ? " (the first eased in)" : "";
    }
}
