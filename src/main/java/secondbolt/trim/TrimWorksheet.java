package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.lay.design.DesignLay;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Once;
import secondbolt.worksheet.Worksheet;

/**
 * What stiffens, binds and gathers, to be shown.
 *
 * @param result worked out
 * @param made the design that is made, if it was laid
 * @param tape to print with
 */
record TrimWorksheet(TrimResult result, Optional<DesignLay> made, Tape tape) {
    Worksheet worksheet() {
        Once<List<Finding>> findings = new Once<>(this::findings);
        return Worksheet.of("trim", "Interfacing, binding, elastic", () -> notes(findings.get()))
                .showing(this::blocks)
                .printing(() -> TrimSheet.of(result, findings.get(), tape))
                .telling(() -> TrimFigures.of(result))
                .giving(TrimGives.of(result, tape));
    }

    private Notes notes(List<Finding> findings) {
        return new TrimNotes(result, tape).with(findings);
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        result.interfacing()
                .ifPresent(told -> findings.addAll(new InterfacingFindings(told, tape).all()));
        boolean isLaid = made.filter(lay -> !lay.stocks().isEmpty()).isPresent();
        result.bindings()
                .forEach(
                        binding ->
                                findings.addAll(new BindingFindings(binding, isLaid, tape).all()));
        result.elastics()
                .forEach(elastic -> findings.addAll(new ElasticFindings(elastic, tape).all()));
        return findings;
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        result.interfacing()
                .ifPresent(told -> blocks.addAll(new InterfacingPage(told, tape).blocks()));
        result.bindings()
                .forEach(binding -> blocks.addAll(new BindingPage(binding, tape).blocks()));
        result.elastics()
                .forEach(elastic -> blocks.addAll(new ElasticPage(elastic, tape).blocks()));
        return blocks;
    }
}
