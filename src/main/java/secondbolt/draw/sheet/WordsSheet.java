package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Lettering;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;

/** A sheet of words: its parts one below the other, on as few pages as they need. */
final class WordsSheet implements SheetText.Part.Visitor<List<Slice>> {
    private static final double UNDER_HEADING_MM = 3;
    private static final double LEAD_GROWTH_MM = 0.4;

    private final LeadWords words;
    private final double widthMm;
    private final LeadWords.Density density;

    private WordsSheet(SheetText text, double widthMm, LeadWords.Density density) {
        this.words = new LeadWords(text, widthMm, density);
        this.widthMm = widthMm;
        this.density = density;
    }

    /** The marks of its pages, one sketch to the page. */
    static List<Sketch> pages(SheetText text, Box live) {
        Box room =
                new Box(
                        live.leftMm(),
                        live.topMm() + UNDER_HEADING_MM,
                        live.widthMm(),
                        live.heightMm() - UNDER_HEADING_MM);
        List<Sketch> best = List.of();
        for (LeadWords.Density density : LeadWords.Density.values()) {
            WordsSheet sheet = new WordsSheet(text, room.widthMm(), density);
            List<Sketch> pages = Flow.pages(sheet.slices(text), room);
            if (best.isEmpty() || pages.size() < best.size()) {
                best = pages;
            }
        }
        return best;
    }

    private List<Slice> slices(SheetText text) {
        List<Slice> slices = new ArrayList<>(words.all());
        text.parts().forEach(part -> slices.addAll(part.accept(this)));
        return slices;
    }

    private List<Slice> spaced(List<Slice> slices) {
        List<Slice> all = new ArrayList<>(slices);
        all.add(Slice.gap(density.gapMm() / 2));
        return all;
    }

    @Override
    public List<Slice> heading(SheetText.Part.Heading heading) {
        return List.of(
                Slice.gap(density.gapMm() / 2).keepingNext(), LeadWords.heading(heading.text()));
    }

    @Override
    public List<Slice> paragraph(SheetText.Part.Paragraph paragraph) {
        double size = density.body().sizeMm();
        Lettering lettering =
                paragraph.isStrong() ? Lettering.bold(size + LEAD_GROWTH_MM) : density.body();
        return spaced(Slice.paragraph(paragraph.text(), lettering, 0, widthMm));
    }

    @Override
    public List<Slice> boxed(SheetText.Part.Boxed boxed) {
        return words.boxed(boxed.text());
    }

    @Override
    public List<Slice> listed(SheetText.Part.Listed listed) {
        List<Slice> all = new ArrayList<>();
        if (listed.isNumbered()) {
            all.addAll(words.numbered(listed.texts()));
        } else {
            listed.texts().forEach(text -> all.addAll(words.marked("–", text)));
        }
        return spaced(all);
    }

    @Override
    public List<Slice> rows(SheetText.Part.Rows rows) {
        return spaced(
                rows.hasHead()
                        ? TableSlices.of(rows.rows(), widthMm)
                        : TableSlices.withoutHead(rows.rows(), widthMm));
    }

    @Override
    public List<Slice> ticks(SheetText.Part.Ticks ticks) {
        TickSlices slices = TickSlices.of(ticks.items(), density.body());
        return spaced(ticks.items().stream().map(item -> slices.item(item, widthMm)).toList());
    }
}
