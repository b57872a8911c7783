package secondbolt.wearer;

/**
 * What may be told of the finished garment: at a measurement of the body, or a length of its own.
 */
public sealed interface FinishedMeasure permits BodyMeasure, GarmentLength {
    /** Its name, as written in the project file. */
    String word();
}
