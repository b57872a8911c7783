package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Makes the notebook of the demo projects as in another country; so nothing runs beside it. */
@Isolated
class SiteElsewhereTest {
    @TempDir Path folder;

    @Test
    void isTheSameToTheByteInAnotherCountry() throws IOException {
        Map<String, byte[]> here = SiteFiles.of(DemoSite.folder());
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            DemoSite.make(folder.toAbsolutePath());
            Map<String, byte[]> there = SiteFiles.of(folder);
            assertEquals(here.keySet(), there.keySet());
            here.forEach((path, bytes) -> assertTrue(Arrays.equals(bytes, there.get(path)), path));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
