package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.file.value.Answer;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.prepare.heat.IronHeat;
import secondbolt.textile.Textile;

/**
 * What the figures of the cloths stand on, and how hot each may get.
 *
 * @param all the cloths
 */
record Evidence(Preparation all) {
    private static final List<String> HEAD =
            List.of("Cloth", "Fibre known by", "Weight known by", "Iron at most", "Wash at most");
    private static final String SOURCES =
            "Iron: the ceilings of ISO 3758:2012, and of a blend the setting of its most tender"
                    + " fibre (an iron maker's manual). Wash: what such garments are usually labelled"
                    + " with (common practice, no source). The care label of the cloth comes before"
                    + " both, and a scrap before the cloth.";
    private static final String CHARTS =
            "A consumer ironing chart has linen at 230 °C and cotton at 204 °C, an iron temperature"
                    + " guide linen at 210 °C to 220 °C and cotton at 180 °C to 200 °C: some of it"
                    + " is above the three dots of the standard. Start lower, and try.";

    /** Whether it is not told how its fibre is known. */
    static boolean isUntold(PreparedCloth cloth) {
        return cloth.cloth().cloth().textile().knownBy().isEmpty();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(table());
        blocks.add(new Block.Prose(SOURCES));
        boolean isHot =
                all.hasAny(
                        c -> c.isPressed() && c.heat().iron().equals(Optional.of(IronHeat.HIGH)));
        if (isHot) {
            blocks.add(new Block.Prose(CHARTS));
        }
        return blocks;
    }

    private Block table() {
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (PreparedCloth cloth : all.cloths()) {
            rows.add(
                    List.of(
                            Table.Cell.of(cloth.name()),
                            Table.Cell.of(fibre(cloth)),
                            Table.Cell.of(weight(cloth)),
                            Table.Cell.of(
                                    by(cloth, cloth.heat().ironWords(), cloth.heat().ironBy())),
                            Table.Cell.of(
                                    by(cloth, cloth.heat().washWords(), cloth.heat().washBy()))));
        }
        return new Block.Rows(
                new Table(
                        "What is known of each cloth, and how hot it may get",
                        "In brackets what decides it",
                        HEAD,
                        rows));
    }

    private static String by(PreparedCloth cloth, String heat, String decides) {
        return cloth.isLeftToItsLeaflet() ? "by its maker's leaflet" : heat + " (" + decides + ")";
    }

    private static String fibre(PreparedCloth cloth) {
        if (cloth.fibre().isEmpty()) {
            return "not known";
        }
        Optional<Textile.KnownBy> by = cloth.cloth().cloth().textile().knownBy();
        return by.map(Evidence::words).orElse("not told: taken as a guess");
    }

    private static String words(Textile.KnownBy by) {
        return switch (by) {
            case LABEL -> "its label";
            case BURN_TEST -> "a burn test: a blend may look like one of its fibres";
            case GUESS -> "a guess";
        };
    }

    private static String weight(PreparedCloth cloth) {
        Textile textile = cloth.cloth().cloth().textile();
        if (textile.mass().flatMap(Answer::toOptional).isPresent()) {
            return "the scale";
        }
        return cloth.cloth().heaviness().mass().isPresent()
                ? "its weight by area, and its size"
                : textile.weight().flatMap(Answer::toOptional).isPresent()
                        ? "its weight by area; its size is open"
                        : "not known";
    }
}
