package secondbolt.hem;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.hem.guide.HemWords;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * Words and findings about one hem.
 *
 * @param result the hem
 * @param tape to print with
 */
record AboutHem(HemResult result, Tape tape) {
    /** A finding about the hem as a whole. */
    Finding finding(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Hem(result.name()), level, text, remedy);
    }

    /** The names of edges. */
    String names(List<HemEdge> edges) {
        return each(edges, edge -> "").strip();
    }

    /** Each edge with words of its own. */
    String each(List<HemEdge> edges, Function<HemEdge, String> words) {
        return edges.stream()
                .map(edge -> edge.edge().words() + " " + words.apply(edge))
                .collect(Collectors.joining("; "));
    }

    /** How much longer or shorter an edge is than the line it lands on. */
    String surplus(HemEdge edge) {
        String each = edge.times() == 1 ? "" : " on each of " + edge.times();
        return print(edge.surplus().orElseThrow().size())
                + each
                + ", which is "
                + HemWords.percent(Math.abs(edge.fullness().orElse(0.0)));
    }

    /** A length, finer if it is small. */
    String print(Length length) {
        return HemWords.print(tape, length);
    }

    /** The turn of the raw edge. */
    String rawEdge() {
        return tape.printSmall(Hem.RAW_EDGE.on(tape));
    }
}
