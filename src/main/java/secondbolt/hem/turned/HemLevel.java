package secondbolt.hem.turned;

import java.util.Optional;
import secondbolt.measure.Length;

/**
 * A worn hem made level from the floor.
 *
 * @param fold how high above the floor its fold stands
 * @param every how far apart its marks are, along the fold
 * @param marks how many it needs all round
 * @param trim how high above the floor the allowance is trimmed; nothing where it would touch the
 *     floor or where nothing is turned up
 */
public record HemLevel(Length fold, Length every, int marks, Optional<Length> trim) {}
