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
            Part part = within(PieceWords.of(piece.name()), parts);
            if (part != Part.ASSEMBLE || !joined.isSewn(piece.name())) {
                sewn.put(sewn.pieces, part, piece.name());
            }
        }
        sewn.line(pattern, parts, known);
        return sewn;
    }

    /**
     * The lining that is cut by the pieces of the outside: sewn up as far as they are before it,
     * then set in.
     */
    private void line(Pattern pattern, List<Part> parts, SeamParts known) {
        List<String> lined =
                pattern.pieces().stream().filter(SeamParts::isLined).map(Piece::name).toList();
        if (lined.isEmpty()) {
            return;
        }
        if (!parts.contains(Part.LINING)) {
            seams.computeIfAbsent(Part.ASSEMBLE, p -> new ArrayList<>())
                    .add("the same in the lining, which is then set in: " + names(lined));
            return;
        }
        List<Part> before = parts.subList(0, parts.indexOf(Part.LINING));
        for (Seam seam : pattern.seams()) {
            boolean isInLining = seam.edges().stream().allMatch(e -> lined.contains(e.piece()));
            if (isInLining && before.contains(within(known.of(seam), parts))) {
                put(seams, Part.LINING, SeamWords.of(seam));
            }
        }
        lined.forEach(name -> put(pieces, Part.LINING, name));
        lined.forEach(name -> put(pieces, Part.LINING_IN, name));
    }

    private static String names(List<String> names) {
        return String.join(", ", names);
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
            said.add("Seams: " + String.join("; ", seams.get(part)) + ".");
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
