package secondbolt.fit.made;

import java.util.Optional;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;

/**
 * One measure of the finished garment.
 *
 * @param what it is, in words
 * @param of where it is measured round; nothing for a length
 * @param before as drawn
 * @param after with the alterations
 */
public record Made(String what, Optional<Serves> of, Length before, Length after) {}
