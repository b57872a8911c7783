package secondbolt.lay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.garment.Role;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.design.PinnedNames;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.Lies;
import secondbolt.lay.plan.Placing;
import secondbolt.lay.stock.Pinned;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What a maker should know of the places she has pinned: which are no longer kept, and why.
 *
 * @param result the designs
 * @param pieces all of the pattern, by name
 * @param alterations as they are now
 * @param tape to print with
 */
record PinFindings(
        LayResult result, Map<String, Piece> pieces, List<Alteration> alterations, Tape tape) {
    private static final String PIN = "`secondbolt pin` writes the new place into the plan.";

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        LayPlan plan = result.plan().namedBy(pieces.keySet());
        plan.pinned().forEach(pin -> unknown(pin, findings));
        copies(plan, findings);
        plan.pinned().stream()
                .filter(pin -> pin.altered().filter(had -> !had.equals(alterations)).isPresent())
                .findFirst()
                .ifPresent(pin -> findings.add(alteredSince()));
        for (StockLay stock : result.made().stocks()) {
            Set<String> left =
                    Set.copyOf(
                            stock.leftOver().stream().map(piece -> piece.piece().name()).toList());
            stock.pinned().misfits().forEach(m -> findings.add(misfit(m, left)));
            stock.pinned().near().forEach(n -> findings.add(near(n)));
        }
        return List.copyOf(findings);
    }

    private static Finding finding(String code, Placing pin, Level level, String text, String to) {
        return new Finding(code, new Subject.Piece(pin.piece().value()), level, text, to);
    }

    /** Of a piece, a cloth or a role that is not there. */
    private void unknown(Placing pin, List<Finding> findings) {
        new PinnedNames(result.cloths(), pieces)
                .whyNothing(pin)
                .ifPresent(
                        why ->
                                findings.add(
                                        finding(
                                                "pin-names-nothing",
                                                pin,
                                                Level.WARNING,
                                                pin.words()
                                                        + " is pinned and passed over: "
                                                        + why
                                                        + ".",
                                                "Correct its name or its cloth in `plan.yaml`, or"
                                                        + " pin again: `secondbolt pin` takes it"
                                                        + " out.")));
    }

    /** Copies that the pattern does not have, or that stand there twice, are taken for others. */
    private void copies(LayPlan plan, List<Finding> findings) {
        PinnedNames names = new PinnedNames(result.cloths(), pieces);
        Set<String> seen = new HashSet<>();
        for (Placing one : Stream.concat(plan.soFar().stream(), plan.pinned().stream()).toList()) {
            if (one.isSpoilt() || one.copy().isEmpty() || names.whyNothing(one).isPresent()) {
                continue;
            }
            Role role = names.role(one).orElseThrow();
            int count = pieces.get(one.piece().value()).cuts().get(role).count();
            int last = one.copy().get() + (one.lies().layer() == Lies.Layer.BOTH ? 1 : 0);
            boolean isNew = true;
            for (int copy = one.copy().get(); copy <= last; copy++) {
                isNew &= seen.add(one.piece().value() + "\n" + role + "\n" + copy);
            }
            if (one.copy().get() < 1 || last > count) {
                findings.add(copy(one, "pin-no-such-copy", "and the pattern has " + count));
            } else if (!isNew) {
                findings.add(copy(one, "pin-copy-twice", "more than once"));
            }
        }
    }

    private static Finding copy(Placing one, String code, String what) {
        return finding(
                code,
                one,
                Level.CAUTION,
                one.words() + " stands in the plan, " + what + ": it is taken for another copy.",
                "Correct the number behind its name in `plan.yaml` or under `cut so far`.");
    }

    /** What is ticked then would count as cut in the shape it was pinned in. */
    private Finding alteredSince() {
        return new Finding(
                "pin-altered-since",
                new Subject.Design(result.made().name()),
                Level.WARNING,
                "The pattern was altered after the plan was pinned: what is ticked in it now counts"
                        + " as cut before that.",
                "Before you cut, pin again: `secondbolt pin` writes into the plan what each piece"
                        + " is altered by.");
    }

    private Finding misfit(Pinned.Misfit misfit, Set<String> left) {
        Placing pin = misfit.placing();
        String head = pin.words() + " is pinned " + place(pin) + " and cannot stay there: ";
        if (misfit.why() == Pinned.Why.NOT_NEEDED) {
            return finding(
                    "pin-not-needed",
                    pin,
                    Level.CAUTION,
                    pin.words()
                            + " is pinned "
                            + place(pin)
                            + ", and as many as the pattern has are cut or pinned elsewhere.",
                    "Take its lines out of `plan.yaml`; or pin again, which does so.");
        }
        boolean isLeft = left.contains(pin.piece().value());
        return finding(
                "pin-let-go",
                pin,
                Level.WARNING,
                head + why(misfit) + (isLeft ? "." : ". It is laid anew."),
                remedy(misfit.why())
                        + (isLeft
                                ? "No other room was found for it."
                                : "Print the cutting plan again before you cut. " + PIN));
    }

    private String place(Placing pin) {
        LayWords words = new LayWords(tape);
        String from = pin.lies().layer().isFolded() ? " from the fold and " : " from the left and ";
        boolean isOnFold = pin.lies().layer() == Lies.Layer.ON_FOLD;
        return (isOnFold ? "on the fold, " : words.length(pin.at().xMm()) + from)
                + words.length(pin.at().yMm())
                + " from the top of "
                + pin.cloth().value();
    }

    private static String why(Pinned.Misfit misfit) {
        return switch (misfit.why()) {
            case NOT_NEEDED -> "it is not needed";
            case LAYERS -> "the cloth is not spread in those layers now";
            case HAND -> "what is still to be cut of it is of the other hand";
            case GRAIN -> "its grain, or the nap of the cloth, does not allow that turn";
            case FOLD -> "it does not lie along the fold as it must";
            case FEATURE -> "it is made of a feature of the cloth and does not lie along it";
            case EDGE -> "it reaches beyond the edge of the cloth";
            case CUT -> "something is cut there already";
            case FLAW -> "it lies on a flaw, or on cloth too worn for it";
            case OVERLAP -> "it reaches into " + misfit.other();
            case CLOTH -> "the size of that cloth is not known, or none of it is sound";
            case MATCH_CUT ->
                    "the pattern of the cloth does not run on into it from "
                            + misfit.other()
                            + ", which is cut";
            case MATCH ->
                    misfit.other().isEmpty()
                            ? "the pattern of the cloth does not run on into what it is sewn to"
                            : "the pattern of the cloth must run on into "
                                    + misfit.other()
                                    + ", which does not keep its place";
        };
    }

    private static String remedy(Pinned.Why why) {
        return switch (why) {
            case GRAIN -> "If you mean it, write `grain: any` with it under `pieces` of `lay`. ";
            case HAND ->
                    "If it shall lie there, turn the pattern over: `lies` says which side is up. ";
            default -> "";
        };
    }

    private Finding near(Pinned.Near near) {
        return finding(
                "pin-near",
                near.placing(),
                Level.CAUTION,
                near.placing().words()
                        + " and "
                        + near.other()
                        + " are pinned nearer to each other than the gap of "
                        + tape.printSmall(result.plan().gapOrUsual())
                        + ".",
                "Cut exactly on the line between them; or write another `at` in `plan.yaml`.");
    }
}
