package secondbolt.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import secondbolt.garment.Role;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/** What is asked of a piece of which several are cut for the same hand. */
final class HandFinding {
    private HandFinding() {}

    static Finding of(Piece piece) {
        return new Finding(
                "cut-one-hand",
                new Subject.Piece(piece.name()),
                Finding.Level.WARNING,
                piece.name()
                        + " is not its own mirror image, and all of its copies are cut as drawn: no"
                        + " left and right.",
                isEven(piece)
                        ? "Is it one for each side? Write "
                                + line(piece, HandFinding::paired)
                                + ". If all of one hand are meant, write "
                                + line(piece, HandFinding::alike)
                                + "."
                        : "If all of one hand are meant, write "
                                + line(piece, HandFinding::alike)
                                + "; if not, write an even number as pairs, or two pieces.");
    }

    private static boolean isAsked(Piece.Cut cut) {
        return cut.count() > 1 && cut.hands() == Piece.Hands.NOT_TOLD;
    }

    private static boolean isEven(Piece piece) {
        return piece.cuts().values().stream()
                .filter(HandFinding::isAsked)
                .allMatch(cut -> cut.count() % 2 == 0);
    }

    private static String paired(Piece.Cut cut) {
        return cut.count() == 2 ? "pair" : cut.count() / 2 + " pairs";
    }

    private static String alike(Piece.Cut cut) {
        return cut.count() + " alike";
    }

    /** The whole line as she would write it; cloths of which one is cut stay as they are. */
    private static String line(Piece piece, Function<Piece.Cut, String> asked) {
        List<String> cuts = new ArrayList<>();
        for (Map.Entry<Role, Piece.Cut> cut : piece.cuts().entrySet()) {
            cuts.add(cut.getKey().word() + ": " + written(cut.getValue(), asked));
        }
        boolean isMainAlone = piece.cuts().keySet().equals(Set.of(Role.MAIN));
        return isMainAlone
                ? "`cut: " + written(piece.cuts().get(Role.MAIN), asked) + "`"
                : "`cut: {" + String.join(", ", cuts) + "}`";
    }

    private static String written(Piece.Cut cut, Function<Piece.Cut, String> asked) {
        if (isAsked(cut)) {
            return asked.apply(cut);
        }
        if (cut.mirrored()) {
            return paired(cut);
        }
        return cut.hands() == Piece.Hands.ALIKE ? alike(cut) : Integer.toString(cut.count());
    }
}
