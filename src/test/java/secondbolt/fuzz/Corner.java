package secondbolt.fuzz;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A point of an outline in the project's units, as it is typed. */
record Corner(double x, double y) {
    private static final Pattern NUMBER =
            Pattern.compile("(-?)(\\d+(?:\\.\\d+)?)(?:(?: (\\d+))?/(\\d+))?");

    /** The point, if it is typed in figures alone. */
    static Optional<Corner> of(Object written) {
        if (!(written instanceof List<?> pair) || pair.size() != 2) {
            return Optional.empty();
        }
        Optional<Double> x = number(pair.get(0));
        return x.flatMap(across -> number(pair.get(1)).map(along -> new Corner(across, along)));
    }

    private static Optional<Double> number(Object written) {
        Matcher found = NUMBER.matcher(String.valueOf(written));
        if (!found.matches()) {
            return Optional.empty();
        }
        double first = Double.parseDouble(found.group(2));
        double value = first;
        if (found.group(4) != null) {
            double under = Double.parseDouble(found.group(4));
            value =
                    found.group(3) == null
                            ? first / under
                            : first + Double.parseDouble(found.group(3)) / under;
        }
        return Optional.of(found.group(1).isEmpty() ? value : -value);
    }

    /** So far along the way to another, and so far to the left of it, in shares of the way. */
    Corner towards(Corner other, double along, double left) {
        double dx = other.x - x;
        double dy = other.y - y;
        return new Corner(x + dx * along + dy * left, y + dy * along - dx * left);
    }

    /** The share of the way to another that is so long. */
    double share(Corner other, double length) {
        return length / Math.max(1e-9, Math.hypot(other.x - x, other.y - y));
    }

    Corner moved(double across, double along) {
        return new Corner(x + across, y + along);
    }

    /** As it is typed. */
    List<Object> written() {
        return new ArrayList<>(List.of(text(x), text(y)));
    }

    private static String text(double value) {
        return new BigDecimal(value)
                .setScale(4, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
