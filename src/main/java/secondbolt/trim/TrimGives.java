package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.plan.Interfacing;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.task.Amount;
import secondbolt.task.Need;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.gathered.ElasticResult;
import secondbolt.trim.guide.StripWords;
import secondbolt.trim.plan.Binding;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;

/** What interfacing, binding and elastic contribute to other pages. */
final class TrimGives {
    private static final String DYED = "dry";

    private TrimGives() {}

    static Gives of(TrimResult result, Tape tape) {
        return new Gives(TrimSteps.of(result), needs(result, tape), words(result));
    }

    /** A hand's length, to be fused to a scrap and washed: common practice, no source. */
    private static final Convention TEST =
            Convention.common(Length.ofInches(4, 1), Length.ofMillimetres(100));

    private static List<Need> needs(TrimResult result, Tape tape) {
        List<Need> needs = new ArrayList<>();
        result.interfacing().ifPresent(told -> needs.addAll(interfacing(told, tape)));
        for (BindingResult binding : result.bindings()) {
            if (binding.binding().from() == Binding.From.BOUGHT) {
                needs.add(binding(binding, tape));
            }
        }
        result.elastics().forEach(elastic -> needs.addAll(elastic(elastic, tape)));
        return needs;
    }

    /** At her width, or else at the narrowest that holds every piece. */
    private static List<Need> interfacing(InterfacingResult told, Tape tape) {
        if (!told.own().isEmpty() || told.pieces().isEmpty()) {
            return List.of();
        }
        String kind =
                told.interfacing().kind().map(Interfacing.Kind::word).map(k -> k + " ").orElse("");
        return told.bolts().stream()
                .filter(bolt -> bolt.toBuy().isPresent())
                .limit(1)
                .map(bolt -> interfacing(kind, bolt, tape))
                .toList();
    }

    private static Need interfacing(String kind, BoltLength bolt, Tape tape) {
        boolean isTested = !kind.startsWith(Interfacing.Kind.SEWN_IN.word());
        Length pieces = bolt.toBuy().orElseThrow();
        Length all = isTested ? pieces.plus(TEST.on(tape)) : pieces;
        return Need.of(
                        kind + "interfacing",
                        new Amount.Run(all.roundedUpTo(tape.shopStep())),
                        "if it is "
                                + tape.print(bolt.width())
                                + " wide, for the pieces that are stiffened"
                                + (isTested
                                        ? ", "
                                                + tape.print(TEST.on(tape))
                                                + " of it for the press test"
                                        : "")
                                + "; lighter than the cloth")
                .boughtAfter(DYED, "Polyester stays pale, and may show through dyed cloth.");
    }

    private static Need binding(BindingResult binding, Tape tape) {
        String cut =
                binding.binding().cut() == Binding.Cut.BIAS ? "bias binding" : "straight binding";
        String width =
                binding.binding()
                        .finished()
                        .filter(f -> binding.binding().closesOverTheEdge())
                        .map(f -> ", " + tape.printSmall(f) + " finished")
                        .orElse("");
        return Need.of(
                        cut + width,
                        new Amount.Run(StripWords.up(binding.need(), tape)),
                        "the binding " + binding.name())
                .boughtAfter(DYED, "Bought binding does not take dye as the cloth does.");
    }

    private static List<Need> elastic(ElasticResult elastic, Tape tape) {
        int loops = elastic.loops();
        return elastic.toBuy().stream()
                .map(length -> length.times(loops))
                .map(
                        length ->
                                Need.of(
                                                "elastic, "
                                                        + tape.printSmall(elastic.elastic().width())
                                                        + " wide",
                                                new Amount.Run(StripWords.up(length, tape)),
                                                "the elastic "
                                                        + elastic.name()
                                                        + (loops > 1
                                                                ? ", one loop for each of " + loops
                                                                : "")
                                                        + (elastic.cut().isEmpty()
                                                                ? ", as long as the body: it is cut"
                                                                        + " when it is tried on"
                                                                : ""))
                                        .boughtAfter(
                                                DYED, "Elastic stays pale in dye and tires in it."))
                .toList();
    }

    private static List<Term> words(TrimResult result) {
        List<Term> words = new ArrayList<>();
        if (result.interfacing().filter(InterfacingResult::isFused).isPresent()) {
            words.add(
                    new Term(
                            "fusible",
                            "Interfacing with glue on one side, which melts and holds."));
        }
        if (!result.bindings().isEmpty()) {
            words.add(
                    new Term(
                            "true bias",
                            "The line at 45 degrees to the threads; it stretches most."));
        }
        if (!result.elastics().isEmpty()) {
            words.add(new Term("casing", "A tunnel of cloth that an elastic or a cord runs in."));
        }
        return words;
    }
}
