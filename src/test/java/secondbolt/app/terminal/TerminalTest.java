package secondbolt.app.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** What reaches a terminal commands it in nothing but the ends of lines. */
class TerminalTest {
    private static String printed(String line) {
        StringWriter all = new StringWriter();
        new Terminal(new PrintWriter(all)).println(line);
        return all.toString();
    }

    @Test
    void showsControlCharactersAsTheirNumbers() {
        String end = System.lineSeparator();
        assertEquals("red \\u001B[31m" + end, printed("red \u001B[31m"));
        assertEquals("\\u000Dover" + end, printed("\rover"));
        assertEquals("tab\\u0009bell\\u0007" + end, printed("tab\tbell\u0007"));
        assertEquals("turned \\u202Eback" + end, printed("turned \u202Eback"));
    }

    @Test
    void keepsPlainWordsAndEndsOfLines() {
        String end = System.lineSeparator();
        assertEquals("Übergröße 胴\nשלום 🧵" + end, printed("Übergröße 胴\nשלום 🧵"));
    }

    @Test
    void guardsFormattedWordsAndSingleLetters() {
        StringWriter all = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(all));
        terminal.printf("%s", "\u001B");
        terminal.print('\u0007');
        terminal.write(new char[] {'a', '\u009B'}, 0, 2);
        terminal.append("\u007F");
        terminal.flush();
        assertEquals("\\u001B\\u0007a\\u009B\\u007F", all.toString());
    }
}
