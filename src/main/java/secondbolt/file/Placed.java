package secondbolt.file;

import secondbolt.file.source.Place;

/**
 * A value with the place it was read from, so that a topic's own check can point at it.
 *
 * @param value what was read
 * @param place where it stands
 */
public record Placed<T>(T value, Place place) {}
