package secondbolt.task;

import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Volume;

/** How much of a thing is needed. */
public sealed interface Amount {
    /** Answers with the function for the kind of amount. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One answer for each kind of amount.
     *
     * @param <R> the answer
     */
    interface Visitor<R> {
        /** Answers for things that are counted. */
        R pieces(Pieces pieces);

        /** Answers for what is sold by length. */
        R run(Run run);

        /** Answers for what is weighed. */
        R weighed(Weighed weighed);

        /** Answers for a liquid. */
        R liquid(Liquid liquid);
    }

    /**
     * Things that are counted.
     *
     * @param count how many
     * @param each what one of them is, such as "spool of 100 m"; empty for the thing itself
     */
    record Pieces(int count, String each) implements Amount {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.pieces(this);
        }
    }

    /**
     * What is sold by length.
     *
     * @param length at least
     */
    record Run(Length length) implements Amount {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.run(this);
        }
    }

    /**
     * What is weighed.
     *
     * @param mass at least
     */
    record Weighed(Mass mass) implements Amount {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.weighed(this);
        }
    }

    /**
     * A liquid.
     *
     * @param volume at least
     */
    record Liquid(Volume volume) implements Amount {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.liquid(this);
        }
    }
}
