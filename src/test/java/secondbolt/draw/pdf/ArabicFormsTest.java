package secondbolt.draw.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.Normalizer;
import org.junit.jupiter.api.Test;

/** Joined letters against the names and decompositions in the JDK's copy of Unicode. */
class ArabicFormsTest {
    private static final String BEH = "\u0628";

    private static String only(String joined, int at) {
        return Character.getName(joined.codePointAt(at));
    }

    /** Unicode character names: each form says in its name which one it is. */
    @Test
    void choosesTheFormForThePlaceInTheWord() {
        for (int letter = 0x0621; letter <= 0x06D2; letter++) {
            String text = Character.toString(letter);
            String alone = ArabicForms.joined(text);
            if (alone.equals(text)) {
                continue;
            }
            assertTrue(only(alone, 0).endsWith("ISOLATED FORM"), only(alone, 0));
            String last = ArabicForms.joined(BEH + text);
            boolean joinsBack = !text.equals("\u0621");
            String expected = joinsBack ? "FINAL FORM" : "ISOLATED FORM";
            assertTrue(only(last, 1).endsWith(expected), only(last, 1));
            String between = ArabicForms.joined(BEH + text + BEH);
            String middle = only(between, 1);
            boolean joinsOn = only(between, 2).endsWith("FINAL FORM");
            assertTrue(middle.endsWith(joinsOn ? "MEDIAL FORM" : expected), middle);
            String first = only(ArabicForms.joined(text + BEH), 0);
            assertTrue(first.endsWith(joinsOn ? "INITIAL FORM" : "ISOLATED FORM"), first);
        }
    }

    /** Compatibility decomposition leads each form back to its letter. */
    @Test
    void keepsTheLetters() {
        String text = "خط الوسط للأزرار لا كلأ پچژگی";
        String back = Normalizer.normalize(ArabicForms.joined(text), Normalizer.Form.NFKC);
        assertEquals(Normalizer.normalize(text, Normalizer.Form.NFKC), back);
    }

    @Test
    void joinsAcrossVowelSigns() {
        String joined = ArabicForms.joined("\u0628\u064E\u0628");
        assertEquals("ARABIC LETTER BEH INITIAL FORM", only(joined, 0));
        assertEquals("ARABIC LETTER BEH FINAL FORM", only(joined, 2));
    }

    @Test
    void writesLamWithAlefAsOne() {
        assertEquals("\uFEFB", ArabicForms.joined("\u0644\u0627"));
        assertEquals("\uFE91\uFEFC", ArabicForms.joined("\u0628\u0644\u0627"));
    }
}
