package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.shape.Point;

/**
 * At which height of each piece the lowest point of the armholes lies. A piece without an armhole,
 * as the centre of a front in panels, has it from what it is sewn to down its length: as far above
 * the lower end of the seam on the one side as on the other. Derived.
 *
 * @param pattern the pieces belong to
 */
record UnderarmLevels(Pattern pattern) {
    /**
     * The heights, in millimetres from the origin of each piece, by its name; those of which no
     * join tells are left out.
     */
    Map<String, Double> of(List<SewnPiece> round) {
        Map<String, SewnPiece> pieces = new LinkedHashMap<>();
        Map<String, Double> levels = new LinkedHashMap<>();
        for (SewnPiece piece : round) {
            pieces.put(piece.piece().name(), piece);
            piece.edge(Serves.ARMHOLE)
                    .ifPresent(e -> levels.put(piece.piece().name(), piece.bottomMm(e)));
        }
        int known = -1;
        while (known < levels.size()) {
            known = levels.size();
            pattern.seams().forEach(seam -> follow(seam, pieces, levels));
        }
        return levels;
    }

    private static void follow(
            Seam seam, Map<String, SewnPiece> pieces, Map<String, Double> levels) {
        Optional<PieceEdge> one = single(seam.first().value());
        Optional<PieceEdge> two = single(seam.second().value());
        if (one.isPresent() && two.isPresent()) {
            follow(one.get(), two.get(), pieces, levels);
            follow(two.get(), one.get(), pieces, levels);
        }
    }

    private static Optional<PieceEdge> single(EdgeSum side) {
        return side.terms().size() == 1
                ? Optional.of(side.terms().get(0).edge())
                : Optional.empty();
    }

    private static void follow(
            PieceEdge from,
            PieceEdge to,
            Map<String, SewnPiece> pieces,
            Map<String, Double> levels) {
        SewnPiece known = pieces.get(from.piece());
        SewnPiece asked = pieces.get(to.piece());
        if (known == null
                || asked == null
                || !levels.containsKey(from.piece())
                || levels.containsKey(to.piece())
                || !known.isDown(from.edge())
                || !asked.isDown(to.edge())) {
            return;
        }
        aboveMm(fromBelow(known, from.edge()), levels.get(from.piece()))
                .flatMap(mm -> levelMm(fromBelow(asked, to.edge()), mm))
                .ifPresent(yMm -> levels.put(to.piece(), yMm));
    }

    private static List<Point> fromBelow(SewnPiece piece, String edge) {
        List<Point> line = new ArrayList<>(piece.line(edge));
        if (line.get(0).yMm() < line.get(line.size() - 1).yMm()) {
            Collections.reverse(line);
        }
        return line;
    }

    /** How far along a line a height lies; nothing if it does not come there. */
    private static Optional<Double> aboveMm(List<Point> line, double yMm) {
        double alongMm = 0;
        for (int i = 1; i < line.size(); i++) {
            Point a = line.get(i - 1);
            Point b = line.get(i);
            double partMm = a.distanceMm(b);
            if (Math.min(a.yMm(), b.yMm()) <= yMm && Math.max(a.yMm(), b.yMm()) >= yMm) {
                boolean isLevel = a.yMm() == b.yMm();
                double share = isLevel ? 0 : (yMm - a.yMm()) / (b.yMm() - a.yMm());
                return Optional.of(alongMm + share * partMm);
            }
            alongMm += partMm;
        }
        return Optional.empty();
    }

    /** The height so far along a line; nothing beyond its end. */
    private static Optional<Double> levelMm(List<Point> line, double mm) {
        double leftMm = mm;
        for (int i = 1; i < line.size(); i++) {
            Point a = line.get(i - 1);
            Point b = line.get(i);
            double partMm = a.distanceMm(b);
            if (leftMm <= partMm && partMm > 0) {
                return Optional.of(a.yMm() + leftMm / partMm * (b.yMm() - a.yMm()));
            }
            leftMm -= partMm;
        }
        return Optional.empty();
    }
}
