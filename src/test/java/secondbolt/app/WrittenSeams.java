package secondbolt.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.yaml.snakeyaml.Yaml;

/**
 * The seams as the maker wrote them, read from her file with nothing of the program's own.
 *
 * @param seams in her order
 * @param takenMm what darts and pleats take up, by piece and edge: {@code front.side}
 * @param allowancesMm the seam allowances she wrote, likewise, where they differ from the rest
 * @param allowanceMm the seam allowance of all other edges
 * @param toleranceMm by how much two sides of a seam may differ
 */
record WrittenSeams(
        List<Seam> seams,
        Map<String, Double> takenMm,
        Map<String, Double> allowancesMm,
        double allowanceMm,
        double toleranceMm) {
    /** Source: common practice, no source; the tool tells a larger difference as a fault. */
    private static final double METRIC_TOLERANCE_MM = 1;

    /** Likewise: a sixteenth of an inch. */
    private static final double INCH_TOLERANCE_MM = 25.4 / 16;

    private static final Pattern TERM = Pattern.compile("(?:(\\d+) )?(.+)\\.(.+)");

    /**
     * So many times an edge.
     *
     * @param times how often it is sewn
     * @param piece whose edge it is
     * @param edge its name
     */
    record Term(int times, String piece, String edge) {
        String key() {
            return piece + "." + edge;
        }
    }

    /**
     * Two sums of edges that are sewn together.
     *
     * @param first the side that is eased or gathered, if one is
     * @param second the other
     * @param easeMm by how much the first is longer
     * @param gather how many times as long the first is
     * @param lapsMm how much of the second runs past the first
     */
    record Seam(List<Term> first, List<Term> second, double easeMm, double gather, double lapsMm) {
        /** The two edges, if it joins one to one. */
        Optional<List<Term>> plain() {
            boolean isPlain =
                    first.size() == 1
                            && second.size() == 1
                            && first.get(0).times() == second.get(0).times();
            return isPlain ? Optional.of(List.of(first.get(0), second.get(0))) : Optional.empty();
        }

        int edges() {
            return Stream.of(first, second).flatMap(List::stream).mapToInt(Term::times).sum();
        }
    }

    static WrittenSeams of(String projectFile) {
        Map<String, Object> project = new Yaml().load(projectFile);
        double unitMm = project.get("units").equals("in") ? 25.4 : 10;
        Map<String, Object> pattern = map(project.get("pattern"));
        Map<String, Double> taken = new LinkedHashMap<>();
        Map<String, Double> allowances = new LinkedHashMap<>();
        map(pattern.get("pieces"))
                .forEach(
                        (name, told) -> {
                            Map<String, Object> piece = map(told);
                            for (String kind : List.of("darts", "pleats")) {
                                for (Object dart : list(piece.get(kind))) {
                                    taken.merge(
                                            name + "." + map(dart).get("edge"),
                                            number(map(dart).get("takes")) * unitMm,
                                            Double::sum);
                                }
                            }
                            map(piece.get("allowance"))
                                    .forEach(
                                            (edge, width) ->
                                                    allowances.put(
                                                            name + "." + edge,
                                                            number(width) * unitMm));
                        });
        return new WrittenSeams(
                list(pattern.get("seams")).stream().map(told -> seam(told, unitMm)).toList(),
                taken,
                allowances,
                number(map(pattern.get("seam allowance")).get("of")) * unitMm,
                unitMm == 10 ? METRIC_TOLERANCE_MM : INCH_TOLERANCE_MM);
    }

    private static Seam seam(Object told, double unitMm) {
        boolean isPair = told instanceof List;
        Map<String, Object> more = isPair ? Map.of() : map(told);
        List<Object> sides = list(isPair ? told : more.get("join"));
        return new Seam(
                sum(sides.get(0)),
                sum(sides.get(1)),
                number(more.getOrDefault("ease", 0)) * unitMm,
                number(more.getOrDefault("gather", 1)),
                number(more.getOrDefault("laps", 0)) * unitMm);
    }

    private static List<Term> sum(Object told) {
        List<Term> terms = new ArrayList<>();
        for (String words : told.toString().split(" \\+ ", -1)) {
            Matcher matcher = TERM.matcher(words);
            if (!matcher.matches()) {
                throw new AssertionError("not an edge of a piece: " + words);
            }
            int times = Optional.ofNullable(matcher.group(1)).map(Integer::parseInt).orElse(1);
            terms.add(new Term(times, matcher.group(2), matcher.group(3)));
        }
        return terms;
    }

    /** A number as she writes it: {@code 1.5}, {@code 3/4}, {@code 1 3/4}. */
    private static double number(Object told) {
        double sum = 0;
        for (String part : told.toString().split(" ", -1)) {
            String[] fraction = part.split("/", -1);
            double below = fraction.length > 1 ? Double.parseDouble(fraction[1]) : 1;
            sum += Double.parseDouble(fraction[0]) / below;
        }
        return sum;
    }

    @SuppressWarnings("unchecked") // what the demo files hold
    private static Map<String, Object> map(Object told) {
        return told == null ? Map.of() : (Map<String, Object>) told;
    }

    @SuppressWarnings("unchecked") // what the demo files hold
    private static List<Object> list(Object told) {
        return told == null ? List.of() : (List<Object>) told;
    }

    double allowanceMm(Term term) {
        return allowancesMm.getOrDefault(term.key(), allowanceMm);
    }
}
