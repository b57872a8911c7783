package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.tools.GluedSheet;

/** The pieces of a project, run and measured on their printed sheets, one sheet after the other. */
final class PrintedProject {
    private static final int DPI = 300;

    private final Map<String, PrintedPiece> pieces = new LinkedHashMap<>();

    private PrintedProject() {}

    /**
     * Runs a project and measures its pieces.
     *
     * @param name of its folder in {@code projects}
     */
    static PrintedProject of(Desktop desktop, String name) throws IOException {
        return of(desktop, name, 1);
    }

    /**
     * The same, held against workings that are off by a factor, to see that it is noticed.
     *
     * @param factor 1 for the workings as they are
     */
    static PrintedProject of(Desktop desktop, String name, double factor) throws IOException {
        assertEquals(Secondbolt.DONE, desktop.run("notebook", "--quiet"), desktop.err());
        return in(desktop.folder().resolve("site").resolve(name), factor);
    }

    /** Measures the pieces of a demo project. */
    static PrintedProject demo(String name) throws IOException {
        return in(DemoSite.folder().resolve(name), 1);
    }

    private static PrintedProject in(Path site, double factor) throws IOException {
        String workings = Files.readString(site.resolve("workings.json"));
        List<PieceWorkings> sought = new ArrayList<>();
        PieceWorkings.of(workings).values().forEach(piece -> sought.add(piece.scaled(factor)));
        PrintedProject project = new PrintedProject();
        for (Path pdf : pieceSheets(site)) {
            GluedSheet sheet = GluedSheet.of(pdf, DPI);
            for (PieceWorkings piece :
                    sought.stream().filter(p -> isOn(sheet, p.name())).toList()) {
                PrintedPiece.on(sheet, piece)
                        .ifPresent(
                                found -> {
                                    project.pieces.put(piece.name(), found);
                                    sought.remove(piece);
                                });
            }
        }
        assertEquals(
                List.of(),
                sought.stream().map(PieceWorkings::name).toList(),
                "pieces that are on no sheet where their cutting line ought to be");
        return project;
    }

    /** Whether the title of a sheet names a piece: alone, or among others. */
    private static boolean isOn(GluedSheet sheet, String name) {
        boolean isAlone = sheet.says("Piece: " + name + " ·");
        boolean isListed = sheet.says(" " + name + ",") || sheet.says(" " + name + " ·");
        return isAlone || (sheet.says("Small pieces: ") && isListed);
    }

    private static List<Path> pieceSheets(Path site) throws IOException {
        try (Stream<Path> files = Files.list(site)) {
            return files.filter(file -> isPieceSheet(file.getFileName().toString()))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isPieceSheet(String name) {
        return name.endsWith(".pdf") && (name.startsWith("piece-") || name.startsWith("small-"));
    }

    List<PrintedPiece> pieces() {
        return List.copyOf(pieces.values());
    }

    PrintedPiece piece(String name) {
        return Optional.ofNullable(pieces.get(name))
                .orElseThrow(() -> new AssertionError("no piece is printed named " + name));
    }

    /** What was measured, a line for each piece. */
    String told() {
        return pieces.values().stream().map(PrintedPiece::told).collect(Collectors.joining("\n"));
    }
}
