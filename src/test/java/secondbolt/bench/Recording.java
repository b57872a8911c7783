package secondbolt.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Records a finished site for the {@link Floor}: each sheet as a list of drawing operations, one a
 * line, with their numbers in points and their letters as text; every other file as it is.
 */
final class Recording {
    /** The end of a recorded sheet's name. */
    static final String ENDING = ".operations";

    private final List<String> lines = new ArrayList<>();

    private Recording() {}

    /** Records a site into an empty folder. */
    static void record(Path site, Path folder) throws IOException {
        for (Path file : files(site)) {
            Path target = folder.resolve(site.relativize(file));
            Files.createDirectories(target.getParent());
            if (file.toString().endsWith(".pdf")) {
                Files.write(target.resolveSibling(target.getFileName() + ENDING), sheet(file));
            } else {
                Files.copy(file, target);
            }
        }
    }

    /** All files of a folder, by name. */
    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    static List<String> sheet(Path pdf) throws IOException {
        Recording recording = new Recording();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            recording.lines.add("title " + document.getDocumentInformation().getTitle());
            for (PDPage page : document.getPages()) {
                var box = page.getMediaBox();
                recording.lines.add("page " + box.getWidth() + " " + box.getHeight());
                recording.page(page);
            }
        }
        return recording.lines;
    }

    private void page(PDPage page) throws IOException {
        List<COSBase> operands = new ArrayList<>();
        PDFont font = null;
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof Operator operator) {
                if (operator.getName().equals("Tf")) {
                    font = page.getResources().getFont((COSName) operands.get(0));
                }
                lines.add(line(operator.getName(), operands, font));
                operands.clear();
            } else {
                operands.add((COSBase) token);
            }
        }
    }

    private static String line(String operator, List<COSBase> operands, PDFont font)
            throws IOException {
        return switch (operator) {
            case "Tf" -> "Tf " + font.getName().substring(font.getName().indexOf('+') + 1);
            case "Tj" -> "Tj " + letters((PDType0Font) font, (COSString) operands.get(0));
            case "d" -> operator + numbers(((COSArray) operands.get(0)).toList());
            default -> operator + numbers(operands);
        };
    }

    private static String numbers(List<? extends COSBase> operands) {
        return operands.stream()
                .map(number -> " " + ((COSNumber) number).floatValue())
                .collect(Collectors.joining());
    }

    /** The fonts of sheets take two bytes to the letter. */
    private static String letters(PDType0Font font, COSString written) throws IOException {
        byte[] bytes = written.getBytes();
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < bytes.length; i += 2) {
            letters.append(font.toUnicode((bytes[i] & 0xFF) << 8 | (bytes[i + 1] & 0xFF)));
        }
        return letters.toString();
    }
}
