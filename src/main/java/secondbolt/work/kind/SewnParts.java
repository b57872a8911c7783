package secondbolt.work.kind;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.pattern.JoinedPieces;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * What each part of the work has to sew, so that nothing is missing: a seam that no part of the
 * kind sews stands with what is left.
 *
 * @param seams in words, by part
 * @param pieces names of small pieces that no written seam joins, by part
 */
record SewnParts(Map<Part, List<String>> seams, Map<Part, List<String>> pieces) {
    /** The parts of a pattern's seams and of its small pieces, within a kind's. */
    static SewnParts of(Pattern pattern, List<Part> parts) {
        SewnParts sewn = new SewnParts(new EnumMap<>(Part.class), new EnumMap<>(Part.class));
        SeamParts known = new SeamParts(pattern);
        for (Seam seam : pattern.seams()) {
            Part part = within(known.of(seam), parts);
            sewn.put(sewn.seams, part, SeamWords.of(seam));
            if (seam.isGathered() && parts.contains(Part.GATHER)) {
                sewn.put(sewn.pieces, Part.GATHER, SeamWords.side(seam.first().value()));
            }
        }
        JoinedPieces joined = JoinedPieces.of(pattern);
        for (Piece piece : pattern.pieces()) {
            if (!joined.isSewn(piece.name())) {
                sewn.put(sewn.pieces, within(PieceWords.of(piece.name()), parts), piece.name());
            }
        }
        return sewn;
    }

    private static Part within(Optional<Part> part, List<Part> parts) {
        Optional<Part> same = part.filter(parts::contains);
        boolean isWidth = part.filter(p -> p == Part.GORES).isPresent();
        return same.or(() -> Optional.of(Part.WIDTHS).filter(w -> isWidth && parts.contains(w)))
                .orElse(Part.ASSEMBLE);
    }

    private void put(Map<Part, List<String>> where, Part part, String what) {
        where.computeIfAbsent(part, p -> new ArrayList<>()).add(what);
    }

    boolean has(Part part) {
        return seams.containsKey(part) || pieces.containsKey(part);
    }

    /** What to sew in a part, in sentences; empty if there is nothing to name. */
    String words(Part part) {
        List<String> said = new ArrayList<>();
        if (seams.containsKey(part)) {
            said.add("Sew " + String.join("; ", seams.get(part)) + ".");
        }
        if (pieces.containsKey(part)) {
            String what =
                    switch (part) {
                        case ASSEMBLE -> "No written seam joins ";
                        case GATHER -> "Gather ";
                        default -> "Pieces: ";
                    };
            said.add(what + String.join(part == Part.GATHER ? "; " : ", ", pieces.get(part)) + ".");
        }
        return String.join(" ", said);
    }
}
