package secondbolt.pattern;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;

/**
 * Edges added up, as written: {@code 2 front.neckline + 2 back.neckline}. An edge name means the
 * edge as drawn, once.
 *
 * @param terms in order
 */
public record EdgeSum(List<Term> terms) {
    private static final Pattern TERM =
            Pattern.compile("(?:(\\d{1,2})\\s+(?=[^.\\s]))?(.+)", Pattern.DOTALL);

    /**
     * One edge, so many times.
     *
     * @param count how many times, 1 or more
     * @param edge which
     */
    public record Term(int count, PieceEdge edge) {
        /** The name of its piece. */
        public String piece() {
            return edge.piece();
        }

        /** As a maker says it in a sentence. */
        public String words() {
            return (count == 1 ? "" : count + " times ") + edge.words();
        }

        /** As a maker says it in a table. */
        public String heading() {
            return (count == 1 ? "" : count + " × ") + edge.heading();
        }

        /** As written. */
        @Override
        public String toString() {
            return (count == 1 ? "" : count + " ") + edge;
        }
    }

    /** One sum, or several edges in a row, with the place they are written at. */
    public static final Form<Placed<EdgeSum>> ROW = row();

    private static Form<Placed<EdgeSum>> row() {
        Form<EdgeSum> one =
                Forms.parsed(
                        "an edge such as `front.centre front`, or `2 front.centre front` if it goes"
                                + " round twice, at most 99 times",
                        EdgeSum::parse);
        Form<EdgeSum> several =
                Forms.map(
                        ListForm.of("edges, one below the other", one, 1, 10),
                        sums ->
                                new EdgeSum(
                                        sums.stream().flatMap(s -> s.terms().stream()).toList()));
        return Forms.placed(Forms.either(one, several));
    }

    /** Copies the terms. */
    public EdgeSum {
        terms = List.copyOf(terms);
    }

    /** Reads a sum; nothing if it is not one. */
    static Optional<EdgeSum> parse(String text) {
        List<Term> terms = new ArrayList<>();
        for (String part : text.split("\\+", -1)) {
            Matcher term = TERM.matcher(part.strip());
            if (!term.matches()) {
                return Optional.empty();
            }
            int count = term.group(1) == null ? 1 : Integer.parseInt(term.group(1));
            Optional<PieceEdge> edge = PieceEdge.parse(term.group(2));
            if (count == 0 || edge.isEmpty()) {
                return Optional.empty();
            }
            terms.add(new Term(count, edge.get()));
        }
        return Optional.of(new EdgeSum(terms));
    }

    /** All its edges, each once. */
    public Set<PieceEdge> pieceEdges() {
        Set<PieceEdge> all = new LinkedHashSet<>();
        terms.forEach(term -> all.add(term.edge()));
        return all;
    }

    /** As a maker says it in a sentence. */
    public String words() {
        return String.join(" and ", terms.stream().map(Term::words).toList());
    }

    /** As a maker says it in a table. */
    public String heading() {
        return String.join(" + ", terms.stream().map(Term::heading).toList());
    }

    /** As written. */
    @Override
    public String toString() {
        return String.join(" + ", terms.stream().map(Term::toString).toList());
    }
}
