package secondbolt.lay.search;

import java.util.List;
import java.util.OptionalInt;

/**
 * One way in which a figure may lie.
 *
 * @param turnDegrees by how much it is turned about its origin, from across towards along
 * @param isMirrored whether it is turned over first, left to right
 * @param across where its origin may lie across
 * @param along where its origin may lie along
 * @param bed the number of the only bed it may lie on so; nothing if on any
 */
public record Way(int turnDegrees, boolean isMirrored, Rail across, Rail along, OptionalInt bed) {
    /** Turned, with the side up it is drawn with, anywhere. */
    public static Way turned(int degrees) {
        return new Way(degrees, false, Rail.ANYWHERE, Rail.ANYWHERE, OptionalInt.empty());
    }

    /** Turned by one of these, anywhere. */
    public static List<Way> turned(List<Integer> degrees) {
        return degrees.stream().map(Way::turned).toList();
    }

    /** The same on these rails. */
    public Way on(Rail newAcross, Rail newAlong) {
        return new Way(turnDegrees, isMirrored, newAcross, newAlong, bed);
    }

    /** The same turned over. */
    public Way mirrored() {
        return new Way(turnDegrees, !isMirrored, across, along, bed);
    }

    /** The same on one bed only. */
    public Way onBed(int number) {
        return new Way(turnDegrees, isMirrored, across, along, OptionalInt.of(number));
    }

    /** Whether it may lie on a bed so. */
    boolean mayUse(int number) {
        return bed.isEmpty() || bed.getAsInt() == number;
    }
}
