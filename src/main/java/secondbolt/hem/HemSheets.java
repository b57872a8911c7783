package secondbolt.hem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.draw.Drawing;
import secondbolt.hem.guide.HemWords;
import secondbolt.hem.guide.LevelDrawing;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemLevel;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/**
 * The sheets of a hem: the cards it is pressed over and the strip it is levelled with.
 *
 * @param hem the hem
 * @param tape to print with
 */
record HemSheets(ShownHem hem, Tape tape) {
    /** The sheets of all hems, in the maker's order. */
    static List<Sheet> of(List<ShownHem> hems, Tape tape) {
        return hems.stream().flatMap(hem -> new HemSheets(hem, tape).all().stream()).toList();
    }

    private List<Sheet> all() {
        List<Sheet> sheets = new ArrayList<>();
        List<Drawing> guides = GuideDrawing.of(hem.result(), hem.cards(), tape);
        for (int i = 0; i < guides.size(); i++) {
            String part = guides.size() == 1 ? "" : ", part " + (i + 1);
            sheets.add(guide(part, guides.get(i)));
        }
        hem.result().level().map(this::level).ifPresent(sheets::add);
        return sheets;
    }

    private Sheet guide(String part, Drawing drawing) {
        return sheet(
                "hem guide " + hem.name(),
                "Hem guide: " + hem.name() + part,
                drawing,
                List.of(
                        new Block.Steps(hem.steps().orElseThrow()),
                        new Block.Warnings(warnings()),
                        new Block.Rows(HemEdgeRow.onSheet(hem.rows()))));
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>(HemWords.HEAT);
        hem.findings().stream()
                .filter(Finding::isWarning)
                .forEach(f -> warnings.add(f.text() + " " + f.remedy()));
        return warnings;
    }

    private Sheet level(HemLevel level) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Fold", tape.print(level.fold()), tape.other().print(level.fold())));
        level.trim()
                .map(trim -> List.of("Trim", tape.print(trim), tape.other().print(trim)))
                .ifPresent(rows::add);
        boolean reachesTheFloor =
                hem.result().hem().turned() != Hem.Turned.FACED && level.trim().isEmpty();
        List<String> warnings =
                reachesTheFloor
                        ? List.of(
                                "The allowance reaches the floor: turn it up and pin it before you"
                                        + " mark, so that it does not stand on the floor.")
                        : List.of();
        return sheet(
                "hem level " + hem.name(),
                "Level strip: " + hem.name(),
                LevelDrawing.of(hem.name(), level, tape),
                List.of(
                        new Block.Steps(HemWords.level(hem.result(), level, tape)),
                        new Block.Warnings(warnings),
                        new Block.Rows(Table.of(List.of("Line", "Above the floor", ""), rows))));
    }

    private Sheet sheet(String name, String title, Drawing drawing, List<Block> blocks) {
        return new Sheet(SheetName.of(name), title, subjects(), drawing, blocks, Sheet.Size.HOME);
    }

    /** The hem and the edges it turns. */
    private Set<Subject> subjects() {
        Set<Subject> shown = new HashSet<>();
        shown.add(new Subject.Hem(hem.name()));
        hem.result().edges().forEach(edge -> shown.add(new Subject.Edge(edge.edge())));
        return shown;
    }
}
