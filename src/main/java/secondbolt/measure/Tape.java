package secondbolt.measure;

import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * The tape the maker measures with: which unit a bare number has, and to which marks a length is
 * printed.
 *
 * <p>Lengths print to the nearest mark, halves away from zero: half a millimetre on a metric tape,
 * a sixteenth of an inch, as a reduced fraction, on an inch tape. Cloth to buy is rounded up, never
 * down: to 5 cm or to an eighth of a yard (common practice of shops, no source).
 */
public enum Tape {
    /** A metric tape; a bare number is in centimetres. */
    CENTIMETRE("cm") {
        @Override
        public Length mark() {
            return Length.ofMillimetres(1).dividedBy(2);
        }

        @Override
        public String print(Length length) {
            return inUnit(length.roundedTo(mark()), 10, 2) + " cm";
        }

        @Override
        public String printSmall(Length length) {
            return inUnit(length.roundedTo(mark()), 1, 1) + " mm";
        }

        @Override
        public Length shopStep() {
            return Length.ofMillimetres(50);
        }

        @Override
        public Length pricedLength() {
            return Length.ofMillimetres(1000);
        }

        @Override
        public String printShop(Length length) {
            return inUnit(length, 1000, 2) + " m";
        }

        @Override
        public String print(Area area) {
            return area.exactSquareMillimetres().dividedBy(Exact.of(1_000_000)).decimal(2) + " m²";
        }

        @Override
        public String print(ClothWeight weight) {
            return weight.exactGramsPerSquareMetre().decimal(0) + " g/m²";
        }

        @Override
        public String print(Mass mass) {
            return mass.exactGrams().decimal(0) + " g";
        }

        @Override
        public String printHeavy(Mass mass) {
            return mass.exactGrams().dividedBy(Exact.of(1000)).decimal(1) + " kg";
        }

        @Override
        public String printFine(Mass mass) {
            Exact grams = mass.exactGrams();
            int decimals = grams.compareTo(Exact.of(10)) < 0 ? 2 : 1;
            return grams.decimal(grams.compareTo(Exact.of(100)) < 0 ? decimals : 0) + " g";
        }

        @Override
        public String print(Volume volume) {
            Exact millilitres = volume.exactMillilitres();
            return millilitres.compareTo(Exact.of(1000)) < 0
                    ? millilitres.decimal(0) + " ml"
                    : millilitres.dividedBy(Exact.of(1000)).decimal(2) + " l";
        }
    },

    /** A tape in inches and sixteenths; a bare number is in inches. */
    INCH("in") {
        @Override
        public Length mark() {
            return Length.ofInches(1, 16);
        }

        @Override
        public String print(Length length) {
            return Fractions.sixteenths(sixteenths(length)) + " in";
        }

        @Override
        public String printSmall(Length length) {
            return print(length);
        }

        @Override
        public Length shopStep() {
            return Length.ofInches(36, 8);
        }

        @Override
        public Length pricedLength() {
            return Length.ofInches(36, 1);
        }

        @Override
        public String printShop(Length length) {
            Exact eighthsOfAYard = Length.ofInches(36, 8).exactMillimetres();
            BigInteger count =
                    length.exactMillimetres().steps(eighthsOfAYard, RoundingMode.HALF_UP);
            return Fractions.sixteenths(count.multiply(BigInteger.TWO)) + " yd";
        }

        @Override
        public String print(Area area) {
            return inUnits(area.exactSquareMillimetres(), UnitTable.AREA.get("yd2"), 2) + " yd²";
        }

        @Override
        public String print(ClothWeight weight) {
            Unit unit = UnitTable.CLOTH_WEIGHT.get("oz/yd2");
            return inUnits(weight.exactGramsPerSquareMetre(), unit, 1) + " oz/yd²";
        }

        @Override
        public String print(Mass mass) {
            return inUnits(mass.exactGrams(), UnitTable.MASS.get("oz"), 1) + " oz";
        }

        @Override
        public String printHeavy(Mass mass) {
            return inUnits(mass.exactGrams(), UnitTable.MASS.get("lb"), 1) + " lb";
        }

        @Override
        public String printFine(Mass mass) {
            return inUnits(mass.exactGrams(), UnitTable.MASS.get("oz"), 2) + " oz";
        }

        @Override
        public String print(Volume volume) {
            Exact millilitres = volume.exactMillilitres();
            Unit gallon = UnitTable.VOLUME.get("gal");
            return millilitres.compareTo(gallon.inBaseUnits()) < 0
                    ? inUnits(millilitres, UnitTable.VOLUME.get("cup"), 2) + " cup (US)"
                    : inUnits(millilitres, gallon, 2) + " gal (US)";
        }
    };

