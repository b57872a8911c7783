package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.guide.BindingWords;
import secondbolt.trim.guide.StripWords;
import secondbolt.trim.plan.Binding;
import secondbolt.trim.strip.StripCut;
import secondbolt.trim.strip.StripRule;

/**
 * What the page shows of a binding.
 *
 * @param result worked out
 * @param tape to print with
 */
record BindingPage(BindingResult result, Tape tape) {
    List<Block> blocks() {
        return List.of(
                new Block.Heading("Binding: " + result.name()),
                new Block.Facts(facts()),
                new Block.Points(BindingWords.how(result.binding())));
    }

    /** How wide and how long its strip is, and where it comes from. */
    List<Fact> facts() {
        Binding binding = result.binding();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("Edges", binding.on().value().heading()));
        facts.add(Fact.of("Kind", binding.kind().word() + ", cut " + cut(binding)));
        binding.finished()
                .filter(width -> binding.closesOverTheEdge())
                .ifPresent(width -> facts.add(small("Finished width", width)));
        result.width().ifPresent(width -> facts.add(small(widthLabel(binding), width)));
        facts.add(Fact.of("Edges together, after the alterations", tape, result.sewn()));
        if (result.forCurves().isPositive()) {
            facts.add(Fact.of("More for curves, 5 %", tape, result.forCurves()));
        }
        facts.add(Fact.of("More for joining the ends", tape, result.forEnds()));
        facts.add(
                new Fact(
                        "Strip needed",
                        Both.of(tape, t -> t.print(StripWords.up(result.need(), t)))));
        result.width().ifPresent(width -> facts.addAll(cloth(width)));
        result.remnant().ifPresent(left -> facts.addAll(remnant(left)));
        return facts;
    }

    private static String cut(Binding binding) {
        return switch (binding.cut()) {
            case BIAS -> "on the bias";
            case STRAIGHT -> "straight";
        };
    }

    private static String widthLabel(Binding binding) {
        return switch (binding.kind()) {
            case DOUBLE_FOLD ->
                    "Strip cut, 4 × its finished width (a machine maker's how-to on bias binding)";
            case SINGLE_FOLD -> "Strip cut, 2 × its finished width and 2 × its seam";
            case BOUND_SEAM ->
                    "Strip cut, the allowance and ¼ in (an encyclopaedia, bound and French seams)";
        };
    }

    private Fact small(String label, Length length) {
        return new Fact(label, Both.of(tape, t -> t.printSmall(length)));
    }

    private List<Fact> cloth(Length width) {
        if (result.binding().cut() == Binding.Cut.STRAIGHT
                || result.binding().from() == Binding.From.BOUGHT) {
            return List.of();
        }
        Length shortest = StripRule.SHORTEST.on(tape);
        Length side = StripRule.square(result.need(), width);
        return List.of(
                new Fact(
                        "Cloth it takes by the textbook's sum (NIMI, Dress Making, p. 220)",
                        Both.of(
                                tape,
                                t ->
                                        BindingWords.area(
                                                StripRule.cloth(result.need(), width, shortest),
                                                t))),
                new Fact(
                        "A square that yields it, before joins (a soft-furnishing FAQ)",
                        Both.of(tape, t -> t.print(StripWords.up(side, t)) + " each side")));
    }

    private List<Fact> remnant(BindingResult.FromRemnant left) {
        List<Fact> facts = new ArrayList<>();
        facts.add(
                new Fact(
                        "Cut from what the lay leaves of " + left.cloth(),
                        Both.of(tape, t -> box(left, t))));
        left.cut().ifPresent(cut -> facts.addAll(strips(cut)));
        return facts;
    }

    private static String box(BindingResult.FromRemnant left, Tape tape) {
        Length across = Length.ofComputedMillimetres(left.box().widthMm());
        Length along = Length.ofComputedMillimetres(left.box().heightMm());
        return tape.print(StripWords.down(across, tape))
                + " × "
                + tape.print(StripWords.down(along, tape));
    }

    private List<Fact> strips(StripCut cut) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Whole strips", Both.of(tape, t -> StripWords.whole(cut, t))));
        if (result.binding().cut() == Binding.Cut.BIAS) {
            facts.add(
                    new Fact(
                            "Strips from the end triangles",
                            Both.of(tape, t -> StripWords.shorter(cut, t))));
        }
        cut.wholeLack()
                .ifPresent(
                        lack ->
                                facts.add(
                                        new Fact(
                                                "Whole strips alone are short, before joins, by",
                                                Both.of(
                                                        tape,
                                                        t -> t.print(StripWords.up(lack, t))))));
        facts.add(new Fact("Joins", Both.of(tape, t -> StripWords.joins(cut, t))));
        facts.add(
                new Fact(
                        "Joined strip",
                        Both.of(tape, t -> t.print(StripWords.down(cut.joined(), t)))));
        return facts;
    }
}
