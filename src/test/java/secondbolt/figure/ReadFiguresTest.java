package secondbolt.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.json.Json;
import secondbolt.file.json.JsonReader;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.shape.Point;

class ReadFiguresTest {
    private static final Figures ALL =
            new Figures()
                    .text("kind", "buttons")
                    .text("laps", Optional.empty())
                    .count("number", 7)
                    .claim("meets", true)
                    .length("edge_length", Length.ofMillimetres(845))
                    .length("even_gap", Optional.empty())
                    .area("sound", Optional.of(Area.ofComputedSquareMillimetres(1250.5)))
                    .share("used", 0.8126)
                    .points("outline", List.of(new Point(0, 0), new Point(30, 0)))
                    .lengths("edges", Map.of("side", Length.ofMillimetres(470)))
                    .lengths("depths", List.of(Length.ofMillimetres(20), Length.ofMillimetres(6)))
                    .inside("nothing", Optional.empty())
                    .list("marks", List.of(new Figures().count("number", 1)));

    private static Figures reread(Figures figures) {
        return ReadFigures.of(JsonReader.readObject(Json.write(figures.asMap())).orElseThrow());
    }

    @Test
    void readsTheUnitsFromTheEndingsOfTheKeys() {
        Map<String, FigureEntry> read = reread(ALL).entries();
        assertEquals(
                new Figure.Size(Optional.of(Length.ofMillimetres(845))),
                read.get("edge_length").figure());
        assertEquals(new Figure.Size(Optional.empty()), read.get("even_gap").figure());
        assertEquals(new Figure.Amount(Optional.of(0.813), "_share"), read.get("used").figure());
        assertEquals(ALL.entries().get("outline").figure(), read.get("outline").figure());
        assertEquals(ALL.entries().get("edges").figure(), read.get("edges").figure());
    }

    @Test
    void writesWhatItReadTheSameAgain() {
        assertEquals(Json.write(ALL.asMap()), Json.write(reread(ALL).asMap()));
    }

    @Test
    void takesNumbersThatNoLengthCanBeAsOpen() {
        Figures odd = ReadFigures.of(JsonReader.readObject("{\"a_mm\": 1e999}").orElseThrow());
        assertEquals(new Figure.Size(Optional.empty()), odd.entries().get("a").figure());
    }
}
