package secondbolt.file.value;

import secondbolt.file.source.Place;

/**
 * A value with the place it was read from, so that a topic's own check can point at it. Two are
 * equal if their values are: a line put in above moves every place and changes nothing.
 *
 * @param value what was read
 * @param place where it stands
 */
public record Placed<T>(T value, Place place) {
    @Override
    public boolean equals(Object other) {
        return other instanceof Placed<?> placed && value.equals(placed.value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }
}
