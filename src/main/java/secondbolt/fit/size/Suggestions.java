package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * The alterations that follow from the difference between the body and the size it is cut in.
 *
 * <p>Source: Central Washington University costume text, ch. 17: lengthen or shorten along the
 * printed line; a small change of width is shared by the seams at the outside edges. That
 * differences under 5 mm or a quarter of an inch are left: common practice, no source.
 */
final class Suggestions {
    private static final Map<BodyMeasure, Lengthened> LENGTHS = lengths();
    private static final List<BodyMeasure> WIDTHS =
            List.of(BodyMeasure.BUST, BodyMeasure.CHEST, BodyMeasure.WAIST, BodyMeasure.HIP);
    private static final List<String> SIDES = List.of("side", "side seam", "sides");

    /** The measurements that an alteration may follow from. */
    static final List<BodyMeasure> COMPARED =
            Stream.concat(WIDTHS.stream(), LENGTHS.keySet().stream()).toList();

    private final SizeInput input;
    private final Map<BodyMeasure, SizeResult.Measurement> measured = new LinkedHashMap<>();
    private final List<SizeResult.Suggestion> made = new ArrayList<>();

    private Suggestions(SizeInput input, List<SizeResult.Measurement> measurements) {
        this.input = input;
        measurements.forEach(m -> measured.put(m.name(), m));
    }

    /**
     * Where a length is altered.
     *
     * @param lines the names such a line may have, the usual one first
     * @param where on which pieces it is drawn, and where
     */
    private record Lengthened(List<String> lines, String where) {}

    private static Map<BodyMeasure, Lengthened> lengths() {
        Map<BodyMeasure, Lengthened> lengths = new LinkedHashMap<>();
        lengths.put(
                BodyMeasure.BACK_WAIST_LENGTH,
                new Lengthened(
                        List.of("body", "bodice", "waist", "back waist length", "waist length"),
                        "every piece that runs from the shoulder to the waist or past it, fronts,"
                                + " backs, their facings and linings, between armhole and waist"));
        lengths.put(
                BodyMeasure.ARM_LENGTH,
                new Lengthened(
                        List.of("sleeve", "sleeve length", "arm", "arm length"),
                        "the sleeve and its lining, between armhole and wrist"));
        lengths.put(
                BodyMeasure.CROTCH_DEPTH,
                new Lengthened(
                        List.of("crotch depth", "crotch", "rise", "seat"),
                        "the front and back of the trousers, their pockets and facings, between"
                                + " waist and crotch"));
        lengths.put(
                BodyMeasure.INSIDE_LEG,
                new Lengthened(
                        List.of("leg", "inside leg", "leg length", "trouser leg"),
                        "the front and back of the trousers and their linings, between crotch and"
                                + " hem"));
        return lengths;
    }

    static List<SizeResult.Suggestion> of(
            SizeInput input, List<SizeResult.Measurement> measurements) {
        Suggestions suggestions = new Suggestions(input, measurements);
        LENGTHS.forEach(suggestions::length);
        suggestions.widths();
        return List.copyOf(suggestions.made);
    }

    /** The side seam in words, by the name it has in the pattern. */
    static String sideSeam(SizeInput input) {
        return side(input).map(name -> "the seam `" + name + "`").orElse("the side seam");
    }

    private static Optional<String> side(SizeInput input) {
        return named(SIDES, input.pieces().edgeNames());
    }

    /** The name that is there: the usual one, else one that has the usual one as a word. */
    private static Optional<String> named(List<String> usual, Collection<String> there) {
        return usual.stream()
                .filter(there::contains)
                .findFirst()
                .or(
                        () ->
                                there.stream()
                                        .filter(
                                                n ->
                                                        List.of(n.split(" ", -1))
                                                                .contains(usual.get(0)))
                                        .findFirst());
    }

    /** What the body measures more than the size as altered so far; nothing if either is open. */
    private Optional<Length> difference(BodyMeasure measure) {
        return Optional.ofNullable(measured.get(measure))
                .flatMap(m -> m.body().flatMap(b -> m.pattern().map(b::minus)));
    }

    private boolean isWorthIt(Length difference) {
        return !difference.size().isShorterThan(input.least());
    }

    private void length(BodyMeasure measure, Lengthened how) {
        Length by = difference(measure).orElse(Length.ZERO).roundedTo(input.tape().mark());
        if (!isWorthIt(by)) {
            return;
        }
        String verb = by.isNegative() ? "shorten" : "lengthen";
        Optional<String> line = named(how.lines(), input.pieces().lineNames());
        String name = line.orElse(how.lines().get(0));
        String action =
                line.isPresent()
                        ? capital(verb)
                                + " at the line `"
                                + name
                                + "`, on all pieces that carry it."
                        : "No piece has a line for it yet: draw one named `"
                                + name
                                + "` across "
                                + how.where()
                                + " (`lines: {"
                                + name
                                + ": …}`, from the piece's top), then paste.";
        made.add(
                new SizeResult.Suggestion(
                        measure,
                        by,
                        why(measure) + " " + action,
                        Optional.of("- {" + verb + ": " + name + ", by: " + written(by) + "}")));
    }

