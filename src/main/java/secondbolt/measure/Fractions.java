package secondbolt.measure;

import java.math.BigInteger;

/** Sets sixteenths as reduced fractions: {@code 0}, {@code ⅝}, {@code 4¼}, {@code 2 ³⁄₁₆}. */
final class Fractions {
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final BigInteger SIXTEEN = BigInteger.valueOf(16);
    private static final String[] EIGHTHS = {"", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"};

    private Fractions() {}

    static String sixteenths(BigInteger count) {
        String sign = count.signum() < 0 ? "-" : "";
        BigInteger[] parts = count.abs().divideAndRemainder(SIXTEEN);
        int rest = parts[1].intValue();
        String whole = parts[0].signum() == 0 ? "" : parts[0].toString();
        if (rest == 0) {
            return whole.isEmpty() ? "0" : sign + whole;
        }
        if (rest % 2 == 0) {
            return sign + whole + EIGHTHS[rest / 2];
        }
        // A thin space, or 2³⁄₁₆ would read as two cubed.
        String gap = whole.isEmpty() ? "" : "\u2009";
        return sign + whole + gap + raised(rest) + "\u2044₁₆";
    }

    private static String raised(int number) {
        StringBuilder raised = new StringBuilder();
        for (char figure : Integer.toString(number).toCharArray()) {
            raised.append(RAISED.charAt(figure - '0'));
        }
        return raised.toString();
    }
}
