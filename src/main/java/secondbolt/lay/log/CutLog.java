package secondbolt.lay.log;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.garment.Role;
import secondbolt.lay.piece.FoldedPieces;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.plan.Lies;
import secondbolt.lay.plan.Placing;
import secondbolt.lay.stock.CuttingProgress;
import secondbolt.measure.Tape;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What a maker should know of the pieces she has cut before she cuts on: hands first, then counts,
 * then where each was cut.
 *
 * @param progress what is cut
 * @param cloths all there are
 * @param tape to print with
 */
public record CutLog(CuttingProgress progress, List<ClothResult> cloths, Tape tape) {
    /** Copies the cloths. */
    public CutLog {
        cloths = List.copyOf(cloths);
    }

    /** All of it; nothing if every piece can have been cut as it is written. */
    public List<Finding> findings() {
        List<Finding> hands = new ArrayList<>();
        List<Finding> counts = new ArrayList<>();
        for (Role role : Role.values()) {
            List<Placing> cuts = progress.sound(role);
            Set<String> names = new LinkedHashSet<>();
            cuts.forEach(cut -> names.add(cut.piece().value()));
            for (String name : names) {
                List<Placing> own =
                        cuts.stream().filter(cut -> cut.piece().value().equals(name)).toList();
                Wanted wanted = wanted(name, role);
                count(wanted, role, own.size()).ifPresent(counts::add);
                hand(wanted, own).ifPresent(hands::add);
            }
        }
        List<Finding> findings = new ArrayList<>(hands);
        findings.addAll(counts);
        for (ClothResult cloth : cloths) {
            List<Placing> here =
                    progress.cut().stream()
                            .filter(cut -> cut.cloth().value().equals(cloth.name()))
                            .toList();
            findings.addAll(places(cloth, here));
        }
        return List.copyOf(findings);
    }

    private List<Finding> places(ClothResult cloth, List<Placing> here) {
        if (here.isEmpty()) {
            return List.of();
        }
        if (cloth.finished().isEmpty()) {
            return List.of(
                    new Finding(
                            "cut-place-not-known",
                            cloth.subject(),
                            Level.CAUTION,
                            "What is cut of this cloth counts as cut, but where it was cut is not"
                                    + " checked: its finished size is not known.",
                            "Measure it and its shrinkage, as told with the cloth."));
        }
        return new CutPlaces(progress, cloth, here, tape).findings();
    }

    /** How many of each hand the pattern has of a role. */
    private Wanted wanted(String name, Role role) {
        Optional<LayPiece> like =
                progress.copies().stream()
                        .filter(piece -> piece.piece().name().equals(name))
                        .findFirst();
        Optional<Piece.Cut> cut =
                like.flatMap(piece -> Optional.ofNullable(piece.piece().cuts().get(role)));
        int count = cut.map(Piece.Cut::count).orElse(0);
        int faceDown = cut.filter(Piece.Cut::mirrored).isPresent() ? count / 2 : 0;
        return new Wanted(
                name,
                count - faceDown,
                faceDown,
                like.filter(FoldedPieces::isItsOwnMirrorImage).isPresent());
    }

    /**
     * What the pattern has of a piece.
     *
     * @param name of the piece
     * @param faceUp how many are cut with the pattern face up
     * @param faceDown how many are its mirror image
     * @param hasNoHand whether one is cut like the other
     */
    private record Wanted(String name, int faceUp, int faceDown, boolean hasNoHand) {
        int all() {
            return faceUp + faceDown;
        }

        int of(boolean mirrored) {
            return mirrored ? faceDown : faceUp;
        }
    }

    /** More cut than the pattern has, or of a cloth that it is not cut of at all. */
    private static Optional<Finding> count(Wanted wanted, Role role, int has) {
        if (has <= wanted.all()) {
            return Optional.empty();
        }
        String needs = wanted.all() == 0 ? "none" : Integer.toString(wanted.all());
        String remedy =
                wanted.all() == 0
                        ? "If it was cut of another cloth, correct `cloth`; if it is meant, name "
                                + role
                                + " under its `cut` in the pattern."
                        : "If one of them is written twice, take a line away; if one was cut again"
                                + " because something went wrong, write `spoilt: yes` with the one"
                                + " that went wrong.";
        return Optional.of(
                new Finding(
                        "cut-too-many",
                        new Subject.Piece(wanted.name()),
                        Level.WARNING,
                        wanted.name()
                                + " is cut "
                                + times(has)
                                + " of "
                                + role
                                + " cloth; the pattern has "
                                + needs
                                + ".",
                        remedy));
    }

    /** More of one hand than the pattern has, though not too many in all, or none of that hand. */
    private static Optional<Finding> hand(Wanted wanted, List<Placing> cuts) {
        for (boolean mirrored : List.of(false, true)) {
            int has =
                    (int)
                            cuts.stream()
                                    .filter(c -> c.servesMirrored() == mirrored)
                                    .filter(c -> !wanted.hasNoHand() || !isBelow(c))
                                    .count();
            boolean isTooMany = has > wanted.of(mirrored) && has <= wanted.all();
            boolean hasNone = has > 0 && wanted.of(mirrored) == 0 && wanted.all() > 0;
            if (isTooMany || hasNone) {
                return Optional.of(hand(wanted, mirrored, has));
            }
        }
        return Optional.empty();
    }

    /** From folded cloth the one below is the mirror image, as it was planned. */
    private static boolean isBelow(Placing cut) {
        return cut.lies().layer() == Lies.Layer.LOWER;
    }

    private static Finding hand(Wanted wanted, boolean mirrored, int has) {
        String text =
                wanted.name()
                        + " is cut "
                        + times(has)
                        + " of one hand ("
                        + side(mirrored)
                        + "); the pattern has "
                        + wanted.of(mirrored)
                        + " of that hand and "
                        + wanted.of(!mirrored)
                        + " of the other.";
        Subject piece = new Subject.Piece(wanted.name());
        return wanted.hasNoHand()
                ? new Finding(
                        "cut-of-one-hand",
                        piece,
                        Level.CAUTION,
                        text
                                + " Its cutting line is its own mirror image, so one serves as the"
                                + " other.",
                        "Mark notches and darts of "
                                + (has - wanted.of(mirrored))
                                + " with the paper piece turned over, and write `turned over: yes`"
                                + " with it.")
                : new Finding(
                        "cut-of-one-hand",
                        piece,
                        Level.STOP,
                        text,
                        "If one of them was cut with the paper piece the other way up, correct"
                                + " `mirrored`. If the cloth looks the same on both sides, turn one"
                                + " over and write `turned over: yes` with it. Else write `spoilt:"
                                + " yes` with one: it is planned anew, and smaller pieces may be"
                                + " cut from it.");
    }

    private static String side(boolean mirrored) {
        return mirrored ? "pattern face down" : "pattern face up";
    }

    private static String times(int count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }
}
