package secondbolt.file.svg;

import secondbolt.file.source.Place;
import secondbolt.shape.EdgeLine;

/**
 * One edge of a drawing.
 *
 * @param name as the drawing names it, such as {@code centre front}
 * @param line in millimetres
 * @param place where its element begins in the file
 */
public record TracedEdge(String name, EdgeLine line, Place place) {
    TracedEdge with(EdgeLine other) {
        return new TracedEdge(name, other, place);
    }
}
