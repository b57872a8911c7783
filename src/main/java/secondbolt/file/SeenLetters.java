package secondbolt.file;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Node;
import secondbolt.file.source.SourceFile;
import secondbolt.file.source.Visible;

/**
 * Passes on what is written in letters that are seen; what holds others is told, and lost. The
 * lines of a text may end, and a tab may part its words; a key is one line.
 */
record SeenLetters(SourceFile source, Mistakes mistakes) implements Node.Visitor<Node> {
    @Override
    public Node text(Node.Text text) {
        return isSeen(text, letter -> Visible.isUnseen(letter) && letter != '\n' && letter != '\t')
                ? text
                : new Node.Lost(text.place());
    }

    @Override
    public Node listing(Node.Listing listing) {
        List<Node> items = new ArrayList<>();
        listing.items().forEach(item -> items.add(item.accept(this)));
        return new Node.Listing(listing.place(), items, listing.splitByComma());
    }

    @Override
    public Node mapping(Node.Mapping mapping) {
        List<Node.Pair> pairs = new ArrayList<>();
        for (Node.Pair pair : mapping.pairs()) {
            if (isSeen(pair.key(), Visible::isUnseen)) {
                pairs.add(new Node.Pair(pair.key(), pair.value().accept(this)));
            }
        }
        return new Node.Mapping(mapping.place(), pairs);
    }

    @Override
    public Node lost(Node.Lost lost) {
        return lost;
    }

    private boolean isSeen(Node.Text text, IntPredicate isUnseen) {
        int unseen = text.text().codePoints().filter(isUnseen).findFirst().orElse(-1);
        if (unseen >= 0) {
            mistakes.add(
                    source.mistake(
                            text.place(),
                            "`" + text.text() + "`, with " + name(unseen),
                            "the same without it"));
        }
        return unseen < 0;
    }

    private static String name(int letter) {
        String number = String.format("U+%04X", letter);
        return letter == '\n'
                ? "the end of a line in it"
                : Character.isISOControl(letter)
                        ? "the control character " + number
                        : "the letter " + number + ", which nobody sees";
    }
}
