package secondbolt.supply.plan;

import java.text.Normalizer;
import java.util.Locale;

/**
 * A thing's name as it is compared: large and small letters, and how an accent is written, make no
 * difference. One and many do, for nobody knows the plurals of all languages: they are asked about.
 *
 * @param letters to compare by
 */
public record ItemName(String letters) {
    /** The name of what is written so. */
    public static ItemName of(String item) {
        String composed = Normalizer.normalize(item.strip(), Normalizer.Form.NFC);
        return new ItemName(composed.toLowerCase(Locale.ROOT));
    }
}
