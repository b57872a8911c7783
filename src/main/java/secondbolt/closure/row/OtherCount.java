package secondbolt.closure.row;

/**
 * How a closure would come out with so many fasteners.
 *
 * @param count how many
 * @param row how they would lie
 */
public record OtherCount(int count, FastenerRow row) {}
