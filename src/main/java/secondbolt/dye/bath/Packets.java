package secondbolt.dye.bath;

import java.util.Optional;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;
import secondbolt.measure.Mass;
import secondbolt.measure.Plural;

/**
 * How many packets of dye.
 *
 * @param least at least
 * @param most at most; the same where the packet says it
 * @param source where that comes from
 */
public record Packets(int least, int most, String source) {
    private static final String ANSWERS = "a dyer's reference site, answers on household dye: ";

    private static final Mass POUND = Mass.parse("1 lb").orThrow();

    /** For so much fibre that takes: by her packet, or by what is published for blends. */
    static Optional<Packets> of(DyePlan plan, DyeClass kind, Mass takes) {
        Optional<Packets> hers =
                plan.packet()
                        .map(packet -> takes.of(packet.dyes()).roundedUp())
                        .map(count -> new Packets(count, count, "your packet"));
        return hers.isPresent() || kind != DyeClass.BLEND
                ? hers
                : plan.dye().depth().flatMap(depth -> blend(depth, takes));
    }

    private static Optional<Packets> blend(Depth depth, Mass takes) {
        int perPound = takes.of(POUND).roundedUp();
        return switch (depth) {
            case PALE, MEDIUM ->
                    Optional.of(
                            new Packets(
                                    perPound,
                                    perPound,
                                    ANSWERS + "one to a pound, pale to medium"));
            case BLACK ->
                    Optional.of(
                            new Packets(
                                    takes.plus(takes).of(POUND).roundedUp(),
                                    takes.plus(takes).plus(takes).plus(takes).of(POUND).roundedUp(),
                                    ANSWERS + "one to a half or a quarter pound, black"));
            case DARK -> Optional.empty();
        };
    }

    /** {@code 4 packets} or {@code 4 to 8 packets}. */
    public String words() {
        return (least == most ? "" : least + " to ") + Plural.of(most, "packet");
    }
}
