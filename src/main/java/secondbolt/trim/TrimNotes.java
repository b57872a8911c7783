package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import secondbolt.measure.Tape;
import secondbolt.trim.bound.BindingCalculation;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.bound.BindingResult.Bends;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.gathered.ElasticCalculation;
import secondbolt.trim.gathered.ElasticResult;
import secondbolt.trim.plan.Binding;
import secondbolt.trim.strip.StripRule;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;

/** What a maker should read of interfacing, binding and elastic. */
final class TrimNotes {
    private final TrimResult result;
    private final Tape tape;
    private final List<Open> open = new ArrayList<>();
    private final List<Assumed> assumed = new ArrayList<>();

    TrimNotes(TrimResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
    }

    Notes with(List<Finding> findings) {
        result.interfacing().ifPresent(this::interfacing);
        result.bindings().forEach(this::binding);
        if (!result.bindings().isEmpty()) {
            strips();
        }
        result.elastics().forEach(this::elastic);
        return new Notes(findings, assumed, open);
    }

    private void interfacing(InterfacingResult told) {
        if (!told.pieces().isEmpty() && told.interfacing().kind().isEmpty()) {
            open.add(
                    new Open(
                            "what kind of interfacing it is",
                            "whether it is pressed on, how hot and how long, and what to ask for in"
                                    + " the shop",
                            "Look at both sides against the light: a fusible one has glittering dots"
                                    + " or a film on one of them. Write `kind` under"
                                    + " `interfacing`."));
        }
    }

    private void binding(BindingResult binding) {
        boolean isFromRemnant = binding.binding().from() == Binding.From.REMNANT;
        if (binding.width().isEmpty() && !binding.binding().closesOverTheEdge()) {
            open.add(
                    new Open(
                            binding.name() + ": the seam allowance it binds",
                            "how wide its strip is cut",
                            "Measure from the seam to the raw edge and write it as `seam` under"
                                    + " `binding`."));
        }
        if (isFromRemnant && binding.remnant().isEmpty()) {
            open.add(
                    new Open(
                            binding.name() + ": what the lay leaves for its strip",
                            "how many strips there are, and whether they reach",
                            "Measure the cloth and lay the pieces on it; or `from: bought` under"
                                    + " `binding`."));
        }
        binding.edges().stream()
                .filter(BindingResult.BoundEdge::isOpen)
                .forEach(edge -> altered(binding.name(), edge.edge().words(), "its strip"));
        if (binding.edges().stream().anyMatch(edge -> edge.bends() == Bends.UNKNOWN)) {
            assumed.add(
                    new Assumed(
                            binding.name() + ": how its edges known by tape bend",
                            "as curves, 5 % more",
                            Convention.COMMON_PRACTICE));
        }
    }

    private void altered(String name, String edge, String what) {
        open.add(
                new Open(
                        name + ": whether the alterations change " + edge,
                        "how long " + what + " is",
                        "Write which edges the moved lines cross; what to write stands with the"
                                + " fit."));
    }

    private void strips() {
        assumed.add(
                new Assumed(
                        "what a bound edge takes more",
                        BindingCalculation.FOR_CURVES.percent(0)
                                + " on curves, and "
                                + tape.print(BindingCalculation.FOR_ENDS.on(tape))
                                + " to join the ends",
                        Convention.COMMON_PRACTICE));
        assumed.add(
                new Assumed(
                        "how strips are joined",
                        "with "
                                + tape.printSmall(StripRule.JOIN.on(tape))
                                + " of seam allowance; none shorter than "
                                + tape.print(StripRule.SHORTEST.on(tape)),
                        StripRule.JOIN.source() + "; " + StripRule.SHORTEST.source()));
    }

    private void elastic(ElasticResult elastic) {
        if (elastic.elastic().fit().overlap().isEmpty()) {
            assumed.add(
                    new Assumed(
                            elastic.name() + ": how far the ends of the elastic overlap",
                            tape.print(ElasticCalculation.OVERLAP.on(tape)),
                            "½ to 1 in is usual; " + Convention.COMMON_PRACTICE));
        }
        if (elastic.loop().isEmpty()) {
            open.add(
                    new Open(
                            elastic.name() + ": how long the elastic is",
                            "where it is cut, and whether it passes",
                            "Pin it round the body until it holds and does not cut in; sit, bend and"
                                    + " breathe; measure it from pin to pin and write it as `loop`"
                                    + " under `elastic`."));
        }
        elastic.elastic()
                .round()
                .filter(measure -> elastic.body().isEmpty())
                .ifPresent(measure -> body(elastic, measure));
        pass(elastic);
        elastic.edges().stream()
                .filter(ElasticResult.DrawnIn::isOpen)
                .forEach(edge -> altered(elastic.name(), edge.edge().words(), "the cloth"));
    }

    private void body(ElasticResult elastic, BodyMeasure measure) {
        open.add(
                new Open(
                        elastic.name() + ": the wearer's " + measure.word(),
                        "what the published rules give for its elastic",
                        measure.measureIt(tape)));
    }

    private void pass(ElasticResult elastic) {
        if (elastic.elastic().over().isEmpty()) {
            open.add(
                    new Open(
                            elastic.name() + ": what the elastic must be pulled over",
                            "whether the garment can be put on",
                            "Think how it is put on, and write `over` under `elastic`."));
            return;
        }
        if (elastic.passes().isEmpty()) {
            Open girth = elastic.elastic().over().orElseThrow().open(elastic.name(), tape);
            open.add(
                    new Open(
                            elastic.name() + ": " + girth.what(),
                            "whether the elastic and its cloth pass",
                            girth.findOut()));
        }
        if (elastic.elastic().stretched().isEmpty()) {
            open.add(
                    new Open(
                            elastic.name() + ": how far the elastic stretches",
                            "whether it can be pulled over what it must pass",
                            "Mark 10 cm or 4 in on it, pull it along a tape as hard as in dressing,"
                                    + " read what they become, and write `stretch` under"
                                    + " `elastic`."));
        }
    }
}
