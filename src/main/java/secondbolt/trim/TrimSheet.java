package secondbolt.trim;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.garment.Role;
import secondbolt.measure.Tape;
import secondbolt.task.Hazard;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.guide.BindingWords;
import secondbolt.trim.guide.FusingWords;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Subject;

/** The one sheet that lies at the iron and the machine. */
final class TrimSheet {
    private TrimSheet() {}

    static List<Sheet> of(TrimResult result, List<Finding> findings, Tape tape) {
        boolean hasPieces =
                result.interfacing().filter(told -> !told.pieces().isEmpty()).isPresent();
        if (!hasPieces && result.bindings().isEmpty() && result.elastics().isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        if (result.interfacing().filter(InterfacingResult::isFused).isPresent()) {
            warnings.add(Hazard.IRON.words());
        }
        findings.stream()
                .filter(Finding::isWarning)
                .forEach(found -> warnings.add(found.text() + " " + found.remedy()));
        blocks.add(new Block.Warnings(warnings));
        result.interfacing()
                .filter(told -> hasPieces)
                .ifPresent(told -> interfacing(told, blocks, tape));
        result.bindings().forEach(binding -> binding(binding, blocks, tape));
        result.elastics()
                .forEach(
                        elastic -> {
                            blocks.add(new Block.Heading("Elastic: " + elastic.name()));
                            blocks.add(new Block.Facts(new ElasticPage(elastic, tape).facts()));
                        });
        return List.of(
                Sheet.ofWords("trim", "Interfacing, binding, elastic", shows(result), blocks));
    }

    private static void interfacing(InterfacingResult told, List<Block> blocks, Tape tape) {
        InterfacingPage page = new InterfacingPage(told, tape);
        blocks.add(new Block.Heading("Interfacing"));
        blocks.add(new Block.Facts(page.facts()));
        blocks.add(new Block.Rows(page.pieces("")));
        if (told.isFused()) {
            blocks.add(
                    new Block.Ticks(
                            FusingWords.steps(told).stream()
                                    .map(step -> Block.Ticks.Item.open(step, List.of(), List.of()))
                                    .toList()));
        }
    }

    private static void binding(BindingResult binding, List<Block> blocks, Tape tape) {
        blocks.add(new Block.Heading("Binding: " + binding.name()));
        blocks.add(new Block.Facts(new BindingPage(binding, tape).facts()));
        blocks.add(new Block.Points(BindingWords.how(binding.binding())));
    }

    private static Set<Subject> shows(TrimResult result) {
        Set<Subject> shown = new HashSet<>();
        result.interfacing()
                .ifPresent(
                        told -> {
                            shown.add(new Subject.Stock(Role.INTERFACING));
                            told.cloths().forEach(c -> shown.add(new Subject.Cloth(c.name())));
                        });
        result.bindings().forEach(b -> shown.add(BindingFindings.subject(b)));
        result.elastics().forEach(e -> shown.add(ElasticFindings.subject(e)));
        return shown;
    }
}
