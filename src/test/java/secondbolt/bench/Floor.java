package secondbolt.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/**
 * The least a program can do that leaves the same files: it copies the pages and draws the sheets
 * with the PDF library from a {@link Recording}. It reads no project, works nothing out, fills no
 * template and has no layers.
 */
final class Floor {
    private static final Map<String, TrueTypeFont> PARSED = new HashMap<>();

    private final PDDocument document;
    private final Map<String, PDType0Font> fonts = new HashMap<>();
    private PDPageContentStream out;

    private Floor(PDDocument document) {
        this.document = document;
    }

    /** Makes the files of a recording; arguments: its folder, where the files go, disk awaited. */
    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]), Path.of(args[1]), Boolean.parseBoolean(args[2]));
    }

    /**
     * Makes the files of a recording.
     *
     * @param isDiskAwaited whether each file is waited for until it is on the disk
     */
    static void write(Path recording, Path folder, boolean isDiskAwaited) throws IOException {
        for (Path file : Recording.files(recording)) {
            String path = recording.relativize(file).toString();
            if (path.endsWith(Recording.ENDING)) {
                path = path.substring(0, path.length() - Recording.ENDING.length());
                write(folder.resolve(path), sheet(Files.readAllLines(file)), isDiskAwaited);
            } else {
                write(folder.resolve(path), Files.readAllBytes(file), isDiskAwaited);
            }
        }
    }

    private static void write(Path file, byte[] content, boolean isDiskAwaited) throws IOException {
        Files.createDirectories(file.getParent());
        Files.write(file, content);
        if (isDiskAwaited) {
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
        }
    }

    static byte[] sheet(List<String> lines) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(0L);
            Floor floor = new Floor(document);
            for (String line : lines) {
                int space = line.indexOf(' ');
                String operation = space < 0 ? line : line.substring(0, space);
                floor.draw(operation, space < 0 ? "" : line.substring(space + 1));
            }
            floor.out.close();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    private void draw(String operation, String given) throws IOException {
        switch (operation) {
            case "title" -> document.getDocumentInformation().setTitle(given);
            case "Tf" -> out.setFont(font(given), 1);
            case "Tj" -> out.showText(given);
            default -> draw(operation, numbers(given));
        }
    }

    private void draw(String operation, float... n) throws IOException {
        switch (operation) {
            case "page" -> page(n[0], n[1]);
            case "q" -> out.saveGraphicsState();
            case "Q" -> out.restoreGraphicsState();
            case "m" -> out.moveTo(n[0], n[1]);
            case "l" -> out.lineTo(n[0], n[1]);
            case "c" -> out.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
            case "h" -> out.closePath();
            case "w" -> out.setLineWidth(n[0]);
            case "d" -> out.setLineDashPattern(n, 0);
            case "g" -> out.setNonStrokingColor(n[0]);
            case "S" -> out.stroke();
            case "f" -> out.fill();
            case "W" -> out.clip();
            case "n" -> {
                // Clipping ends the path by itself.
            }
            case "BT" -> out.beginText();
            case "ET" -> out.endText();
            case "Tm" -> out.setTextMatrix(new Matrix(n[0], n[1], n[2], n[3], n[4], n[5]));
            default -> throw new IllegalArgumentException("no such operation: " + operation);
        }
    }

    private static float[] numbers(String given) {
        String[] words = given.isEmpty() ? new String[0] : given.split(" ");
        float[] numbers = new float[words.length];
        for (int i = 0; i < words.length; i++) {
            numbers[i] = Float.parseFloat(words[i]);
        }
        return numbers;
    }

    private void page(float width, float height) throws IOException {
        if (out != null) {
            out.close();
        }
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        out = new PDPageContentStream(document, page);
    }

    private PDType0Font font(String name) throws IOException {
        PDType0Font font = fonts.get(name);
        if (font == null) {
            font = PDType0Font.load(document, parsed(name), true);
            fonts.put(name, font);
        }
        return font;
    }

    private static TrueTypeFont parsed(String name) throws IOException {
        TrueTypeFont font = PARSED.get(name);
        if (font == null) {
            try (InputStream in = Floor.class.getResourceAsStream("/fonts/" + name + ".ttf")) {
                byte[] file = in.readAllBytes();
                hideSubstitutions(file);
                font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            }
            PARSED.put(name, font);
        }
        return font;
    }

    /** Passes over the same table of the font that the house passes over. */
    private static void hideSubstitutions(byte[] file) {
        for (int at = 12; at < 12 + 16 * file[5]; at += 16) {
            if (new String(file, at, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
                file[at] = '-';
            }
        }
    }
}
