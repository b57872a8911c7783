package secondbolt.lay.plan;

import secondbolt.measure.Length;

/**
 * What stiffens the pieces that are cut of interfacing.
 *
 * @param width it is sold in
 * @param isNonwoven whether it has no grain, so that pieces may lie any way
 */
public record Interfacing(Length width, boolean isNonwoven) {}
