package secondbolt.file.value;

import java.util.Collection;
import java.util.List;

/**
 * A name that is spoken of and that nothing bears: spelt amiss there, or where it was given.
 *
 * @param name as it is spoken of
 * @param near the names of that kind that there are and that are one slip of the hand away: a
 *     letter or mark wrong, missing, too many or swapped with its neighbour. Names with other
 *     figures are other names, but for letters that look like figures.
 */
public record UnknownName(String name, List<String> near) {
    /** Copies the names. */
    public UnknownName {
        near = List.copyOf(near);
    }

    /**
     * A name that is none of those there are.
     *
     * @param known those of that kind
     */
    public static UnknownName of(String name, Collection<String> known) {
        return new UnknownName(
                name, known.stream().filter(one -> isSlip(name, one)).sorted().toList());
    }

    /** Looks at each letter a few times only, for a name may be as long as a file. */
    private static boolean isSlip(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 1 || a.equals(b)) {
            return false;
        }
        int from = 0;
        while (from < Math.min(a.length(), b.length()) && a.charAt(from) == b.charAt(from)) {
            from++;
        }
        int behind = 0;
        while (behind < Math.min(a.length(), b.length()) - from
                && a.charAt(a.length() - 1 - behind) == b.charAt(b.length() - 1 - behind)) {
            behind++;
        }
        String inA = a.substring(from, a.length() - behind);
        String inB = b.substring(from, b.length() - behind);
        boolean isSwapped = new StringBuilder(inA).reverse().toString().equals(inB);
        boolean isOne = inA.length() <= 1 && inB.length() <= 1;
        return (isOne || (inA.length() == 2 && isSwapped)) && hasSameFigures(inA, inB);
    }

    private static boolean hasSameFigures(String a, String b) {
        return figures(a).equals(figures(b)) || asFigures(a).equals(asFigures(b));
    }

    private static String figures(String letters) {
        return letters.replaceAll("\\P{Nd}", "");
    }

    private static String asFigures(String letters) {
        return letters.replace('O', '0').replace('o', '0').replace('l', '1').replace('I', '1');
    }
}
