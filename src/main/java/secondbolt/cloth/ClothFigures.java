package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.BoltWidth;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothStock;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.figure.Figures;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** The figures of one cloth for other programs. */
final class ClothFigures {
    private ClothFigures() {}

    static Figures of(ClothResult result, ClothStock stock) {
        Optional<ClothYield> finished = result.finished();
        Figures figures = new Figures().text("role", result.cloth().textile().roleOrMain().word());
        yielded(figures, finished);
        figures.acrossAlong(
                "size_as_measured", result.cloth().extent().toOptional().map(e -> point(e.size())));
        figures.inside(
                "as_measured", result.measured().map(y -> yielded(new Figures(), Optional.of(y))));
        figures.inside(
                "wash",
                new Figures()
                        .change("across", result.left().across())
                        .change("along", result.left().along()));
        ClothResult.Heaviness heaviness = result.heaviness();
        figures.mass("mass", heaviness.mass())
                .mass("trimmed_mass", heaviness.trimmedMass())
                .weight("weight", heaviness.weight())
                .weight("washed_weight", heaviness.washedWeight());
        return figures.inside("stock", stock(stock));
    }

    private static Figures yielded(Figures figures, Optional<ClothYield> yielded) {
        List<Box> boxes = yielded.map(ClothYield::rectangles).orElse(List.of());
        figures.acrossAlong("size", yielded.map(y -> point(y.size())))
                .area("trimmed", yielded.map(ClothYield::wholeArea))
                .area("sound", yielded.map(ClothYield::soundArea))
                .area("flawed", yielded.map(ClothYield::flawedArea))
                .area("sound_for_hidden", yielded.map(ClothYield::soundForHiddenArea))
                .inside(
                        "largest_rectangle",
                        boxes.stream().findFirst().map(ClothFigures::rectangle))
                .list(
                        "next_rectangles",
                        boxes.stream().skip(1).map(ClothFigures::rectangle).toList());
        List<Figures> lengths = new ArrayList<>();
        for (int i = 0; i < BoltWidth.COMMON.size(); i++) {
            int number = i;
            lengths.add(length(BoltWidth.COMMON.get(i), yielded.map(y -> y.lengths().get(number))));
        }
        return figures.list("equivalent_lengths", lengths);
    }

    private static Figures length(BoltWidth bolt, Optional<ClothYield.EquivalentLength> length) {
        return new Figures()
                .length("bolt_width", bolt.width())
                .length("by_area", length.map(ClothYield.EquivalentLength::byArea))
                .length("clear_run", length.map(ClothYield.EquivalentLength::clearRunOrZero));
    }

    private static Figures rectangle(Box box) {
        return new Figures()
                .acrossAlong("at", Optional.of(new Point(box.leftMm(), box.topMm())))
                .acrossAlong("size", Optional.of(new Point(box.widthMm(), box.heightMm())));
    }

    private static Figures stock(ClothStock stock) {
        return new Figures()
                .text("role", stock.role().word())
                .count("cloths", stock.cloths().size())
                .area("sound", stock.soundArea())
                .area("flawed", stock.flawedArea())
                .mass("mass", stock.mass());
    }

    private static Point point(AcrossAlong<Length> size) {
        return new Point(size.across().millimetres(), size.along().millimetres());
    }
}
