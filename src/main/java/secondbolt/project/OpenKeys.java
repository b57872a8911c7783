package secondbolt.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.file.Key;
import secondbolt.file.value.LeftOpen;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Worksheet;

/**
 * What a maker wrote {@code unknown} for, told with the topic whose section it stands in.
 *
 * @param topics in the order of working
 * @param left all that is left open
 */
record OpenKeys(List<Topic<?>> topics, List<LeftOpen> left) {
    /**
     * The worksheets, each with what is open in its sections. What stands in a section without a
     * worksheet is told with the first there is.
     *
     * @param outcomes of the topics, in the same order
     */
    List<Worksheet> with(List<Outcome<?>> outcomes) {
        List<LeftOpen> untold = new ArrayList<>(left);
        IntStream.range(0, topics.size())
                .filter(i -> outcomes.get(i).worksheet().isPresent())
                .forEach(i -> untold.removeIf(open -> isOf(topics.get(i), open)));
        List<Worksheet> all = new ArrayList<>();
        for (int i = 0; i < topics.size(); i++) {
            Topic<?> topic = topics.get(i);
            Optional<Worksheet> sheet = outcomes.get(i).worksheet();
            if (sheet.isPresent()) {
                List<LeftOpen> told = new ArrayList<>(all.isEmpty() ? untold : List.of());
                left.stream().filter(open -> isOf(topic, open)).forEach(told::add);
                all.add(sheet.get().leaving(told.stream().map(OpenKeys::open).toList()));
            }
        }
        return List.copyOf(all);
    }

    private static boolean isOf(Topic<?> topic, LeftOpen open) {
        String section = open.path().isEmpty() ? open.what() : open.path().get(0);
        return topic.keys().stream().map(Key::name).anyMatch(section::equals);
    }

    private static Open open(LeftOpen left) {
        return new Open(
                left.words(),
                left.isTaken()
                        ? "what follows from it; taken meanwhile: " + left.meanwhile()
                        : "what follows from it; worked out meanwhile as if nothing were told of it",
                left.findOut());
    }
}
