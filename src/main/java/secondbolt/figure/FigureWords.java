package secondbolt.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;

/** Prints figures and their differences for a maker, on her tape. */
public final class FigureWords implements Figure.Visitor<String> {
    private static final String STEP = " › ";
    private static final String OPEN = "open";

    /** A group with more figures than this is counted, not printed. */
    private static final int MOST_IN_FULL = 12;

    private static final int DECIMALS = 4;

    private final Tape tape;

    /** Prints on this tape. */
    public FigureWords(Tape tape) {
        this.tape = tape;
    }

    /** A difference in one line. */
    public String of(Difference difference) {
        String at =
                difference.path().stream()
                        .map(FigureWords::words)
                        .collect(Collectors.joining(STEP));
        if (difference.before().isEmpty()) {
            return "new: " + at + ": " + difference.after().orElseThrow().accept(this);
        }
        if (difference.after().isEmpty()) {
            return "no longer: " + at + ": " + difference.before().get().accept(this);
        }
        String before = difference.before().get().accept(this);
        String after = difference.after().get().accept(this);
        return before.equals(after) ? at + ": changed" : at + ": " + before + " -> " + after;
    }

    private static String words(String key) {
        return key.replace('_', ' ');
    }

    static String plain(Figure.Amount number) {
        return number.value().map(FigureWords::plain).orElse(OPEN);
    }

    private static String plain(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value)
                        .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    @Override
    public String text(Figure.Text text) {
        return text.value().orElse(OPEN);
    }

    @Override
    public String number(Figure.Amount number) {
        String unit =
                switch (number.ending()) {
                    case "_percent" -> " %";
                    case "_deg" -> "°";
                    case "_g" -> " g";
                    case "_g_per_m2" -> " g/m²";
                    default -> "";
                };
        return plain(number) + (number.value().isPresent() ? unit : "");
    }

    @Override
    public String claim(Figure.Claim claim) {
        return claim.holds() ? "yes" : "no";
    }

    @Override
    public String size(Figure.Size size) {
        return size.value().map(tape::print).orElse(OPEN);
    }

    @Override
    public String surface(Figure.Surface surface) {
        return surface.value().map(tape::print).orElse(OPEN);
    }

    @Override
    public String heft(Figure.Heft heft) {
        return heft.value().map(tape::print).orElse(OPEN);
    }

    @Override
    public String clothWeight(Figure.Weight weight) {
        return weight.value().map(tape::print).orElse(OPEN);
    }

    @Override
    public String place(Figure.Place place) {
        return place.value().map(p -> plain(p.xMm()) + ", " + plain(p.yMm())).orElse(OPEN);
    }

    @Override
    public String line(Figure.Line line) {
        return Plural.of(line.points().size(), "point");
    }

    @Override
    public String sizes(Figure.Sizes sizes) {
        return sizes.lengths().stream()
                .map(tape::print)
                .collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public String group(Figure.Group group) {
        return group.figures().map(this::inFull).orElse(OPEN);
    }

    private String inFull(Figures figures) {
        if (figures.entries().isEmpty()) {
            return "nothing";
        }
        int all = count(figures);
        return figures.entries().entrySet().stream()
                .map(e -> words(e.getKey()) + " " + inside(e.getValue().figure(), all))
                .collect(Collectors.joining(", "));
    }

    private String inside(Figure figure, int all) {
        Optional<Figures> figures = Inside.of(figure).groups();
        if (figures.isEmpty()) {
            return figure.accept(this);
        }
        int count = count(figures.get());
        return all > MOST_IN_FULL
                ? "(" + Plural.of(count, "value") + ")"
                : "(" + inFull(figures.get()) + ")";
    }

    private static int count(Figures figures) {
        int count = 0;
        for (FigureEntry entry : figures.entries().values()) {
            Inside inside = Inside.of(entry.figure());
            count += inside.groups().map(FigureWords::count).orElse(1);
        }
        return count;
    }

    @Override
    public String items(Figure.Items items) {
        return Plural.of(items.items().size(), "item");
    }
}
