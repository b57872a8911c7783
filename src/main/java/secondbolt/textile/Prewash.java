package secondbolt.textile;

import java.util.Optional;
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
     * A square marked before the wash and measured again after it.
     *
     * @param marked before
     * @param now after
     */
    record Marked(AcrossAlong<Answer<Length>> marked, AcrossAlong<Answer<Length>> now)
            implements Prewash {
        @Override
        public AcrossAlong<Optional<Share>> left() {
            return new AcrossAlong<>(
                    left(marked.across(), now.across()), left(marked.along(), now.along()));
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
