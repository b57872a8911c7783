package secondbolt.supply.plan;

import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.task.Amount;

/**
 * How much of a thing, kept exactly, so that what is needed can be added up whatever it is measured
 * by.
 *
 * @param kind what it is measured by
 * @param inBaseUnits how many of the kind's base unit: things, millimetres, grams, millilitres
 */
public record Quantity(Kind kind, Share inBaseUnits) {
    private static final Length MILLIMETRE = Length.ofMillimetres(1);
    private static final Mass GRAM = Mass.ofGrams("1");
    private static final Volume MILLILITRE = Volume.ofMillilitres("1");
    private static final Share NOTHING = Share.ofRatio(0, 1);
    private static final Share LESS = Share.ofRatio(-1, 1);

    /** What a thing is measured by. */
    public enum Kind {
        /** It is counted. */
        COUNT("count", "counted", "6", "6"),
        /** By its length. */
        LENGTH("length", "measured by length", "2 m", "2 yd"),
        /** By its mass. */
        MASS("mass", "weighed", "250 g", "8 oz"),
        /** By its volume. */
        VOLUME("volume", "measured by volume", "1 l", "2 cup");

        private final String key;
        private final String words;
        private final String metric;
        private final String inch;

        Kind(String key, String words, String metric, String inch) {
            this.key = key;
            this.words = words;
            this.metric = metric;
            this.inch = inch;
        }

        /** The key that tells an amount of this kind. */
        public String key() {
            return key;
        }

        /** As in "shirt buttons are counted". */
        public String words() {
            return words;
        }

        /** Some amount of this kind, as a file on a tape may say it. */
        public String example(Tape tape) {
            return tape == Tape.INCH ? inch : metric;
        }
    }

    /** None of it. */
    public static Quantity none(Kind kind) {
        return new Quantity(kind, NOTHING);
    }

    /** So many things. */
    public static Quantity ofCount(int count) {
        return new Quantity(Kind.COUNT, Share.ofRatio(count, 1));
    }

    /** What a topic or the maker asks for. */
    public static Quantity of(Amount amount) {
        return amount.accept(
                new Amount.Visitor<>() {
                    @Override
                    public Quantity pieces(Amount.Pieces pieces) {
                        return ofCount(pieces.count());
                    }

                    @Override
                    public Quantity run(Amount.Run run) {
                        return new Quantity(Kind.LENGTH, Share.left(run.length(), MILLIMETRE));
                    }

                    @Override
                    public Quantity weighed(Amount.Weighed weighed) {
                        return new Quantity(Kind.MASS, weighed.mass().of(GRAM));
                    }

                    @Override
                    public Quantity liquid(Amount.Liquid liquid) {
                        return new Quantity(Kind.VOLUME, liquid.volume().of(MILLILITRE));
                    }
                });
    }

    /** The sum of both, which are of one kind. */
    public Quantity plus(Quantity other) {
        return new Quantity(kind, inBaseUnits.plus(sameKind(other)));
    }

    /** What is still missing when the other is there; none if that is enough. */
    public Quantity missing(Quantity other) {
        Share rest = inBaseUnits.plus(sameKind(other).times(LESS));
        return new Quantity(kind, rest.compareTo(NOTHING) > 0 ? rest : NOTHING);
    }

    /** Whether it is more than the other, which is of the same kind. */
    public boolean isMoreThan(Quantity other) {
        return inBaseUnits.compareTo(sameKind(other)) > 0;
    }

    /** The larger of both. */
    public Quantity orMore(Quantity other) {
        return other.isMoreThan(this) ? other : this;
    }

    /** Whether there is any. */
    public boolean isPositive() {
        return inBaseUnits.compareTo(NOTHING) > 0;
    }

    /**
     * How many of the other it takes to have so much, rounded up.
     *
     * @param each above nothing, of the same kind
     */
    public int in(Quantity each) {
        return inBaseUnits.dividedBy(sameKind(each)).roundedUp();
    }

    /** So many times this. */
    public Quantity times(int count) {
        return new Quantity(kind, inBaseUnits.times(Share.ofRatio(count, 1)));
    }

    /** As a length; of a length only. */
    public Length length() {
        return MILLIMETRE.times(inBaseUnits);
    }

    /** As a mass; of a mass only. */
    public Mass mass() {
        return GRAM.times(inBaseUnits);
    }

    /** As a volume; of a volume only. */
    public Volume volume() {
        return MILLILITRE.times(inBaseUnits);
    }

    /** As a count, rounded up; of a count only. */
    public int count() {
        return inBaseUnits.roundedUp();
    }

    private Share sameKind(Quantity other) {
        if (other.kind != kind) {
            throw new IllegalArgumentException(other.kind + " beside " + kind);
        }
        return other.inBaseUnits;
    }
}
