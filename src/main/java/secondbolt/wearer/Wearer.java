package secondbolt.wearer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.value.Answer;
import secondbolt.measure.Length;

/**
 * Who wears the garment, as the maker wrote it.
 *
 * @param age if told; never to be taken as adult when it is not
 * @param measurements of the body, by what is measured
 */
public record Wearer(Optional<Age> age, Map<BodyMeasure, Answer<Length>> measurements) {
    /** Copies the measurements in their order. */
    public Wearer {
        measurements = Collections.unmodifiableMap(new LinkedHashMap<>(measurements));
    }

    /**
     * An age.
     *
     * @param years completed, from 0 for under one to 120; nothing for a grown person who did not
     *     say
     */
    public record Age(Optional<Integer> years) {
        /** Checks the years. */
        public Age {
            if (years.filter(y -> y < 0 || y > 120).isPresent()) {
                throw new IllegalArgumentException("years must be 0 to 120, were " + years.get());
            }
        }

        /** A grown person. */
        public static Age adult() {
            return new Age(Optional.empty());
        }

        /** So many completed years. */
        public static Age ofYears(int years) {
            return new Age(Optional.of(years));
        }

        /** Whether fewer years are completed; never of a grown person. */
        public boolean isUnder(int limit) {
            return years.filter(y -> y < limit).isPresent();
        }
    }

    /** A measurement, if it was told and is known. */
    public Optional<Length> measure(BodyMeasure measure) {
        return Optional.ofNullable(measurements.get(measure)).flatMap(Answer::toOptional);
    }
}