    private final String symbol;

    Tape(String symbol) {
        this.symbol = symbol;
    }

    /** The unit of a bare number: {@code cm} or {@code in}. */
    public String symbol() {
        return symbol;
    }

    /** The other system's tape. */
    public Tape other() {
        return this == CENTIMETRE ? INCH : CENTIMETRE;
    }

    /** The distance between two marks. */
    public abstract Length mark();

    /** A length to the nearest mark, with its unit: {@code 10.75 cm} or {@code 4¼ in}. */
    public abstract String print(Length length);

    /** A small length, of a button or a hole: {@code 14 mm} or {@code ⅝ in}. */
    public abstract String printSmall(Length length);

    /** The steps that shops cut cloth in. */
    public abstract Length shopStep();

    /** What the price of cloth and of tape is told for: a metre, or a yard. */
    public abstract Length pricedLength();

    /** A length of cloth that stands on a shop step: {@code 2.35 m} or {@code 2⅝ yd}. */
    public abstract String printShop(Length onAShopStep);

    /** An area to two decimals: {@code 2.43 m²} or {@code 2.9 yd²}. */
    public abstract String print(Area area);

    /** A cloth weight: {@code 165 g/m²} or {@code 4.9 oz/yd²}. */
    public abstract String print(ClothWeight weight);

    /** A mass: {@code 656 g} or {@code 23.1 oz}. */
    public abstract String print(Mass mass);

    /** A small mass that is weighed out, such as dye: {@code 8.63 g} or {@code 0.3 oz}. */
    public abstract String printFine(Mass mass);

    /** What is lifted and carried: {@code 14.8 kg} or {@code 32.5 lb}. */
    public abstract String printHeavy(Mass mass);

    /** A volume: {@code 250 ml}, {@code 12 l}, or US cups and gallons. */
    public abstract String print(Volume volume);

    /** Cloth to buy: rounded up to the next shop step, never down. */
    public String printToBuy(Length length) {
        return printShop(length.roundedUpTo(shopStep()));
    }

    /** Cloth one has: rounded down to a shop step, so that it is there for certain. */
    public String printInHand(Length length) {
        return printShop(length.roundedDownTo(shopStep()));
    }

    /** The length on this tape, and on the other in brackets. */
    public String printBoth(Length length) {
        return print(length) + " (" + other().print(length) + ")";
    }

    /** A small length on this tape, and on the other in brackets. */
    public String printSmallBoth(Length length) {
        return printSmall(length) + " (" + other().printSmall(length) + ")";
    }

    private static String inUnit(Length length, long millimetresPerUnit, int decimals) {
        return length.exactMillimetres().dividedBy(Exact.of(millimetresPerUnit)).decimal(decimals);
    }

    private static String inUnits(Exact base, Unit unit, int decimals) {
        return base.dividedBy(unit.inBaseUnits()).decimal(decimals);
    }

    private static BigInteger sixteenths(Length length) {
        return length.exactMillimetres()
                .steps(Length.ofInches(1, 16).exactMillimetres(), RoundingMode.HALF_UP);
    }
}
