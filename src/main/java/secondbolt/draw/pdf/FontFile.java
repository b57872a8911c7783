package secondbolt.draw.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A font that comes with the program, parsed at most once, and only when it is needed. */
final class FontFile {
    static final FontFile REGULAR = new FontFile("SourceSans3-Regular.ttf");
    static final FontFile BOLD = new FontFile("SourceSans3-Semibold.ttf");

    /** Hebrew, Arabic and signs, in Latin company. */
    static final FontFile WIDER = new FontFile("DejaVuSans.ttf");

    /** Chinese, Japanese and Korean. */
    static final FontFile EAST_ASIAN = new FontFile("DroidSansFallback.ttf");

    /** Kept here, since a logger that nobody holds forgets its level. */
    private static final Logger FONT_LOG = quiet("org.apache.fontbox");

    private static final Logger PDF_LOG = quiet("org.apache.pdfbox");

    private final String name;
    private volatile Parsed parsed;

    /** The font and where its glyphs are looked up; both are only read. */
    private record Parsed(TrueTypeFont font, CmapLookup letters) {}

    private FontFile(String name) {
        this.name = name;
    }

    /** The libraries log what is none of the maker's business. */
    private static Logger quiet(String name) {
        Logger logger = Logger.getLogger(name);
        logger.setLevel(Level.OFF);
        return logger;
    }

    static boolean isQuiet() {
        return FONT_LOG.getLevel().equals(Level.OFF) && PDF_LOG.getLevel().equals(Level.OFF);
    }

    /** Whether the font has a glyph of its own for a code point. */
    boolean has(int codePoint) {
        return parsed().letters().getGlyphId(codePoint) != 0;
    }

    /** The parsed font; documents only read it, so that they can share it, also side by side. */
    TrueTypeFont font() {
        return parsed().font();
    }

    private Parsed parsed() {
        Parsed known = parsed;
        return known == null ? parsedOnce() : known;
    }

    private synchronized Parsed parsedOnce() {
        if (parsed == null) {
            parsed = parse();
        }
        return parsed;
    }

    private Parsed parse() {
        try (InputStream in = FontFile.class.getResourceAsStream("/fonts/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its font " + name);
            }
            byte[] file = in.readAllBytes();
            hideSubstitutions(file);
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            return new Parsed(font, font.getUnicodeCmapLookup());
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    /**
     * Lets the parser pass over the table of other glyphs for runs of letters. With it a run may
     * come out as another glyph than those checked, and to read it takes longer than all the rest.
     *
     * <p>Source: OpenType specification, table directory: 12 bytes, of which two at 4 count the
     * tables, then 16 bytes a table, its tag first.
     */
    private static void hideSubstitutions(byte[] file) {
        int tables = (file[4] & 0xFF) << 8 | (file[5] & 0xFF);
        for (int i = 0; i < tables; i++) {
            int at = 12 + 16 * i;
            if (new String(file, at, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
                file[at] = '-';
            }
        }
    }
}