    private void widths() {
        Length soFar = Length.ZERO;
        Optional<BodyMeasure> above = untouched();
        for (BodyMeasure measure : widthsToCompare()) {
            if (measure == BodyMeasure.BUST && enlargesTheBust()) {
                above = Optional.of(measure);
                continue;
            }
            Length step = difference(measure).orElseThrow().minus(soFar);
            Length by = step.roundedTo(input.tape().mark());
            if (isWorthIt(by)) {
                made.add(width(measure, by, above, soFar));
                soFar = soFar.plus(by);
            }
            above = Optional.of(measure);
        }
    }

    /** The chest counts where the bust does not: both lie at one height. */
    private List<BodyMeasure> widthsToCompare() {
        return WIDTHS.stream()
                .filter(m -> difference(m).isPresent())
                .filter(m -> m != BodyMeasure.CHEST || difference(BodyMeasure.BUST).isEmpty())
                .toList();
    }

    /** The line above which nothing is altered, because the bust or chest there is not known. */
    private Optional<BodyMeasure> untouched() {
        BodyMeasure top = input.isMeasured(BodyMeasure.BUST) ? BodyMeasure.BUST : BodyMeasure.CHEST;
        boolean known =
                difference(BodyMeasure.BUST).or(() -> difference(BodyMeasure.CHEST)).isPresent();
        return input.isUpper() && !known ? Optional.of(top) : Optional.empty();
    }

    /** A bust much fuller than the high bust is given room over the bust alone, not at the side. */
    private boolean enlargesTheBust() {
        Length more = difference(BodyMeasure.BUST).orElse(Length.ZERO);
        boolean fuller =
                input.wearer().filter(SizeChoice::goesByHighBust).isPresent()
                        && more.isPositive()
                        && isWorthIt(more);
        if (fuller) {
            made.add(
                    new SizeResult.Suggestion(
                            BodyMeasure.BUST,
                            more,
                            why(BodyMeasure.BUST)
                                    + " It is the bust that is full, not the back: slash the fronts"
                                    + " through the bust point and spread each by half of that, and"
                                    + " redraw the front piece so; the side seam stays.",
                            Optional.empty()));
        }
        return fuller;
    }

    private SizeResult.Suggestion width(
            BodyMeasure measure, Length by, Optional<BodyMeasure> above, Length soFar) {
        String verb = by.isNegative() ? "narrow" : "widen";
        Optional<String> edge = side(input);
        String name = edge.orElse(SIDES.get(0));
        String start = "- {" + verb + ": " + name + ", by: " + written(by);
        Optional<String> levels = above.map(a -> levels(a, measure));
        boolean complete = levels.filter(l -> l.contains("…")).isEmpty();
        String yaml = (complete ? "" : "# ") + start + levels.orElse("") + "}";
        StringBuilder text = new StringBuilder(why(measure));
        text.append(
                above.map(a -> taper(verb, a, measure, by, soFar))
                        .orElseGet(() -> whole(verb, by)));
        if (edge.isEmpty()) {
            text.append(" No piece has an edge named `")
                    .append(name)
                    .append("` yet: give the side seams that name on every piece that has them.");
        }
        if (!complete) {
            text.append(
                            " Measure how far down the piece both lines lie, write it in for `from` and")
                    .append(" `to`, and take away the #.");
        }
        return new SizeResult.Suggestion(measure, by, text.toString(), Optional.of(yaml));
    }

    private String levels(BodyMeasure above, BodyMeasure measure) {
        return ", from: " + level(above) + ", to: " + level(measure);
    }

    private String level(BodyMeasure measure) {
        return Optional.ofNullable(input.pieces().levels().get(measure))
                .map(this::written)
                .orElse("…");
    }

    private String whole(String verb, Length by) {
        return " "
                + capital(verb)
                + " the side by "
                + input.tape().print(by.size())
                + " in all round, from top to bottom; an armhole or waistband that ends there"
                + " changes with it, so look at its seam.";
    }

    private String taper(
            String verb, BodyMeasure above, BodyMeasure measure, Length by, Length soFar) {
        return " "
                + capital(verb)
                + " the side from the "
                + above.word()
                + " line on, by "
                + input.tape().print(by.size())
                + " in all round from the "
                + measure.word()
                + " line down"
                + (soFar.equals(Length.ZERO) ? "." : ", beside what is altered further up.");
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private String why(BodyMeasure measure) {
        SizeResult.Measurement m = measured.get(measure);
        Length by = difference(measure).orElseThrow();
        return capital(measure.word())
                + ": the body has "
                + input.tape().print(m.body().orElseThrow())
                + ", the size "
                + (input.pieces().added(measure).equals(Length.ZERO) ? "" : "as altered ")
                + input.tape().print(m.pattern().orElseThrow())
                + ", "
                + input.tape().print(by.size())
                + (by.isNegative() ? " more." : " less.");
    }

    /** An amount as the file reads it, without its sign: {@code 2.5 cm} or {@code 1 1/2 in}. */
    private String written(Length length) {
        Length size = length.size().roundedTo(input.tape().mark());
        return input.tape() == Tape.INCH ? inches(size) : Tape.CENTIMETRE.print(size);
    }

    private static String inches(Length size) {
        long under = 16;
        long over = Math.round(size.millimetres() / Length.ofInches(1, under).millimetres());
        long whole = over / under;
        over %= under;
        while (over > 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        String fraction = over == 0 ? "" : over + "/" + under;
        String parted = whole > 0 && over > 0 ? " " : "";
        return (whole > 0 || over == 0 ? whole : "") + parted + fraction + " in";
    }
}
