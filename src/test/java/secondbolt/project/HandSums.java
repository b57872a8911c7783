package secondbolt.project;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.worksheet.Worksheet;

/**
 * What a project came to, held against lines such as these:
 *
 * <pre>{@code
 * hems > hem > fold_all_round_mm = 900     a figure that other programs read
 * row round the hem of front, back = 90 cm the cells of a row, as far as written
 * assumed the nap of sheet = none          what was taken for granted
 * open the wearer's waist                  what is not known yet
 * found STOP seam-apart front.side to …    a finding, its level, code and what it is about
 * says Up to 2 cm                          words of a finding
 * not seam-apart                           no finding of that code
 * free of stops
 * }</pre>
 */
record HandSums(Workings workings) {
    private static final double CLOSELY = 0.06;

    /** Round flaws are laid out as polygons. */
    private static final double SHARE_OF_AN_AREA = 2e-4;

    /** What is wrong with a line; nothing if it holds. */
    Optional<String> wrong(String line) {
        String[] first = line.split(" ", 2);
        return switch (first[0]) {
            case "row" -> row(first[1]);
            case "assumed" -> among(line, assumed(), first[1]);
            case "open" -> among(line, open(), first[1]);
            case "found" -> among(line, found(), first[1]);
            case "says" ->
                    says().anyMatch(text -> text.contains(first[1]))
                            ? Optional.empty()
                            : Optional.of(line + ", but " + says().toList());
            case "not" ->
                    found().filter(f -> f.split(" ", -1)[1].equals(first[1]))
                            .findFirst()
                            .map(f -> line + ", but found " + f);
            case "free" ->
                    workings.stops().stream().findFirst().map(s -> line + ", but " + s.text());
            default -> figure(line);
        };
    }

    private static Optional<String> among(String line, Stream<String> all, String wanted) {
        List<String> told = all.toList();
        return told.contains(wanted) ? Optional.empty() : Optional.of(line + ", but " + told);
    }

    private Stream<String> assumed() {
        return sheets().flatMap(s -> s.assumed().stream()).map(a -> a.what() + " = " + a.value());
    }

    private Stream<String> open() {
        return sheets().flatMap(s -> s.open().stream()).map(o -> o.what());
    }

    private Stream<String> found() {
        return workings.findings().stream()
                .map(f -> f.level() + " " + f.code() + " " + f.about().words());
    }

    private Stream<String> says() {
        return workings.findings().stream().map(f -> f.text() + " " + f.remedy());
    }

    private Stream<Worksheet> sheets() {
        return workings.worksheets().stream();
    }

    private Optional<String> row(String line) {
        String[] sides = line.split(" = ", 2);
        List<String> wanted = List.of(sides[1].split(" \\| ", -1));
        List<List<String>> named =
                sheets().flatMap(s -> s.blocks().stream())
                        .filter(Block.Rows.class::isInstance)
                        .flatMap(rows -> ((Block.Rows) rows).table().rows().stream())
                        .map(HandSums::plain)
                        .filter(cells -> cells.get(0).equals(sides[0]))
                        .toList();
        boolean holds =
                named.stream()
                        .anyMatch(
                                c ->
                                        c.size() > wanted.size()
                                                && c.subList(1, wanted.size() + 1).equals(wanted));
        return holds ? Optional.empty() : Optional.of("row " + line + ", but " + named);
    }

    /** With spaces that a keyboard has. */
    private static List<String> plain(List<Table.Cell> cells) {
        return cells.stream().map(c -> c.value().own().replaceAll("\\h", " ")).toList();
    }

    private Optional<String> figure(String line) {
        String[] sides = line.split(" = ", 2);
        Map<String, Object> all = new LinkedHashMap<>();
        sheets().forEach(s -> all.put(s.name(), s.figures().asMap()));
        Object here = all;
        for (String key : sides[0].split(" > ", -1)) {
            here = here == null ? null : inside(here, key);
        }
        boolean holds =
                here instanceof Number n
                        ? Math.abs(n.doubleValue() - Double.parseDouble(sides[1]))
                                <= closely(sides[0], n.doubleValue())
                        : sides[1].equals(String.valueOf(here));
        return holds ? Optional.empty() : Optional.of(line + ", but " + here);
    }

    private static double closely(String path, double value) {
        return path.endsWith("_mm2") ? SHARE_OF_AN_AREA * value : CLOSELY;
    }

    private static Object inside(Object here, String key) {
        if (here instanceof Map<?, ?> map) {
            return map.get(key);
        }
        List<?> list = (List<?>) here;
        return key.matches("\\d+")
                ? list.get(Integer.parseInt(key))
                : list.stream()
                        .filter(item -> ((Map<?, ?>) item).containsValue(key))
                        .findFirst()
                        .orElse(null);
    }
}
