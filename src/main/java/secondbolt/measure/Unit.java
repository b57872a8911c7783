package secondbolt.measure;

import java.util.List;

/** A unit as makers write it: every spelling, and how many base units it is exactly. */
record Unit(String symbol, Exact inBaseUnits, List<String> spellings) {
    Unit {
        spellings = List.copyOf(spellings);
    }

    static Unit of(String symbol, Exact inBaseUnits, String... otherSpellings) {
        return new Unit(symbol, inBaseUnits, List.of(otherSpellings));
    }

    boolean isSpelt(String text) {
        return symbol.equalsIgnoreCase(text)
                || spellings.stream().anyMatch(s -> s.equalsIgnoreCase(text));
    }
}
