package secondbolt.app.terminal;

import java.io.PrintWriter;
import secondbolt.file.source.Visible;

/**
 * Writes lines to a terminal in which no letter but the ends of lines can command it: a control
 * character that a file or its name brought along is shown as its number.
 */
public final class Terminal extends PrintWriter {
    private final PrintWriter unguarded;

    /**
     * A terminal.
     *
     * @param to where its lines go, each at once
     */
    public Terminal(PrintWriter to) {
        super(to, true);
        this.unguarded = to;
    }

    /** For words of the program alone, on a line that is written over. */
    public PrintWriter unguarded() {
        return unguarded;
    }

    @Override
    public void write(int letter) {
        write(Character.toString(letter));
    }

    @Override
    public void write(char[] letters, int from, int count) {
        write(new String(letters, from, count));
    }

    @Override
    public void write(String text, int from, int count) {
        String part = text.substring(from, from + count);
        String[] lines = part.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            lines[i] = Visible.escaped(lines[i]);
        }
        String seen = String.join("\n", lines);
        super.write(seen, 0, seen.length());
    }
}
