package secondbolt.lay.plan;

import java.math.BigDecimal;
import java.util.Optional;
import secondbolt.measure.Length;

/**
 * Cloth as a shop sells it, to compare with.
 *
 * @param width of the bolt
 * @param price of a metre, or of a yard where the tape is in inches, if told
 */
public record NewCloth(Length width, Optional<BigDecimal> price) {}
