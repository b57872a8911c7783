package secondbolt.dye.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;
import secondbolt.task.Amount;

/**
 * How much of something goes in.
 *
 * @param of what it is reckoned on
 * @param number how much, zero or more, in the unit of that
 */
public record Rate(Of of, BigDecimal number) {
    private static final Pattern TEXT =
            Pattern.compile(
                    "(\\d{1,4}(?:[.,]\\d{1,4})?) ?(%|g ?/ ?l|ml ?/ ?l|g (?:a|per) packet|ml (?:a|per)"
                            + " packet)");

    private static final Mass POUND = Mass.parse("1 lb").orThrow();

    private static final Pattern BLANK_BEFORE_LITRE = Pattern.compile(" ?/ ?");

    /** What an amount is reckoned on. */
    public enum Of {
        /** Hundredths of the dry mass of the fibre that takes. */
        FIBRE("% of the fibre"),
        /** Grams to a litre of bath. */
        GRAMS_IN_LITRE("g/l"),
        /** Millilitres to a litre of bath. */
        MILLILITRES_IN_LITRE("ml/l"),
        /** Grams to each packet of dye. */
        GRAMS_A_PACKET("g a packet"),
        /** Millilitres to each packet of dye. */
        MILLILITRES_A_PACKET("ml a packet"),
        /** Millilitres to each pound of the fibre that takes. */
        MILLILITRES_A_POUND("ml a pound");

        private final String unit;

        Of(String unit) {
            this.unit = unit;
        }
    }

    /** One that a rule gives. */
    public static Rate of(Of what, String decimal) {
        return new Rate(what, new BigDecimal(decimal));
    }

    /** Hundredths of the fibre that takes. */
    public static Rate percent(String decimal) {
        return of(Of.FIBRE, decimal);
    }

    /** Grams to a litre of bath. */
    public static Rate gramsInLitre(String decimal) {
        return of(Of.GRAMS_IN_LITRE, decimal);
    }

    /**
     * Reads an amount such as {@code 10 %}, {@code 20 g/l}, {@code 30 ml/l} or {@code 250 g a
     * packet}.
     */
    public static Optional<Rate> parse(String text) {
        Matcher matcher = TEXT.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(matcher.group(1).replace(',', '.'));
        String unit = BLANK_BEFORE_LITRE.matcher(matcher.group(2)).replaceAll("/");
        Of of =
                switch (unit) {
                    case "%" -> Of.FIBRE;
                    case "g/l" -> Of.GRAMS_IN_LITRE;
                    case "ml/l" -> Of.MILLILITRES_IN_LITRE;
                    default -> unit.startsWith("g") ? Of.GRAMS_A_PACKET : Of.MILLILITRES_A_PACKET;
                };
        return Optional.of(new Rate(of, number));
    }

    /** Whether there is none of it. */
    public boolean isNothing() {
        return number.signum() == 0;
    }

    /** The share of the fibre, if it is reckoned on that. */
    public Optional<Share> share() {
        return of == Of.FIBRE
                ? Optional.of(Share.ofDecimal(number.toPlainString()).times(Share.ofPercent(1)))
                : Optional.empty();
    }

    /**
     * How much that is.
     *
     * @param fibre the dry mass of the fibre that takes
     * @param bath how much bath there is
     * @param packets how many packets of dye go in, a part of one in one of several baths; nothing
     *     if that is not known
     * @return nothing if it is reckoned on packets and they are not known
     */
    public Optional<Amount> amount(Mass fibre, Volume bath, Optional<Share> packets) {
        Share litres = bath.of(Volume.LITRE);
        return switch (of) {
            case FIBRE -> Optional.of(weighed(fibre.times(share().orElseThrow())));
            case GRAMS_IN_LITRE -> Optional.of(weighed(grams().times(litres)));
            case MILLILITRES_IN_LITRE -> Optional.of(liquid(millilitres().times(litres)));
            case GRAMS_A_PACKET -> packets.map(count -> weighed(grams().times(count)));
            case MILLILITRES_A_PACKET -> packets.map(count -> liquid(millilitres().times(count)));
            case MILLILITRES_A_POUND -> Optional.of(liquid(millilitres().times(fibre.of(POUND))));
        };
    }

    private Mass grams() {
        return Mass.ofGrams(number.toPlainString());
    }

    private Volume millilitres() {
        return Volume.ofMillilitres(number.toPlainString());
    }

    private static Amount weighed(Mass mass) {
        return new Amount.Weighed(mass);
    }

    private static Amount liquid(Volume volume) {
        return new Amount.Liquid(volume);
    }

    /** The number without its unit: {@code 1.5}. */
    public String figure() {
        return number.stripTrailingZeros().toPlainString();
    }

    /** {@code 20 g/l}, or {@code 2 % of the fibre}. */
    public String words() {
        if (of == Of.MILLILITRES_A_POUND) {
            return number.setScale(0, RoundingMode.HALF_UP).toPlainString() + " " + of.unit;
        }
        return isNothing() ? "none" : figure() + " " + of.unit;
    }
}
