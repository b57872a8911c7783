package secondbolt.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a measure in any unit of its table: {@code 12 cm}, {@code 5 ft 4 in}, {@code 1 3/8"}, or a
 * bare number in the unit given. A second form in brackets, as in {@code 3/8 in (1 cm)}, is checked
 * against the first and refused when the two differ by more than a tape shows.
 */
final class MeasureParser {
    /** Longer is no measure, whatever it is. */
    private static final int LONGEST = 200;

    private final UnitTable table;
    private final Optional<Unit> bare;

    /**
     * Makes a parser.
     *
     * @param table the units to know
     * @param bare the unit of a bare number; without one a bare number is refused
     */
    MeasureParser(UnitTable table, Optional<Unit> bare) {
        this.table = table;
        this.bare = bare;
    }

    Parsed<Exact> parse(String written) {
        if (written.length() > LONGEST) {
            return refused("`" + written + "`", form());
        }
        String text = NumberScanner.plain(written);
        int bracket = text.indexOf('(');
        if (bracket <= 0 || !text.endsWith(")")) {
            return parseTerms(written, text);
        }
        Parsed<Exact> first = parseTerms(written, text.substring(0, bracket).strip());
        Parsed<Exact> second =
                parseTerms(written, text.substring(bracket + 1, text.length() - 1).strip());
        return first.fold(
                a -> second.fold(b -> agreeing(written, a, b), refusal -> second),
                refusal -> first);
    }

    private Parsed<Exact> agreeing(String written, Exact first, Exact second) {
        Exact off = first.minus(second);
        if (off.size().compareTo(first.size().times(Exact.of(1, 100)).orLarger(Exact.of(1))) <= 0) {
            return new Parsed.Value<>(first);
        }
        Unit base = table.units().get(0);
        return refused(
                "`" + written + "`, two " + table.kind() + "s that differ",
                String.format(
                        "the first is %s %s, the second %s %s: keep the one you measured",
                        first.decimal(2), base.symbol(), second.decimal(2), base.symbol()));
    }

    private Parsed<Exact> parseTerms(String written, String text) {
        Exact sum = Exact.ZERO;
        List<Unit> seen = new ArrayList<>();
        String rest = text;
        do {
            NumberScanner.Scanned scanned = NumberScanner.scan(rest);
            if (scanned.number().isEmpty()) {
                return noNumber(written, scanned.trouble());
            }
            int end = endOfUnit(scanned.rest());
            String spelling = scanned.rest().substring(0, end).strip();
            Optional<Unit> unit = spelling.isEmpty() ? bare : table.find(spelling);
            if (unit.isEmpty()) {
                return noUnit(written, spelling);
            }
            boolean ascends = seen.stream().anyMatch(u -> !UnitTable.descends(u, unit.get()));
            if (ascends || (spelling.isEmpty() && !seen.isEmpty())) {
                return refused("`" + written + "`", form());
            }
            seen.add(unit.get());
            sum = sum.plus(scanned.number().get().times(unit.get().inBaseUnits()));
            rest = scanned.rest().substring(end).strip();
        } while (!rest.isEmpty());
        return new Parsed.Value<>(sum);
    }

    /** A unit runs up to the next figure, but the 2 of m2 belongs to it. */
    private static int endOfUnit(String text) {
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            boolean square = c == '2' && i > 0 && Character.isLetter(text.charAt(i - 1));
            if ((Character.isDigit(c) && !square) || c == '+' || (c == '-' && i > 0)) {
                break;
            }
            i++;
        }
        return i;
    }

    private Parsed<Exact> noNumber(String written, String trouble) {
        if (trouble.contains("thousands")) {
            return refused(
                    "`" + written + "`, " + trouble,
                    "a point for decimals, nothing between thousands: 1.5 or 1500");
        }
        return refused(
                trouble.equals("no number") ? "`" + written + "`" : "`" + written + "`, " + trouble,
                form());
    }

    private Parsed<Exact> noUnit(String written, String spelling) {
        if (spelling.isEmpty()) {
            return refused("`" + written + "`, a number without a unit", form());
        }
        return refused(
                "`" + written + "`, an unknown unit `" + spelling + "`",
                "a " + table.kind() + " in one of " + table.symbols());
    }

    private String form() {
        return (table.kind().matches("[aeiou].*") ? "an " : "a ")
                + table.kind()
                + " such as "
                + table.model();
    }

    private static Parsed<Exact> refused(String found, String right) {
        return new Parsed.Refusal<>(found, right);
    }
}
