package secondbolt.sewing.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Answer;
import secondbolt.measure.Tape;
import secondbolt.sewing.plan.Finish;
import secondbolt.sewing.plan.Fraying;
import secondbolt.sewing.seam.JoinLine;

/**
 * Whether a finish suits a seam.
 *
 * @param cloths that are sewn
 * @param frays how the cloth frays, if she knows
 * @param tape to measure with
 */
public record FinishAdvice(List<SewnCloth> cloths, Answer<Fraying> frays, Tape tape) {
    /** Copies the cloths. */
    public FinishAdvice {
        cloths = List.copyOf(cloths);
    }

    /** Why a finish does not suit. */
    public enum Against {
        /** The allowance is too narrow for it. */
        NARROW("too narrow an allowance"),
        /** The seam is curved. */
        CURVED("curved"),
        /** The edge stays bare and frays. */
        FRAYS("frays"),
        /** Folded twice, the cloth is bulky. */
        BULKY("bulky on this cloth"),
        /** Wool is never folded twice. */
        WOOL("wool is never folded twice"),
        /** Whether it runs straight is not known. */
        CURVE_UNKNOWN("whether it is straight is not known"),
        /** Whether the cloth frays is not known. */
        FRAYING_UNKNOWN("how it frays is not known");

        private final String word;

        Against(String word) {
            this.word = word;
        }

        /** As a page says it. */
        public String word() {
            return word;
        }
    }

    /** All that speaks against a finish on a seam; nothing if it suits. */
    public List<Against> against(Finish finish, JoinLine join) {
        List<Against> against = new ArrayList<>(against(finish));
        if (isTooNarrow(finish, join)) {
            against.add(Against.NARROW);
        }
        if (finish == Finish.FRENCH && join.curve() == JoinLine.Curve.CURVED) {
            against.add(Against.CURVED);
        }
        if (finish == Finish.FRENCH && join.curve() == JoinLine.Curve.UNKNOWN) {
            against.add(Against.CURVE_UNKNOWN);
        }
        return against;
    }

    /** What speaks against it on this cloth, whatever the seam. */
    public List<Against> against(Finish finish) {
        List<Against> against = new ArrayList<>();
        if (finish.leavesEdgeBare() && !areKnits()) {
            fraying().ifPresent(against::add);
        }
        if (finish.foldsTwice() && mains().stream().anyMatch(SewnCloth::isWool)) {
            against.add(Against.WOOL);
        } else if (isForLight(finish) && mains().stream().anyMatch(SewnCloth::isMoreThanLight)) {
            against.add(Against.BULKY);
        }
        return against;
    }

    private Optional<Against> fraying() {
        Optional<Fraying> known = frays.toOptional();
        if (known.isEmpty()) {
            return Optional.of(Against.FRAYING_UNKNOWN);
        }
        return known.filter(f -> f != Fraying.HARDLY).map(f -> Against.FRAYS);
    }

    private static boolean isForLight(Finish finish) {
        return finish == Finish.TURNED || finish == Finish.FRENCH;
    }

    private boolean isTooNarrow(Finish finish, JoinLine join) {
        return join.narrowest()
                .filter(width -> width.isShorterThan(FinishNeed.of(finish).allowance().on(tape)))
                .isPresent();
    }

    private boolean areKnits() {
        return !mains().isEmpty() && mains().stream().allMatch(SewnCloth::isKnit);
    }

    private List<SewnCloth> mains() {
        return cloths.stream().filter(SewnCloth::isMain).toList();
    }
}
