package secondbolt.file.value;

import secondbolt.file.source.Place;

/**
 * A mistake that a topic found in what is written.
 *
 * @param place where it stands
 * @param found what was found
 * @param right what would be right
 */
public record Trouble(Place place, String found, String right) {}
