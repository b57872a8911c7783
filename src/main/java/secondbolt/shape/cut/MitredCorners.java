package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * The corners of an outline at which two turned-up edges meet on a mitre.
 *
 * <p>Derived: a mitre takes from the line an edge lands on as much as the crossing of both landing
 * lines lies along that edge. Where that is all of the edge or more, as of 3 cm beside a hem of 8
 * cm, or where the mitres at both its ends take all of it together, nothing would be left to sew
 * down: there is no mitre then, and one hem is folded over the other.
 *
 * @param all whether there is a mitre, for each edge at its start
 */
record MitredCorners(List<Boolean> all) {
    /** So much is left at least of the line an edge lands on; less cannot be sewn. */
    private static final double LEAST_LEFT_MM = 1;

    MitredCorners {
        all = List.copyOf(all);
    }

    /** Whether both edges end on a mitre where an edge starts. */
    boolean isMitred(int number) {
        return all.get(number);
    }

    /**
     * The corners of an outline.
     *
     * @param depthsMm how deep each edge is turned up; zero of one that is not
     * @param way 1 if the piece lies to the right, -1 if to the left
     */
    static MitredCorners of(List<EdgeLine> outline, List<Double> depthsMm, int way) {
        int count = outline.size();
        List<Ends> edges = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int before = (i + count - 1) % count;
            int after = (i + 1) % count;
            edges.add(
                    new Ends(
                            corner(outline.get(i), outline.get(before), true, way)
                                    .takes(depthsMm.get(i), depthsMm.get(before)),
                            corner(outline.get(i), outline.get(after), false, way)
                                    .takes(depthsMm.get(i), depthsMm.get(after)),
                            outline.get(i).lengthMm() - LEAST_LEFT_MM));
        }
        boolean[] mitred = new boolean[count];
        for (int i = 0; i < count; i++) {
            Ends before = edges.get((i + count - 1) % count);
            Ends here = edges.get(i);
            mitred[i] =
                    here.start().isMeeting()
                            && here.start().mitredMm() < here.roomMm()
                            && before.end().mitredMm() < before.roomMm();
        }
        boolean[] alone = mitred.clone();
        for (int i = 0; i < count; i++) {
            int after = (i + 1) % count;
            if (!edges.get(i).fit(alone[i], alone[after])) {
                mitred[i] = false;
                mitred[after] = false;
            }
        }
        List<Boolean> all = new ArrayList<>();
        for (boolean is : mitred) {
            all.add(is);
        }
        return new MitredCorners(all);
    }

    /**
     * What both ends take of the line an edge lands on.
     *
     * @param start at its start
     * @param end at its end
     * @param roomMm how much they may take together
     */
    private record Ends(Takes start, Takes end, double roomMm) {
        boolean fit(boolean isStartMitred, boolean isEndMitred) {
            return start.takesMm(isStartMitred) + end.takesMm(isEndMitred) < roomMm;
        }
    }

    /**
     * What an end takes; below zero if it adds.
     *
     * @param isMeeting whether the neighbour is turned up too
     * @param mitredMm on a mitre
     * @param plainMm on the neighbour itself
     */
    private record Takes(boolean isMeeting, double mitredMm, double plainMm) {
        double takesMm(boolean isMitred) {
            return isMitred ? mitredMm : plainMm;
        }
    }

    /**
     * An edge where it meets a neighbour.
     *
     * @param here the end of the edge
     * @param there the same place on the neighbour
     * @param isStart whether it is the edge's start
     * @param way 1 if the piece lies to the right, -1 if to the left
     */
    private record Corner(
            TurnedPart.Sample here, TurnedPart.Sample there, boolean isStart, int way) {
        Takes takes(double depthMm, double otherMm) {
            if (depthMm <= 0) {
                return new Takes(false, 0, 0);
            }
            boolean isMeeting = otherMm > 0;
            double mitred =
                    isMeeting
                            ? alongMm(Mitre.crossing(here, there, way, depthMm, otherMm))
                            : plainMm(depthMm);
            return new Takes(isMeeting, mitred, plainMm(depthMm));
        }

        /** Along the neighbour, straight on, until it lies so deep inside the edge. */
        private double plainMm(double depthMm) {
            double away = isStart ? -1 : 1;
            Point inward = TurnedEdge.inward(here.direction(), way);
            double x = away * there.direction().xMm();
            double y = away * there.direction().yMm();
            double in = x * inward.xMm() + y * inward.yMm();
            double far = in > 1e-3 ? depthMm / in : 0;
            return alongMm(here.at().moved(x * far, y * far));
        }

        /** How far into the edge a place lies, along it. */
        private double alongMm(Point to) {
            double along =
                    (to.xMm() - here.at().xMm()) * here.direction().xMm()
                            + (to.yMm() - here.at().yMm()) * here.direction().yMm();
            return isStart ? along : -along;
        }
    }

    private static Corner corner(EdgeLine edge, EdgeLine neighbour, boolean isStart, int way) {
        return isStart
                ? new Corner(start(edge), end(neighbour), true, way)
                : new Corner(end(edge), start(neighbour), false, way);
    }

    private static TurnedPart.Sample start(EdgeLine edge) {
        return new TurnedPart.Sample(edge.start(), edge.directionAt(0), 0);
    }

    private static TurnedPart.Sample end(EdgeLine edge) {
        double length = edge.lengthMm();
        return new TurnedPart.Sample(edge.end(), edge.directionAt(length), length);
    }
}
