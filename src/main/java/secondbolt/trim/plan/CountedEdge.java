package secondbolt.trim.plan;

import secondbolt.garment.PieceEdge;

/** An edge that a binding or an elastic goes along, as often as it is counted. */
public interface CountedEdge {
    /** Which. */
    PieceEdge edge();

    /** How often it is counted. */
    int count();

    /** How often the garment has it. */
    int rounds();
}
