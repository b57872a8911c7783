package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.garment.Serves;
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
     * @param lines what such a line serves, the usual first
     * @param where on which pieces it is drawn, and where
     */
    private record Lengthened(List<Serves> lines, String where) {}

    private static Map<BodyMeasure, Lengthened> lengths() {
        Map<BodyMeasure, Lengthened> lengths = new LinkedHashMap<>();
        lengths.put(
                BodyMeasure.BACK_WAIST_LENGTH,
                new Lengthened(
                        List.of(Serves.BODY, Serves.WAIST),
                        "every piece that runs from the shoulder to the waist or past it, fronts,"
                                + " backs, their facings and linings, between armhole and waist"));
        lengths.put(
                BodyMeasure.ARM_LENGTH,
                new Lengthened(
                        List.of(Serves.SLEEVE),
                        "the sleeve and its lining, between armhole and wrist"));
        lengths.put(
                BodyMeasure.CROTCH_DEPTH,
                new Lengthened(
                        List.of(Serves.CROTCH_DEPTH),
                        "the front and back of the trousers, their pockets and facings, between"
                                + " waist and crotch"));
        lengths.put(
                BodyMeasure.INSIDE_LEG,
                new Lengthened(
                        List.of(Serves.LEG),
                        "the front and back of the trousers and their linings, between crotch and"
                                + " hem"));
        return lengths;
    }

    static List<SizeResult.Suggestion> of(
            SizeInput input, List<SizeResult.Measurement> measurements) {
        Suggestions suggestions = new Suggestions(input, measurements);
        LENGTHS.forEach(suggestions::length);
        suggestions.bust();
        suggestions.widths();
        return List.copyOf(suggestions.made);
    }

    /** The side seam in words, by the names it has in the pattern. */
    static String sideSeam(SizeInput input) {
        List<String> sides = input.pieces().sides();
        String names = sides.stream().map(s -> "`" + s + "`").collect(Collectors.joining(", "));
        return sides.isEmpty()
                ? "the side seam"
                : (sides.size() == 1 ? "the seam " : "the seams ") + names;
    }

    /** The measurement that a lengthen or shorten line alters, if any is compared there. */
    static Optional<BodyMeasure> alteredAt(Serves line) {
        return LENGTHS.entrySet().stream()
                .filter(length -> length.getValue().lines().contains(line))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    static Set<BodyMeasure> lengthNames() {
        return Collections.unmodifiableSet(LENGTHS.keySet());
    }

    /** Names as the file reads them. */
    private static String written(List<String> names) {
        return names.size() == 1 ? names.get(0) : "[" + String.join(", ", names) + "]";
    }

    /** What the body measures more than the size as altered so far; nothing if either is open. */
    private Optional<Length> charted(BodyMeasure measure) {
        return Optional.ofNullable(measured.get(measure))
                .flatMap(m -> m.body().flatMap(b -> m.pattern().map(b::minus)));
    }

    /**
     * By how much it should be larger: what the chart says, but never so little that the finished
     * garment, where its measurement is told, falls below the usual wearing ease.
     */
    private Optional<Length> difference(BodyMeasure measure) {
        return charted(measure).map(by -> least(measure).map(by::orLonger).orElse(by));
    }

    /** The least change the finished garment allows at a measurement, if it is told. */
    private Optional<Length> least(BodyMeasure measure) {
        return Optional.ofNullable(measured.get(measure))
                .flatMap(m -> m.ease().flatMap(ease -> least(m, ease)))
                .map(least -> least.roundedUpTo(input.tape().mark()));
    }

    private static Optional<Length> least(SizeResult.Measurement measurement, Length ease) {
        if (measurement.usual().isPresent()) {
            return measurement.usual().map(usual -> usual.least().minus(ease));
        }
        // No source tells the usual: it is only not taken in below the body itself.
        return WIDTHS.contains(measurement.name())
                ? Optional.of(Length.ZERO.minus(ease).orShorter(Length.ZERO))
                : Optional.empty();
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
        Optional<String> line = Optional.ofNullable(input.pieces().lines().get(measure));
        String name = line.orElse(how.lines().get(0).word());
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

    /**
     * A change of the side at one height.
     *
     * @param measure what asks for it
     * @param by how much more there, beside what is changed above
     * @param above the height from which it begins; nothing if it holds from the top
     */
    private record Step(BodyMeasure measure, Length by, Optional<BodyMeasure> above) {}

    private void widths() {
        List<Step> steps = steps();
        boolean placed =
                steps.stream()
                        .allMatch(
                                step ->
                                        step.above()
                                                .map(a -> hasLevel(a) && hasLevel(step.measure()))
                                                .orElse(true));
        if (placed) {
            steps.forEach(step -> made.add(width(step, step.by().equals(total(step)))));
        } else {
            throughout();
        }
    }

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        Length soFar = Length.ZERO;
        Optional<BodyMeasure> above = untouched();
        for (BodyMeasure measure : widthsToCompare()) {
            if (measure == BodyMeasure.BUST && enlargesTheBust()) {
                above = Optional.of(measure);
                continue;
            }
            Length by = total(measure).minus(soFar);
            if (isWorthIt(by)) {
                steps.add(new Step(measure, by, above));
                soFar = soFar.plus(by);
            }
            above = Optional.of(measure);
        }
        return steps;
    }

    private Length total(Step step) {
        return total(step.measure());
    }

    private Length total(BodyMeasure measure) {
        Length total = difference(measure).orElseThrow().roundedTo(input.tape().mark());
        return total.isNegative() ? spare().map(total::orLonger).orElse(total) : total;
    }

    /** What may be taken in at a girth that the chart has no row for, but the finished garment. */
    private Optional<Length> spare() {
        return WIDTHS.stream()
                .filter(measure -> charted(measure).isEmpty())
                .flatMap(measure -> least(measure).stream())
                .reduce(Length::orLonger)
                .map(least -> least.orShorter(Length.ZERO));
    }

    private boolean hasLevel(BodyMeasure measure) {
        return input.pieces().levels().containsKey(measure);
    }

    /**
     * One change for the whole side, where it is not known how far down bust, waist and hip lie: as
     * much as the one that needs most, so that none is left too tight.
     */
    private void throughout() {
        List<BodyMeasure> compared =
                widthsToCompare().stream()
                        .filter(m -> m != BodyMeasure.BUST || !enlargesTheBust())
                        .toList();
        BodyMeasure most =
                compared.stream()
                        .reduce((a, b) -> total(b).isLongerThan(total(a)) ? b : a)
                        .orElseThrow();
        boolean takesFromTheBust = total(most).isNegative() && enlargesTheBust();
        if (!isWorthIt(total(most)) || takesFromTheBust) {
            return;
        }
        SizeResult.Suggestion whole = width(new Step(most, total(most), Optional.empty()), true);
        String each =
                compared.stream()
                        .map(m -> m.word() + " " + signed(total(m)))
                        .collect(Collectors.joining(", "));
        made.add(
                new SizeResult.Suggestion(
                        most,
                        whole.by(),
                        whole.text()
                                + " Where these lie on the pieces is not known, so it is what the"
                                + " tightest needs, for the whole side. With `from` and `to` it can"
                                + " be tapered; the differences are: "
                                + each
                                + ".",
                        whole.yaml()));
    }

    private String signed(Length length) {
        return (length.isNegative() ? "−" : "+") + input.tape().print(length.size());
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
        return input.wearer().filter(SizeChoice::goesByHighBust).isPresent()
                && more.isPositive()
                && isWorthIt(more);
    }

    private void bust() {
        if (enlargesTheBust()) {
            made.add(
                    new SizeResult.Suggestion(
                            BodyMeasure.BUST,
                            total(BodyMeasure.BUST),
                            why(BodyMeasure.BUST)
                                    + " It is the bust that is full, not the back: slash the fronts"
                                    + " through the bust point and spread each by half of that, and"
                                    + " redraw the front piece so; the side seam stays.",
                            Optional.empty()));
        }
    }

    private SizeResult.Suggestion width(Step step, boolean isAll) {
        String verb = step.by().isNegative() ? "narrow" : "widen";
        List<String> sides = input.pieces().sides();
        String name = sides.isEmpty() ? Serves.SIDE.word() : written(sides);
        String levels =
                step.above()
                        .map(a -> ", from: " + level(a) + ", to: " + level(step.measure()))
                        .orElse("");
        String yaml = "- {" + verb + ": " + name + ", by: " + written(step.by()) + levels + "}";
        String text =
                why(step.measure())
                        + step.above()
                                .map(a -> taper(verb, a, step, isAll))
                                .orElseGet(() -> whole(verb, step.by()))
                        + (step.by().isNegative()
                                ? " Narrowing can wait for a fitting: cloth cut away does not come"
                                        + " back."
                                : "")
                        + (!sides.isEmpty()
                                ? ""
                                : " No piece has an edge named `"
                                        + name
                                        + "` yet: give the side seams that name on every piece that"
                                        + " has them.");
        return new SizeResult.Suggestion(step.measure(), step.by(), text, Optional.of(yaml));
    }

    private String level(BodyMeasure measure) {
        return written(input.pieces().levels().get(measure));
    }

    private String whole(String verb, Length by) {
        return " "
                + capital(verb)
                + " the side by "
                + input.tape().print(by.size())
                + " in all round, from top to bottom; an armhole or waistband that ends there"
                + " changes with it, so look at its seam.";
    }

    private String taper(String verb, BodyMeasure above, Step step, boolean isAll) {
        return " "
                + capital(verb)
                + " the side from the "
                + above.word()
                + " line on, by "
                + input.tape().print(step.by().size())
                + " in all round from the "
                + step.measure().word()
                + " line down"
                + (isAll ? "." : ", beside what is altered further up.");
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private String why(BodyMeasure measure) {
        SizeResult.Measurement m = measured.get(measure);
        Length by = charted(measure).orElseThrow();
        return capital(measure.word())
                + ": the body has "
                + input.tape().print(m.body().orElseThrow())
                + ", the size "
                + (input.pieces().added(measure).equals(Length.ZERO) ? "" : "as altered ")
                + input.tape().print(m.pattern().orElseThrow())
                + ", "
                + input.tape().print(by.size())
                + (by.isNegative() ? " more." : " less.")
                + finished(m);
    }

    /** Why it is not what the chart alone would ask for. */
    private String finished(SizeResult.Measurement m) {
        if (difference(m.name()).equals(charted(m.name()))) {
            return "";
        }
        Length ease = m.ease().orElseThrow();
        return " What counts is the finished garment: it is "
                + input.tape().print(ease.size())
                + (ease.isNegative()
                        ? " smaller than the body there"
                        : " larger than the body there")
                + m.usual()
                        .map(
                                usual ->
                                        ", and the least wearing ease of any source is "
                                                + input.tape().print(usual.least())
                                                + ".")
                        .orElse(", and no less is suggested than the body.");
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
