package secondbolt.textile;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.measure.Length;
import secondbolt.measure.Share;

/** How the cloth changed, or will change, in the wash. */
public sealed interface Prewash {
    /**
     * What share of its length is left each way; nothing where it is not known.
     *
     * <p>Source: ISO 5077:2007, dimensional change (B − A) / A, A before and B after; the share
     * left is B / A.
     */
    AcrossAlong<Optional<Share>> left();

    /** The square as it was marked, where it was and is known. */
    default AcrossAlong<Optional<Length>> square() {
        return new AcrossAlong<>(Optional.empty(), Optional.empty());
    }

    /**
     * A square marked before the wash and measured again after it, and perhaps after more washes.
     *
     * @param marked before
     * @param now after the first wash
     * @param then after each further one, in order
     */
    record Marked(
            AcrossAlong<Answer<Length>> marked,
            AcrossAlong<Answer<Length>> now,
            List<AcrossAlong<Answer<Length>>> then)
            implements Prewash {
        /** Copies the list. */
        public Marked {
            then = List.copyOf(then);
        }

        /** What is left of the square as marked at its last measuring. */
        @Override
        public AcrossAlong<Optional<Share>> left() {
            AcrossAlong<Answer<Length>> last = then.isEmpty() ? now : then.get(then.size() - 1);
            return new AcrossAlong<>(
                    left(marked.across(), last.across()), left(marked.along(), last.along()));
        }

        /** The square at each measuring: as marked, and after each wash. */
        public List<AcrossAlong<Optional<Length>>> squares() {
            return Stream.concat(Stream.of(marked, now), then.stream())
                    .map(square -> square.map(Answer::toOptional))
                    .toList();
        }

        @Override
        public AcrossAlong<Optional<Length>> square() {
            return marked.map(Answer::toOptional);
        }

        private static Optional<Share> left(Answer<Length> before, Answer<Length> after) {
            return after.with(before, Share::left).toOptional();
        }
    }

    /** Washed before it was measured. */
    record Done() implements Prewash {
        @Override
        public AcrossAlong<Optional<Share>> left() {
            return new AcrossAlong<>(Optional.of(Share.WHOLE), Optional.of(Share.WHOLE));
        }
    }

    /**
     * Never washed, such as wool that is cleaned dry: as measured it is cut and worn. What steam
     * and a damp press cloth do is told beside it (common practice, no source).
     */
    record Never() implements Prewash {
        @Override
        public AcrossAlong<Optional<Share>> left() {
            return new Done().left();
        }
    }

    /** She does not know. */
    record NotKnown() implements Prewash {
        @Override
        public AcrossAlong<Optional<Share>> left() {
            return new AcrossAlong<>(Optional.empty(), Optional.empty());
        }
    }
}
